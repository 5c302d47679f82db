namespace JarLabel.Core.Hazards;

/// <summary>The category of a flammable liquid by flash point and boiling point (CLP Annex I table 2.6.1; 29 CFR 1910.1200 Appendix B.6,
/// which has category 4 besides). A calculated flash point too near above a limit takes the graver category (CLP Annex I 2.6.4.2).</summary>
internal static class FlammabilityRule
{
    /// <summary>A liquid with less of what burns than this, percent by weight, does not sustain a flame.</summary>
    private const decimal LeastThatBurns = 1;

    internal static Finding? Find(Composition mixture, FlashPoint? flash, RuleSet rules, CatalogTable<HazardClass> classes)
    {
        var found = flash is not null && BurningPercent(mixture) >= LeastThatBurns ? FindingFor(mixture, flash, rules, classes) : null;
        return found?.ClassId is "flam-1" or "flam-2" ? found : Undeclared(mixture) ?? found;
    }

    private static decimal BurningPercent(Composition mixture) =>
        mixture.Ingredients.Where(i => i.Substance.Flash is not null).Sum(i => i.Percent);

    private static Finding? FindingFor(Composition mixture, FlashPoint flash, RuleSet rules, CatalogTable<HazardClass> classes)
    {
        var boils = mixture.Ingredients.Where(i => i.Substance.Flash is not null).Min(i => (double?)i.Substance.Boils?.Value);
        return classes.Rows.FirstOrDefault(c => c.Flash is { } limit && c.HoldsUnder(rules) && limit.Takes(flash.Celsius, flash.Estimated, boils)) is { } category
            ? new(category.Id, $"{Capital.Of(flash.Basis)}; {Why(category.Flash!, flash)} category {category.Id[^1]}.")
            : null;
    }

    private static string Why(FlashLimit limit, FlashPoint flash)
    {
        var boiling = limit.BoilsUpTo is { } boils ? $" and boiling by {ReasonFormat.Exact(boils)} °C" : "";
        return limit.IsPlainly(flash.Celsius)
            ? $"{(limit.Below is null ? "up to" : "below")} {ReasonFormat.Exact(limit.Limit)} °C{boiling} is"
            : $"an estimate less than {ReasonFormat.Exact(limit.EstimateAway)} °C above {ReasonFormat.Exact(limit.Limit)} °C{boiling} counts as";
    }

    private static Finding? Undeclared(Composition mixture) =>
        mixture.Ingredients.FirstOrDefault(i => i.Substance.Undeclared && i.Percent >= LeastThatBurns) is { } share
            ? new("flam-2", $"{ReasonFormat.Share(share)} may be anything that burns: the careful answer.")
            : null;
}

/// <summary>Figures and ingredients as the reasons write them.</summary>
internal static class ReasonFormat
{
    /// <summary>Up to four decimals, so that 4.999 % is never shown as 5.</summary>
    internal static string Exact(decimal value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>Three figures that count.</summary>
    internal static string Rounded(decimal value) => ((double)value).ToString(value < 100 ? "G3" : "0", CultureInfo.InvariantCulture);

    internal static string Celsius(double celsius) => celsius.ToString("0.#", CultureInfo.InvariantCulture) + " °C";

    internal static string Share(Ingredient ingredient) => $"{ingredient.Substance.Name} {Exact(ingredient.Percent)} %";

    internal static string Shares(IEnumerable<Ingredient> ingredients) =>
        string.Join(", ", ingredients.OrderByDescending(i => i.Percent).ThenBy(i => i.Substance.Id, StringComparer.Ordinal).Select(Share));
}
