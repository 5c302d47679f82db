namespace JarLabel.Operations.Keeping;

/// <summary>What to say of a drying test that stands against another one, or against the label on the jar.</summary>
internal static class TestCautions
{
    internal static IReadOnlyList<Problem> Of(JarHistory history, JarEvent happened) =>
    [
        .. happened is Tested { Passed: true } pass && history.Life.Standing.OfType<Tested>().Any(t => !t.Passed && t.At.Date <= pass.At.Date)
            ? [OperationProblems.PassAfterFailure(history.Jar.Number)]
            : happened is Tested { HowDried: Drying.Slow } ? [MixingCautions.DriedSlowly(history.Jar.Number)] : (Problem[])[],
        .. happened is Tested or Undone ? OfLabel(history) : [],
    ];

    /// <summary>That nothing is learned from a test, where that is so.</summary>
    internal static IReadOnlyList<Problem> OfLearning(Workbench bench, LedgerView view, JarHistory history, JarEvent happened) =>
        happened is not Tested test ? []
        : TestedJar.IsTooEarly(history.Life, test) ? [KeepingProblems.TestTooEarly(history.Jar)]
        : ShopLives.IsAlone(bench, view, history) ? [KeepingProblems.TestsAlone(history.Jar.Number)]
        : [];

    /// <summary>What to say of a label that was printed before the jar failed its test or came into doubt and still gives a use-by, and of one that still warns of what is so no longer.</summary>
    internal static IReadOnlyList<Problem> OfLabel(JarHistory history)
    {
        if (history.Jar is { OnShelf: true, Doubts.StillPromised: true })
        {
            return [OperationProblems.LabelStillPromises(history.Jar)];
        }

        JarEvent[] events = [.. history.Events.Select(e => e.Event)];
        var place = Array.FindLastIndex(events, e => e is Labelled { IsOnGlass: true });
        if (place <= 0 || !history.Jar.OnShelf)
        {
            return [];
        }

        var (label, jar) = ((Labelled)events[place], history.Jar);
        var failedThen = Jar.Fold(jar.Number, events[..place]).Require().FailedOn is not null;
        return (failedThen, jar.FailedOn is not null) switch
        {
            (false, true) => [OperationProblems.LabelStillPromises(jar, LabelCode.SaysInDoubt(label.Payload))],
            (true, false) => [OperationProblems.LabelStillWarns(jar.Number, "that a drying test failed")],
            _ when !jar.Doubts.Any && jar.FailedOn is null && LabelCode.SaysInDoubt(label.Payload) => [OperationProblems.LabelStillWarns(jar.Number, "that it is in doubt")],
            _ => [],
        };
    }
}
