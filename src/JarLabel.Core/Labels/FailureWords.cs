namespace JarLabel.Core.Labels;

/// <summary>What stands where the use-by would, once a drying test of the jar has failed.</summary>
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
            : [("test from", DateWords.Estimate(jar.TestFrom)), ("use by", $"{DateWords.Estimate(jar.Dates.UseBy)}, an estimate: try a few drops on glass")];
    }

    /// <summary>From the longest to the shortest, for a label that is small.</summary>
    internal static string[] Wordings(DateOnly day) => [On(day), $"failed {DateWords.Of(day)}", Failed];

    /// <summary>What takes the place of the line that says how the use-by was come by.</summary>
    internal const string OnCard = "No use-by: let a few drops dry hard on glass again before any use, or discard it.";
}
