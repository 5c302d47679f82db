namespace JarLabel.Operations.Keeping;

/// <summary>What to say of a drying test that stands against another one, or against the label on the jar.</summary>
internal static class TestCautions
{
    internal static IReadOnlyList<Problem> Of(JarHistory history, JarEvent happened) =>
        happened is Tested { Passed: true } pass && history.Life.Standing.OfType<Tested>().Any(t => !t.Passed && t.At.Date <= pass.At.Date)
            ? [OperationProblems.PassAfterFailure(history.Jar.Number)]
            : happened is Tested { HowDried: Drying.Slow } ? [OperationProblems.DriedSlowly(history.Jar.Number)]
            : happened is Tested ? OfLabel(history) : [];

    /// <summary>What to say of a label that was printed before the jar failed its test, and still gives a use-by.</summary>
    internal static IReadOnlyList<Problem> OfLabel(JarHistory history)
    {
        JarEvent[] events = [.. history.Events.Select(e => e.Event)];
        return history.Jar is { OnShelf: true, FailedOn: not null } && history.IsLabelled && Array.FindLastIndex(events, e => e is Labelled) < Array.FindLastIndex(events, e => e is Tested { Passed: false })
            ? [OperationProblems.LabelStillPromises(history.Jar.Number)]
            : [];
    }
}
