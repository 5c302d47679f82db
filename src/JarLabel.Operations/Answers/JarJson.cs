namespace JarLabel.Operations.Answers;

/// <summary>A jar for a program.</summary>
internal sealed record JarJson(
    int Number,
    string Id,
    int Revision,
    string Grade,
    string Solvent,
    string Shelf,
    double CutPoundsPerGallon,
    double VolumeMilliliters,
    double? ContainerMilliliters,
    string Mixed,
    string Ready,
    string TestFrom,
    string UseBy,
    string State,
    string? Tested,
    bool? TestPassed)
{
    /// <summary>The use-by that the shop's drying tests say now, where the one on record, and on the label, is clearly another.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? LearnedUseBy { get; init; }

    /// <summary>On how many drying tests of such jars the use-by on record stands.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? KeepingTests { get; init; }

    /// <summary>True when its last test dried hard but clearly slower than fresh; left out when not.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public bool? TestSlow { get; init; }

    /// <summary>Since when it is in doubt whether it dries hard, whatever its use-by; left out where it is not.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? InDoubtSince { get; init; }

    internal static JarJson Of(Jar jar, DateTime now) => new(
        jar.Number.Value,
        jar.Number.ToString(),
        jar.Revision,
        RecipeJson.Grades(jar.Held),
        RecipeJson.Solvents(jar.Held),
        jar.Shelf,
        jar.Contents.Cut?.PoundsPerUsGallon ?? 0,
        jar.Contents.Liquid.Milliliters,
        jar.Container.Holds?.Milliliters,
        Day(DateOnly.FromDateTime(jar.MixedAt)),
        jar.Dates.Ready.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture),
        Day(jar.TestFrom),
        Day(jar.Dates.UseBy),
        StateWords.Of(jar.StateAt(now)),
        jar.Test is { } test ? Day(test.Day) : null,
        jar.Test?.Passed)
    {
        LearnedUseBy = jar.Learned is { } learned ? Day(learned.UseBy) : null,
        TestSlow = jar.Test is { Slow: true } ? true : null,
        InDoubtSince = jar.DoubtedSince is { } since ? Day(since) : null,
        KeepingTests = jar.Dates.Basis?.Tests,
    };

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
