namespace JarLabel.Core.Hazards;

/// <summary>Acute toxicity of a mixture by the sum <c>100 / ATEmix = sum of Ci / ATEi</c> (CLP Annex I 3.1.3.6; 29 CFR 1910.1200
/// Appendix A.1.3.6). US rules also count ingredients a little milder than category 4. All in decimal, so that a share exactly on a limit falls on
/// the right side.</summary>
internal sealed class AcuteToxicityRule
{
    /// <summary>A third of a hundred has no last decimal: what is nearer to a limit than this lies on it.</summary>
    private const decimal Rounding = 1e-20m;

    private readonly Route route;
    private readonly RuleSet rules;
    private readonly HazardClass[] categories;

    private AcuteToxicityRule(Route route, RuleSet rules, CatalogTable<HazardClass> classes)
    {
        this.route = route;
        this.rules = rules;
        categories = [.. classes.Rows.Where(c => c.Acute?.Route == route && c.HoldsUnder(rules)).OrderBy(c => c.Acute!.UpTo)];
    }

    internal static AcuteToxicityOfMixture Of(Composition mixture, Route route, RuleSet rules, CatalogTable<HazardClass> classes) =>
        new AcuteToxicityRule(route, rules, classes).Of(mixture);

    private AcuteToxicityOfMixture Of(Composition mixture)
    {
        var unknown = mixture.Ingredients
            .Where(i => i.Percent >= MixtureLimits.UnknownCountsFrom && i.Substance.UnknownToxicity.Contains(route))
            .Sum(i => i.Percent);
        var known = unknown > MixtureLimits.MuchUnknown ? 100 - unknown : 100;
        var toxic = mixture.Ingredients
            .SelectMany(i => i.Substance.AcuteToxicity.Where(t => t.Route == route), (i, t) => (Ingredient: i, t.Ate))
            .Where(t => Counts(t.Ingredient.Percent, t.Ate))
            .ToArray();
        var sum = toxic.Sum(t => t.Ingredient.Percent / t.Ate);
        return new(route, sum == 0 ? null : known / sum, unknown, sum == 0 ? null : FindingFor(known, sum, [.. toxic.Select(t => t.Ingredient)]));
    }

    /// <summary>An ingredient counts from the share of its own category; what is milder than the categories not at all, or as one of the mildest.</summary>
    private bool Counts(decimal percent, decimal ate) =>
        categories.FirstOrDefault(c => ate <= c.Acute!.CountsUpTo(rules)) is { } category && percent >= category.Acute!.CountsFrom;

    private Finding? FindingFor(decimal known, decimal sum, IReadOnlyList<Ingredient> toxic)
    {
        var place = Array.FindIndex(categories, c => (sum * c.Acute!.UpTo) + Rounding >= known);
        return place < 0 ? null : new(categories[place].Id, Why());

        string Why() => $"The acute toxicity estimate {route.Way()} is {ReasonFormat.Rounded(known / sum)} {route.Unit()} "
            + $"({ReasonFormat.Shares(toxic)}); category {place + 1} goes {From()}up to {ReasonFormat.Exact(categories[place].Acute!.UpTo)}.";

        string From() => place == 0 ? "" : $"from over {ReasonFormat.Exact(categories[place - 1].Acute!.UpTo)} ";
    }
}

/// <summary>Limits of the sums that belong to no single class. Those of the classes stand in the catalog beside them.</summary>
internal static class MixtureLimits
{
    /// <summary>An ingredient of unknown acute toxicity counts from this share, percent by weight (CLP Annex I 3.1.3.6.2.2; 29 CFR 1910.1200 A.1.3.6.2.2).</summary>
    internal const decimal UnknownCountsFrom = 1;

    /// <summary>More than this of unknown acute toxicity changes the sum (CLP Annex I 3.1.3.6.2.3; 29 CFR 1910.1200 A.1.3.6.2.4).</summary>
    internal const decimal MuchUnknown = 10;
}
