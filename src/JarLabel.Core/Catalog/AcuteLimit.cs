using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>The upper end of a category of acute toxicity, which belongs to it, and from what share such an ingredient counts.</summary>
/// <param name="Route">How it gets in.</param>
/// <param name="UpTo">mg/kg, or mg/L for vapour.</param>
/// <param name="CountsFrom">Percent by weight: 0.1 for categories 1 to 3, 1 for category 4 (CLP Annex I table 1.1).</param>
/// <param name="OshaCountsUpTo">US rules also count ingredients milder than the mildest category, up to this (29 CFR 1910.1200 A.1.3.6.1(a)).</param>
/// <param name="Source">Where they were printed.</param>
public sealed record AcuteLimit(Route Route, decimal UpTo, decimal CountsFrom, decimal? OshaCountsUpTo, string Source)
{
    /// <summary>The most that an ingredient's estimate may be to count as one of this category in a sum.</summary>
    public decimal CountsUpTo(RuleSet rules) => rules == RuleSet.Osha ? OshaCountsUpTo ?? UpTo : UpTo;

    internal static AcuteLimit Read(FieldReader fields) => new(
        fields.Choice("route", RouteWords.Choices),
        fields.Exact("upTo", 0.001m, 1_000_000),
        fields.Exact("countsFrom", 0, 100),
        fields.Has("oshaCountsUpTo") ? fields.Exact("oshaCountsUpTo", 0.001m, 1_000_000) : null,
        fields.Text("source"));
}
