namespace JarLabel.Operations.Keeping;

/// <summary>What to say of a drying test that stands against another one, or against the label on the jar.</summary>
internal static class TestCautions
{
    internal static IReadOnlyList<Problem> Of(JarHistory history, JarEvent happened) =>
        happened is Tested { Passed: true } pass && history.Life.Standing.OfType<Tested>().Any(t => !t.Passed && t.At.Date <= pass.At.Date)
            ? [OperationProblems.PassAfterFailure(history.Jar.Number)]
            : happened is Tested { HowDried: Drying.Slow } ? [MixingCautions.DriedSlowly(history.Jar.Number)]
            : happened is Tested ? OfLabel(history) : [];

    /// <summary>That nothing is learned from a test, where that is so.</summary>
    internal static IReadOnlyList<Problem> OfLearning(Workbench bench, LedgerView view, JarHistory history, JarEvent happened) =>
        happened is not Tested test ? []
        : TestedJar.IsTooEarly(history.Life, test) ? [KeepingProblems.TestTooEarly(history.Jar)]
        : ShopLives.IsAlone(bench, view, history) ? [KeepingProblems.TestsAlone(history.Jar.Number)]
        : [];

    /// <summary>What to say of a label that was printed before the jar failed its test, and still gives a use-by.</summary>
    internal static IReadOnlyList<Problem> OfLabel(JarHistory history)
    {
        if (history.Jar is { OnShelf: true, Doubts.StillPromised: true })
        {
            return [OperationProblems.LabelStillPromises(history.Jar)];
        }

        JarEvent[] events = [.. history.Events.Select(e => e.Event)];
        var printed = Array.FindLastIndex(events, e => e is Labelled { IsOnGlass: true });
        return printed > 0 && history.Jar is { OnShelf: true, FailedOn: not null } jar && Jar.Fold(jar.Number, events[..printed]).Require().FailedOn is null
            ? [OperationProblems.LabelStillPromises(jar)]
            : [];
    }
}
