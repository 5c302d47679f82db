namespace JarLabel.Operations.Labels;

/// <summary>What should be known of labels as they are printed: that a jar failed its test, that its flakes were found bad, and that a word of its history cannot be drawn.</summary>
internal sealed class LabelCautions
{
    private readonly List<(JarNumber Jar, DateOnly Day)> failed = [];
    private readonly List<(JarNumber Jar, JarDoubts Doubts)> inDoubt = [];
    private readonly List<string> drawnOtherwise = [];
    private readonly HashSet<string> undrawn = new(StringComparer.Ordinal);

    /// <summary>All cautions, each told once for all its jars.</summary>
    internal IReadOnlyList<Problem> All =>
    [
        .. failed.Count > 0 ? [OperationProblems.TestsFailed(failed)] : Array.Empty<Problem>(),
        .. JarDoubts.Cautions(inDoubt),
        .. undrawn.Count > 0 ? [OperationProblems.DrawnOtherwise(drawnOtherwise, [.. undrawn])] : Array.Empty<Problem>(),
    ];

    /// <summary>The cautions about one jar's label.</summary>
    internal static IReadOnlyList<Problem> Of(JarHistory history)
    {
        var cautions = new LabelCautions();
        cautions.Look(history);
        return cautions.All;
    }

    /// <summary>The cautions about the label of a bag or bottle.</summary>
    internal static IReadOnlyList<Problem> Of(string name, string? note) =>
        OwnWords.Missing([note], new SkiaRuler()) is { Count: > 0 } missing ? [OperationProblems.DrawnOtherwise([name], missing)] : [];

    /// <summary>Looks at one jar more.</summary>
    internal void Look(JarHistory history)
    {
        var jar = history.Jar;
        if (jar.FailedOn is { } day)
        {
            failed.Add((jar.Number, day));
        }

        if (jar.Doubts.Any)
        {
            inDoubt.Add((jar.Number, jar.Doubts));
        }

        var missing = OwnWords.Missing([jar.By, jar.Job, jar.Note, .. history.Events.Select(e => HistoryWords.Of(e.Event))], new SkiaRuler());
        if (missing.Count > 0)
        {
            drawnOtherwise.Add($"jar {jar.Number}");
            undrawn.UnionWith(missing);
        }
    }
}
