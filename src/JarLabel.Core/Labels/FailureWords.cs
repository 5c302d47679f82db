namespace JarLabel.Core.Labels;

/// <summary>What stands where the use-by would, once a drying test of the jar has failed, or it came into doubt.</summary>
public static class FailureWords
{
    /// <summary>What happened, without its day.</summary>
    public const string Failed = "test failed";

    /// <summary><c>test failed 1 May 2026</c>.</summary>
    public static string On(DateOnly day) => $"{Failed} {DateWords.Of(day)}";

    /// <summary>Words and what they say, for a list: from when to test and until when to use it, or that the jar has no such days.</summary>
    public static IEnumerable<(string Word, string? Says)> Rows(Jar jar)
    {
        return jar.FailedOn is { } failed
            ? [(Failed, $"{DateWords.Of(failed)}; do not use it as a finish")]
            : jar.DoubtedSince is { } since
            ? [("in doubt", $"since {DateWords.Of(since)}: try a few drops on glass before any use"), ("use by", $"{DateWords.Estimate(jar.Careful.UseBy)}, as long as the drops dry hard")]
            : [("test from", DateWords.Estimate(jar.TestFrom)), ("use by", $"{DateWords.Estimate(jar.Careful.UseBy)}, an estimate: try a few drops on glass")];
    }

    /// <summary>In place of the use-by, from the longest to the shortest, for a label that is small; none where nothing stands against it.</summary>
    internal static string[] Wordings(Jar jar) => (jar.FailedOn, jar.DoubtedSince) switch
    {
        ({ } day, _) => [On(day), $"failed {DateWords.Of(day)}", Failed],
        (_, { } since) => [$"in doubt since {DateWords.Of(since)}: test first", $"test first, {DateWords.Of(since)}", "test first"],
        _ => [],
    };

    /// <summary>The same in a table of words and dates.</summary>
    internal static string[][] Table(Jar jar) => (jar.FailedOn, jar.DoubtedSince) switch
    {
        ({ } day, _) => [[Failed, DateWords.Of(day)], ["do not use", "as a finish"]],
        (_, { } since) => [["in doubt", DateWords.Of(since)], ["test first", "before any use"]],
        _ => [],
    };

    /// <summary>What is said of how the use-by was come by where there is none.</summary>
    internal static string? OnCard(Jar jar) => (jar.FailedOn, jar.DoubtedSince) switch
    {
        ({ }, _) => "No use-by: let a few drops dry hard on glass again before any use, or discard it.",
        (_, { }) => "No use-by while it is in doubt: let a few drops dry hard on glass before any use, or discard it.",
        _ => null,
    };
}
