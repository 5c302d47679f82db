namespace JarLabel.Core.Hazards;

/// <summary>Classes that follow from the classes of the ingredients, by the limits in the catalog. Where shares add up, each is divided by its limit,
/// and from a sum of 1 the mixture is in the class (CLP Annex I 3.2.3.3, 3.3.3.3, 3.8.3.4.5, 3.10.3.3; 29 CFR 1910.1200 A.2, A.3, A.8, A.10); elsewhere one
/// ingredient at its limit is enough. An ingredient's own limit for a class takes the place of every general one.</summary>
internal static class IngredientLimitRule
{
    /// <summary>Thirds have no last decimal: what is nearer to a whole than this is whole.</summary>
    private const decimal Rounding = 1e-20m;

    internal static IEnumerable<Finding> Find(IReadOnlyList<CountedHazard> hazards, RuleSet rules, CatalogTable<HazardClass> classes) =>
        classes.Rows.Where(c => c.HoldsUnder(rules)).Select(c => FindingFor(c, hazards, rules)).OfType<Finding>();

    /// <summary>True when the share is large enough to count towards some class.</summary>
    internal static bool Counts(CountedHazard hazard, RuleSet rules, CatalogTable<HazardClass> classes) =>
        classes.Rows.Any(c => c.HoldsUnder(rules) && LimitOf(hazard, c, rules) is { } limit && hazard.Ingredient.Percent >= Least(hazard, c, limit));

    private static Finding? FindingFor(HazardClass mixtureClass, IReadOnlyList<CountedHazard> hazards, RuleSet rules)
    {
        var counted = hazards
            .Select(h => (Hazard: h, Limit: LimitOf(h, mixtureClass, rules) ?? 0))
            .Where(h => h.Limit > 0)
            .GroupBy(h => h.Hazard.Ingredient.Substance.Id)
            .Select(g => g.OrderBy(h => !IsOwn(h.Hazard, mixtureClass)).ThenBy(h => h.Limit).First())
            .Where(h => h.Hazard.Ingredient.Percent >= Least(h.Hazard, mixtureClass, h.Limit))
            .ToArray();
        if (counted.Sum(h => h.Hazard.Ingredient.Percent / h.Limit) + Rounding < 1)
        {
            return null;
        }

        var shares = string.Join(", ", counted.Select(h => $"{ReasonFormat.Share(h.Hazard.Ingredient)} (limit {ReasonFormat.Exact(h.Limit)} %)"));
        string[] organs = [.. counted.SelectMany(h => h.Hazard.Hazard.Organs).Distinct()];
        var why = mixtureClass.Limits is { Adds: true } ? $"{(counted.Length > 1 ? "Together these reach the limit" : "This reaches the limit")}: {shares}"
            : organs.Length > 0 ? $"{shares}; it harms: {string.Join(", ", organs)}"
            : shares;
        return new(mixtureClass.Id, mixtureClass.Note is { } note ? $"{why}. {note}" : why + ".", organs)
        {
            Substances = [.. counted.Select(h => h.Hazard.Ingredient.Substance.Name)],
        };
    }

    private static decimal? LimitOf(CountedHazard counted, HazardClass mixtureClass, RuleSet rules) =>
        IsOwn(counted, mixtureClass) ? counted.Hazard.AtLeast : mixtureClass.Limits?.For(counted.Hazard.Class, rules);

    private static bool IsOwn(CountedHazard counted, HazardClass mixtureClass) =>
        counted.Hazard.Class == mixtureClass.Id && counted.Hazard.AtLeast is not null;

    /// <summary>The share below which an ingredient is left out: where shares add up the lower of the general one and its own limit.</summary>
    private static decimal Least(CountedHazard counted, HazardClass mixtureClass, decimal limit) => mixtureClass.Limits is not { Adds: true } limits ? limit
        : IsOwn(counted, mixtureClass) ? Math.Min(limits.CountsFrom, limit)
        : limits.CountsFrom;
}

/// <summary>A classification of an ingredient that counts under the rules and settings in hand, whatever its share.</summary>
internal sealed record CountedHazard(Ingredient Ingredient, SubstanceHazard Hazard)
{
    internal static IEnumerable<CountedHazard> In(Composition mixture, RuleSet rules, HazardSettings settings) =>
        mixture.Ingredients.SelectMany(i => i.Substance.Hazards, (i, hazard) => new CountedHazard(i, hazard))
            .Where(c => c.Hazard.OnlyUnder is null || c.Hazard.OnlyUnder == rules)
            .Where(c => settings.CountSelfClassifications || !c.Hazard.SelfClassified);
}
