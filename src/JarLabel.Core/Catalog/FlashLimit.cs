namespace JarLabel.Core.Catalog;

/// <summary>The limits of a category of flammable liquids, °C.</summary>
/// <param name="Below">The flash point lies below this; null where <paramref name="UpTo"/> says it.</param>
/// <param name="UpTo">The flash point is this at the most.</param>
/// <param name="BoilsUpTo">It boils at this at the latest; null where boiling does not matter.</param>
/// <param name="EstimateAway">A calculated flash point must lie this far above the limit to count as milder (CLP Annex I 2.6.4.2).</param>
/// <param name="Source">Where they were printed.</param>
public sealed record FlashLimit(decimal? Below, decimal? UpTo, decimal? BoilsUpTo, decimal EstimateAway, string Source)
{
    /// <summary>The limit for the flash point.</summary>
    public decimal Limit => Below ?? UpTo ?? 0;

    /// <summary>True when a liquid with this flash point is in the category, or too near to it.</summary>
    /// <param name="celsius">The flash point, °C.</param>
    /// <param name="estimated">True when it was calculated.</param>
    /// <param name="boils">Where it begins to boil, °C; null when unknown.</param>
    public bool Takes(double celsius, bool estimated, double? boils) =>
        (IsPlainly(celsius) || (estimated && celsius < (double)(Limit + EstimateAway))) && (BoilsUpTo is not { } latest || boils <= (double)latest);

    /// <summary>True when the flash point is within the limit itself.</summary>
    public bool IsPlainly(double celsius) => Below is { } below ? celsius < (double)below : celsius <= (double)Limit;

    internal static FlashLimit Read(FieldReader fields)
    {
        var below = Celsius(fields, "below");
        return new(below, below is null ? fields.Exact("upTo", -100, 1000) : null, Celsius(fields, "boilsUpTo"), fields.Exact("estimateAway", 0, 100), fields.Text("source"));
    }

    private static decimal? Celsius(FieldReader fields, string name) => fields.Has(name) ? fields.Exact(name, -100, 1000) : null;
}
