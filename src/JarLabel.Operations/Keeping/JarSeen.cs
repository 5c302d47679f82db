namespace JarLabel.Operations.Keeping;

/// <summary>What to say of a jar that is looked at.</summary>
public static class JarSeen
{
    /// <summary>That its dates have moved, that its label speaks of it as it was, and that its flakes were found bad since.</summary>
    public static IReadOnlyList<Problem> Cautions(Workbench bench, JarHistory history) =>
        [.. LearnedDates.Cautions(history.Jar, history.IsLabelled), .. OfLabel(history), .. FlakesInDoubt.Of(bench, history)];

    /// <summary>That the newest label is older than the jar as it is.</summary>
    internal static IReadOnlyList<Problem> OfLabel(JarHistory history) =>
        history.Jar is { OnShelf: true, Learned: null } jar && history.LabelledRevision < jar.Revision ? [ScanProblems.LastLabelOutOfDate(jar, history.LabelledRevision.Value)] : [];
}
