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
        Do(bench, number, label, (history, _) => happen(history.Jar), early);

    /// <summary>The same where what happens follows from the jar's whole history and from the ledger.</summary>
    internal static Result<JarOutcome> Do(Workbench bench, JarNumber number, LabelChoice? label, Func<JarHistory, LedgerStep, Result<JarEvent>> happen, Func<Jar, Problem?>? early = null) =>
        On(bench, number, early, (recorder, completion, _) =>
        {
            if (!Dated(bench, recorder, label).TryGet(out var history, out var faults) || !happen(history, recorder.Step).TryGet(out var happened, out faults))
            {
                return faults;
            }

            return Before(bench, recorder, history, happened, label).Then(cautions => completion.Record(recorder, happened, label, cautions));
        });

    /// <summary>Whatever is done to one jar as it was last seen, on the shelf, at a moment that is not too early.</summary>
    internal static Result<JarOutcome> On(Workbench bench, JarNumber number, Func<Jar, Problem?>? early, Func<Recorder, StepCompletion, Jar, Result<JarOutcome>> work) =>
        StepCompletion.Open(bench).Then(completion => LedgerAccess.Record(bench, step =>
        {
            var recorder = new Recorder(step, number);
            if (!recorder.History.Then(history => history.UnchangedSince(bench.StepsSeen)).TryGet(out _, out var faults) || !OnShelf(recorder).TryGet(out var jar, out faults))
            {
                return faults;
            }

            if (early?.Invoke(jar) is { } tooEarly)
            {
                return tooEarly;
            }

            return recorder.InTime(bench).Then(history => work(recorder, completion, history.Jar));
        }));

    /// <summary>The jar with the sooner dates that the shop's tests say, where it gets a label.</summary>
    internal static Result<JarHistory> Dated(Workbench bench, Recorder recorder, LabelChoice? label) => label is null ? recorder.History : recorder.Redate(bench, later: false);

    /// <summary>The jar, which must be on a shelf.</summary>
    internal static Result<Jar> OnShelf(Recorder recorder) => recorder.History.Then(history => history.Jar.DemandOnShelf());

    /// <summary>What should have been known of the jar before its liquid was worked with. Where it gets a label, what is known stands with it already.</summary>
    private static Result<IReadOnlyList<Problem>> Before(Workbench bench, Recorder recorder, JarHistory history, JarEvent happened, LabelChoice? label) => happened is Used or Thinned or Thickened
        ? (label is null ? recorder.Marked(bench) : Result<JarHistory>.Of(history)).Then(known => Result<IReadOnlyList<Problem>>.Of(BatchCautions.OfState(known.Jar, bench.Now)))
        : Result<IReadOnlyList<Problem>>.Of([]);
}
