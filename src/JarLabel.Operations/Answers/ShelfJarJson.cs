namespace JarLabel.Operations.Answers;

/// <summary>A jar in the shelf's list, for a program.</summary>
internal sealed record ShelfJarJson(
    int Number,
    string Id,
    int Revision,
    string Grade,
    string Solvent,
    string Shelf,
    double CutPoundsPerGallon,
    double VolumeMilliliters,
    string Mixed,
    string TestFrom,
    string UseBy,
    string State,
    string? Tested,
    bool? TestPassed)
{
    /// <summary>The use-by that the shop's drying tests say now, where the one on record, and on the label, is clearly another.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? LearnedUseBy { get; init; }

    /// <summary>True when the label on the jar is no longer true; left out when it is, or there is none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public bool? LabelOutOfDate { get; init; }

    /// <summary>All its flakes, the largest first, where they are several.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? Grades { get; init; }

    /// <summary>All its alcohols, the largest first, where they are several.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<string>? Solvents { get; init; }

    /// <summary>True for what can poison; left out for what cannot.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public bool? Poison { get; init; }

    /// <summary>Since when it is in doubt whether it dries hard, whatever its use-by; left out where it is not.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? InDoubtSince { get; init; }

    internal static ShelfJarJson Of(JarEntry jar, ShelfList list, DateTime now) => new(
        jar.Number,
        JarNumber.From(jar.Number).ToString(),
        jar.Revision,
        jar.Grades[0],
        jar.Solvents[0],
        jar.Shelf,
        jar.Cut?.PoundsPerUsGallon ?? 0,
        jar.Liquid.Milliliters,
        Day(jar.Mixed),
        Day(list.TestFrom(jar)),
        Day(jar.UseBy),
        StateWords.Of(list.StateOf(jar, now)),
        jar.Test is { } test ? Day(test.Day) : null,
        jar.Test?.Passed)
    {
        LearnedUseBy = list.Learned(jar) is { } learned ? Day(learned.UseBy) : null,
        Grades = jar.Grades is [_, _, ..] grades ? grades : null,
        Solvents = jar.Solvents is [_, _, ..] solvents ? solvents : null,
        Poison = list.Poisons.Contains(jar.Number) ? true : null,
        InDoubtSince = list.Doubts(jar).Since is { } since ? Day(DateOnly.FromDateTime(since)) : null,
        LabelOutOfDate = list.IsLabelOld(jar) ? true : null,
    };

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
