namespace JarLabel.Operations.Changing;

/// <summary>One thing that happens to one jar on the shelf: what it is follows from the jar as it is now, and it is recorded with the new
/// label, all or nothing.</summary>
internal static class JarChange
{
    /// <param name="bench">The shop.</param>
    /// <param name="number">The jar.</param>
    /// <param name="label">The label wanted where the old one is no longer true; null for none.</param>
    /// <param name="happen">What happens to the jar.</param>
    /// <param name="early">What to say of a moment that is too early in a way of its own; null for what is said of every step.</param>
    internal static Result<JarOutcome> Do(Workbench bench, JarNumber number, LabelChoice? label, Func<Jar, Result<JarEvent>> happen, Func<Jar, Problem?>? early = null) =>
        StepCompletion.Open(bench).Then(completion => LedgerAccess.Record(bench, step =>
        {
            var recorder = new Recorder(step, number);
            if (!Before(bench, recorder, label, early).TryGet(out var jar, out var faults) || !happen(jar).TryGet(out var happened, out faults))
            {
                return faults;
            }

            return completion.Record(recorder, happened, label, Cautions(bench, jar, happened));
        }));

    /// <summary>The jar as the step finds it: as it was last seen, on a shelf, not later than the step, and with its dates of today where it
    /// gets a label.</summary>
    private static Result<Jar> Before(Workbench bench, Recorder recorder, LabelChoice? label, Func<Jar, Problem?>? early)
    {
        if (!recorder.History.Then(history => history.UnchangedSince(bench.StepsSeen)).TryGet(out _, out var faults) || !OnShelf(recorder).TryGet(out var jar, out faults))
        {
            return faults;
        }

        if (early?.Invoke(jar) is { } tooEarly)
        {
            return tooEarly;
        }

        var history = recorder.InTime(bench);
        return (label is null ? history : history.Then(_ => recorder.Redate(bench, later: false))).Then<Jar>(found => found.Jar);
    }

    /// <summary>The jar, which must be on a shelf.</summary>
    internal static Result<Jar> OnShelf(Recorder recorder) => recorder.History.Then(history => history.Jar.DemandOnShelf());

    private static IReadOnlyList<Problem> Cautions(Workbench bench, Jar before, JarEvent happened) =>
        happened is Used or Thinned or Thickened ? BatchCautions.OfState(before.StateAt(bench.Now)) : [];
}
