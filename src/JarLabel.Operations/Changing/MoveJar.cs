namespace JarLabel.Operations.Changing;

/// <summary>Moves a jar to another shelf. On a warmer one its use-by comes sooner, on a cooler one later, and it gets a new label.</summary>
public static class MoveJar
{
    /// <summary>The jar on its new shelf, or why not; a jar that stands there already is told so, and nothing is recorded.</summary>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, string shelf, LabelChoice? label)
    {
        return bench.Settings.Shelf(shelf).Then(to => JarChange.On(bench, number, null, (recorder, completion, jar) => jar.Shelf == to.Name
            ? completion.Nothing(recorder, KeepingProblems.StandsThere($"Jar {jar.Number}", jar.Shelf))
            : JarChange.Dated(bench, recorder, label)
                .Then(dated => ShelfMoves.DatesOn(bench, recorder.Step, dated, to)
                .Then(dates => completion.Record(recorder, new Moved(bench.Now, to.Name, dates == dated.Jar.Dates ? null : dates), label)))
                .Then<JarOutcome>(outcome => ShelfMoves.IsKnown(bench, jar.Shelf) ? outcome : outcome with { Cautions = [.. outcome.Cautions, OperationProblems.ShelfUnknown([jar.Shelf])] })));
    }
}
