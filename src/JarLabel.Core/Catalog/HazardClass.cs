namespace JarLabel.Core.Catalog;

/// <summary>A hazard class with its category and everything a label says for it.</summary>
/// <param name="Id">Our name: <c>acute-oral-3</c>.</param>
/// <param name="Code">The standard abbreviation, <c>Acute Tox. 3</c>; the three routes share one.</param>
/// <param name="Ladder">Classes of one kind stand on one ladder, the more severe first; a mixture is on one rung of each.</param>
/// <param name="Statement">Hazard statement code.</param>
/// <param name="Signal">Signal word; none for supplemental statements.</param>
/// <param name="Pictogram">Pictogram code, or null for none.</param>
/// <param name="Precautions">Precautionary statement codes: prevention, response, storage, disposal.</param>
/// <param name="Source">Where the row comes from.</param>
public sealed record HazardClass(
    string Id,
    string Code,
    string Ladder,
    string Statement,
    SignalWord Signal,
    string? Pictogram,
    IReadOnlyList<string> Precautions,
    string Source)
    : CatalogRow(Id, Source)
{
    /// <summary>The one rule set that has this class; null where both have it.</summary>
    public RuleSet? OnlyUnder { get; init; }

    /// <summary>What share of which ingredients brings a mixture into it; null where that is computed, or where only an ingredient's own limit says so.</summary>
    public ClassLimits? Limits { get; init; }

    /// <summary>Its limits, for a category of flammable liquids.</summary>
    public FlashLimit? Flash { get; init; }

    /// <summary>Its limits, for a category of acute toxicity.</summary>
    public AcuteLimit? Acute { get; init; }

    /// <summary>What was taken for granted in giving it, as a whole sentence.</summary>
    public string? Note { get; init; }

    /// <summary>True for a class that follows from figures and is never stated of an ingredient.</summary>
    public bool Computed => Flash is not null || Acute is not null;

    /// <summary>True when a rule set has this class.</summary>
    public bool HoldsUnder(RuleSet rules) => OnlyUnder is null || OnlyUnder == rules;

    private static readonly Dictionary<string, SignalWord> Words = new(StringComparer.Ordinal)
    {
        ["Danger"] = SignalWord.Danger,
        ["Warning"] = SignalWord.Warning,
    };

    internal static HazardClass Read(FieldReader fields) => new(
        fields.Text("id"),
        fields.Text("code"),
        fields.Text("ladder"),
        fields.Text("statement"),
        fields.Has("signal") ? fields.Choice("signal", Words) : SignalWord.None,
        fields.OptionalText("pictogram"),
        fields.Texts("precautions"),
        fields.Text("source"))
    {
        OnlyUnder = RuleSetWords.OnlyUnder(fields),
        Limits = fields.OptionalMember("limits", ClassLimits.Read),
        Flash = fields.OptionalMember("flash", FlashLimit.Read),
        Acute = fields.OptionalMember("acute", AcuteLimit.Read),
        Note = fields.OptionalText("note"),
    };
}

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

/// <summary>The word that leads a hazard label, the milder first.</summary>
public enum SignalWord
{
    /// <summary>No word.</summary>
    None,

    /// <summary>Warning.</summary>
    Warning,

    /// <summary>Danger.</summary>
    Danger,
}
