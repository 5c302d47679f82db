namespace JarLabel.Core.Quantities;

/// <summary>One unit and the words people write for it.</summary>
/// <param name="Id">Our name for it.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="System"><c>us</c>, <c>imperial</c> or <c>metric</c>.</param>
/// <param name="Words">Lower-case spellings, without dots.</param>
/// <param name="Size">In the base unit of its kind.</param>
/// <param name="Source">Where the size is defined.</param>
internal sealed record UnitWord(string Id, UnitKind Kind, string System, IReadOnlyList<string> Words, double Size, string Source)
{
    private static readonly Dictionary<string, UnitKind> Kinds = new(StringComparer.Ordinal)
    {
        ["volume"] = UnitKind.Volume,
        ["mass"] = UnitKind.Mass,
        ["area"] = UnitKind.Area,
        ["length"] = UnitKind.Length,
        ["time"] = UnitKind.Time,
    };

    private static readonly Dictionary<string, string> Systems =
        new[] { "us", "imperial", "metric" }.ToDictionary(s => s, StringComparer.Ordinal);

    /// <summary>Every unit we know.</summary>
    internal static IReadOnlyList<UnitWord> All { get; } = StrictJson
        .ReadList("unit-words.json", "JL201", EmbeddedFile.Read("catalog/unit-words.json"), Read)
        .Require();

    /// <summary>The unit a word means, or null. A word without <c>US</c> or <c>imp</c> is never the imperial unit.</summary>
    internal static UnitWord? Find(string written)
    {
        var words = string.Join(' ', written.ToLowerInvariant().Replace(".", "", StringComparison.Ordinal)
            .Split(' ', StringSplitOptions.RemoveEmptyEntries));
        var (system, word) = SplitSystem(words);
        return All.FirstOrDefault(u => u.Words.Contains(word) && (system is null ? u.System != "imperial" : u.System == system));
    }

    /// <summary>True when it can be the unit of such an amount.</summary>
    internal bool Measures(UnitKind kind) => Kind == (kind == UnitKind.Room ? UnitKind.Volume : kind);

    private static (string? System, string Word) SplitSystem(string words) => words.Split(' ', 2) switch
    {
        ["us", var rest] => ("us", rest),
        ["imp" or "imperial" or "uk", var rest] => ("imperial", rest),
        _ => (null, words),
    };

    private static UnitWord Read(FieldReader row) => new(
        row.Text("id"),
        row.Choice("kind", Kinds),
        row.Choice("system", Systems),
        row.Texts("words"),
        row.Number("size", 0.001, 1_000_000),
        row.Text("source"));
}
