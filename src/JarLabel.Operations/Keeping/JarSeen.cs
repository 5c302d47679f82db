namespace JarLabel.Operations.Keeping;

/// <summary>What to say of a jar that is looked at.</summary>
public static class JarSeen
{
    /// <summary>That its dates have moved, that its label speaks of it as it was, and how it stands: its flakes found bad since, old, failed, in more glass than there may be.</summary>
    /// <param name="bench">The shop at this moment.</param>
    /// <param name="history">The jar.</param>
    /// <param name="hazards">How dangerous it is.</param>
    /// <param name="labelSeen">True when its label was read, of which more is said then.</param>
    public static IReadOnlyList<Problem> Cautions(Workbench bench, JarHistory history, HazardAssessment hazards, bool labelSeen = false) =>
    [
        .. history.Events.Any(e => e.Event.At > bench.Now) ? [OperationProblems.LaterSteps(history.Jar.Number, bench.Now)] : (Problem[])[],
        .. LearnedDates.Cautions(history.Jar, history.IsLabelled),
        .. labelSeen ? [] : OfLabel(history),
        .. TestCautions.OfLabel(history),
        .. BatchCautions.OfState(history.Jar, bench.Now),
        .. history.Jar.OnShelf ? JarCautions.Of(bench, history.Jar, hazards) : [],
    ];

    /// <summary>That the newest label is older than the jar as it is.</summary>
    internal static IReadOnlyList<Problem> OfLabel(JarHistory history) =>
        history.Jar is { OnShelf: true, Learned: null } jar && history.LabelledRevision < jar.Revision ? [ScanProblems.LastLabelOutOfDate(jar, history.LabelledRevision.Value)] : [];
}
