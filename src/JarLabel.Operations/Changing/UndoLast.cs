namespace JarLabel.Operations.Changing;

/// <summary>Takes back the last thing that happened to a jar and still stands, by a new event. What was poured from one jar into another is
/// taken back at all of them together, so that no liquid is counted twice. Other dates are paper like labels: they go with the step before them.</summary>
public static class UndoLast
{
    /// <summary>The jar as it was before, or why not.</summary>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, LabelChoice? label)
    {
        return StepCompletion.Open(bench).Then(completion => LedgerAccess.Record(bench, step =>
        {
            var recorder = new Recorder(step, number);
            return recorder.History.Then(history => history.UnchangedSince(bench.StepsSeen)).Then(_ => recorder.InTime(bench, undoing: true)).Then(history => TakeBack(bench, recorder, history.Life, completion, label));
        }));
    }

    private static Result<JarOutcome> TakeBack(Workbench bench, Recorder recorder, JarLife life, StepCompletion completion, LabelChoice? label)
    {
        if (!Others(recorder, life).TryGet(out var others, out var faults)
            || !Results.All(others.Select(other => TakeBack(bench, other))).TryGet(out var also, out faults)
            || !life.Undo(bench.Now).TryGet(out var undone, out faults))
        {
            return faults;
        }

        var last = life.Standing[0];
        if (!StockWithdrawal.PutBack(recorder.Step, recorder.Jar, last, bench.Now).TryGet(out var supplies, out faults))
        {
            return faults;
        }

        return completion.Record(recorder, undone, label).Then<JarOutcome>(outcome => outcome with
        {
            Also = [.. also.Select(history => history.Jar)],
            PutBack = [.. supplies.Select(back => back.Supply)],
            Cautions = [.. outcome.Cautions, .. also.Prepend(outcome.History).SelectMany(history => FilledToo(history, last)), .. supplies.SelectMany(back => back.Cautions)],
        });
    }

    /// <summary>Other jars that were filled from one of them in the step that was taken back, and still are.</summary>
    private static IEnumerable<Problem> FilledToo(JarHistory history, JarEvent undone) => undone is PouredOut or Decanted && history.Life.Standing is [PouredOut poured, ..] && poured.At == undone.At
        ? [OperationProblems.FilledToo(history.Jar.Number, poured.To)]
        : [];

    /// <summary>The other jars of a pouring, which must not have been worked on since.</summary>
    private static Result<IReadOnlyList<Recorder>> Others(Recorder jar, JarLife life) => Filled(life) is not { } made
        ? Result<IReadOnlyList<Recorder>>.Of([])
        : new Recorder(jar.Step, made).History.Then(filled => Results.All(Sources(filled.Life).Append(made).Select(n => Untouched(new Recorder(jar.Step, n), made))))
            .Then(all => Result<IReadOnlyList<Recorder>>.Of([.. all.Where(r => r.Jar != jar.Jar)]));

    /// <summary>The jar that was filled by the last thing that happened; null when it was no pouring.</summary>
    private static JarNumber? Filled(JarLife life) => life.Standing switch
    {
        [PouredOut poured, ..] => poured.To,
        [Blended or Decanted] => life.Jar.Number,
        _ => null,
    };

    private static IEnumerable<JarNumber> Sources(JarLife filled) => filled.Standing switch
    {
        [.., Blended b] => b.From,
        [.., Decanted d] => [d.From],
        _ => [],
    };

    private static Result<Recorder> Untouched(Recorder recorder, JarNumber made) => recorder.History.Then<Recorder>(history =>
        Filled(history.Life) == made ? recorder : OperationProblems.WentOn(recorder.Jar, made));

    private static Result<JarHistory> TakeBack(Workbench bench, Recorder other) =>
        other.History.Then(history => history.Life.Undo(bench.Now)).Then(other.Append).Then(_ => other.DatedAgain(bench));
}
