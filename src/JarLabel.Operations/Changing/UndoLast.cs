namespace JarLabel.Operations.Changing;

/// <summary>Takes back the last thing that happened to a jar and still stands, by a new event. What was poured from one jar into another is
/// taken back at all of them together, so that no liquid is counted twice.</summary>
public static class UndoLast
{
    /// <summary>The jar as it was before, or why not.</summary>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, LabelChoice? label)
    {
        return StepCompletion.Open(bench).Then(finish => LedgerAccess.Record(bench, step =>
        {
            var recorder = new Recorder(step, number);
            return recorder.History.Then(history => history.UnchangedSince(bench.StepsSeen)).Then(_ => recorder.InTime(bench)).Then(_ => Life(recorder)).Then(life => Others(recorder, life).Then(others => TakeBack(bench, others).Then(_ =>
                life.Undo(bench.Now).Then(undone => PutBack(bench, recorder, life, undone)).Then(undone => finish.Record(recorder, undone, label)))));
        }));
    }

    /// <summary>What the step took from a bag or bottle was never taken.</summary>
    private static Result<Undone> PutBack(Workbench bench, Recorder recorder, JarLife life, Undone undone)
    {
        StockWithdrawal.PutBack(recorder.Step, recorder.Jar, life.Standing[0], bench.Now);
        return undone;
    }

    /// <summary>The other jars of a pouring, which must not have been worked on since.</summary>
    private static Result<IReadOnlyList<Recorder>> Others(Recorder jar, JarLife life) => Filled(life) is not { } made
        ? Result<IReadOnlyList<Recorder>>.Of([])
        : Life(new Recorder(jar.Step, made)).Then(filled => Results.All(Sources(filled).Append(made).Select(n => Untouched(new Recorder(jar.Step, n), made))))
            .Then(all => Result<IReadOnlyList<Recorder>>.Of([.. all.Where(r => r.Jar != jar.Jar)]));

    /// <summary>The jar that was filled by the last thing that happened; null when it was no pouring.</summary>
    private static JarNumber? Filled(JarLife life) => life.Standing switch
    {
        [PouredOut poured, ..] => poured.To,
        [Blended or Decanted] => life.Jar.Number,
        _ => null,
    };

    private static IEnumerable<JarNumber> Sources(JarLife filled) => filled.Standing.Count == 0
        ? []
        : filled.Standing[^1] switch
        {
            Blended b => b.From,
            Decanted d => [d.From],
            _ => [],
        };

    private static Result<Recorder> Untouched(Recorder recorder, JarNumber made) => Life(recorder).Then<Recorder>(life =>
        life.Standing is [Blended or Decanted] or [PouredOut, ..] && Filled(life) == made ? recorder : OperationProblems.WentOn(recorder.Jar, made));

    private static Result<IReadOnlyList<JarHistory>> TakeBack(Workbench bench, IReadOnlyList<Recorder> others) =>
        Results.All(others.Select(other => Life(other).Then(life => life.Undo(bench.Now)).Then(other.Append).Then(_ => other.DatedAgain(bench))));

    private static Result<JarLife> Life(Recorder recorder) =>
        recorder.History.Then(history => JarLife.Of(recorder.Jar, history.Events.Select(e => e.Event)));
}
