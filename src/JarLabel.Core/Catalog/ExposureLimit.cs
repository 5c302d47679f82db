namespace JarLabel.Core.Catalog;

/// <summary>A limit for breathing a substance.</summary>
/// <param name="Name">Who sets it and what it is called, such as <c>OSHA PEL</c>.</param>
/// <param name="Kind">What it is an average over.</param>
/// <param name="Ppm">Parts per million by volume in air.</param>
/// <param name="OnlyUnder">The rule set whose region it belongs to; null where it is heeded everywhere.</param>
/// <param name="Skin">True when the substance also goes through the skin.</param>
/// <param name="Source">Where it was printed.</param>
public sealed record ExposureLimit(string Name, ExposureKind Kind, decimal Ppm, RuleSet? OnlyUnder, bool Skin, string Source)
{
    /// <summary>True when nobody has looked it up in its source: it must be shown as unverified.</summary>
    public bool Unverified => Sources.IsMemory(Source);

    private static readonly Dictionary<string, ExposureKind> Kinds = new(StringComparer.Ordinal)
    {
        ["shift"] = ExposureKind.Shift,
        ["shortTerm"] = ExposureKind.ShortTerm,
        ["ceiling"] = ExposureKind.Ceiling,
        ["idlh"] = ExposureKind.Idlh,
    };

    internal static ExposureLimit Read(FieldReader fields) => new(
        fields.Text("name"),
        fields.Choice("kind", Kinds),
        fields.Exact("ppm", 0.001m, 1_000_000),
        RuleSetWords.OnlyUnder(fields),
        fields.OptionalFlag("skin"),
        fields.Text("source"));
}

/// <summary>What an exposure limit is an average over.</summary>
public enum ExposureKind
{
    /// <summary>Average of a working day of eight (or ten) hours.</summary>
    Shift,

    /// <summary>Average of fifteen minutes.</summary>
    ShortTerm,

    /// <summary>Not to be passed at any moment.</summary>
    Ceiling,

    /// <summary>Immediately dangerous to life or health.</summary>
    Idlh,
}
