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
        StepCompletion.Open(bench).Then(finish => LedgerAccess.Record(bench, step =>
        {
            var recorder = new Recorder(step, number);
            return recorder.History.Then(history => history.UnchangedSince(bench.StepsSeen)).Then(_ => OnShelf(recorder))
                .Then<Jar>(jar => early?.Invoke(jar) is { } problem ? problem : jar)
                .Then(_ => recorder.InTime(bench)).Then<Jar>(history => history.Jar)
                .Then(jar => label is null ? jar : recorder.Redate(bench, later: false).Then<Jar>(h => h.Jar))
                .Then(jar => happen(jar).Then(happened => finish.Record(recorder, happened, label, Cautions(bench, jar, happened))));
        }));

    /// <summary>The jar, which must be on a shelf.</summary>
    internal static Result<Jar> OnShelf(Recorder recorder) => recorder.History.Then(history => history.Jar.DemandOnShelf());

    private static IReadOnlyList<Problem> Cautions(Workbench bench, Jar before, JarEvent happened) =>
        happened is Used or Thinned or Thickened ? BatchCautions.OfState(before.StateAt(bench.Now)) : [];
}
