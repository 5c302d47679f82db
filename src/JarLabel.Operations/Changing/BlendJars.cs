namespace JarLabel.Operations.Changing;

/// <summary>Pours jars, or parts of them, together into a new one. It takes the shortest keeping of its parts; its hazards are those
/// of the whole, worked out like any mixture's.</summary>
public static class BlendJars
{
    /// <summary>The new jar, or every reason why not; then nothing was recorded and nothing written.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="parts">The jars, each with how much of it.</param>
    /// <param name="into">The new jar.</param>
    public static Result<JarOutcome> Do(Workbench bench, IReadOnlyList<(JarNumber Jar, TakenText Amount)> parts, NewJar into)
    {
        return parts.DistinctBy(p => p.Jar).Count() is var different && (different < 2 || different < parts.Count)
            ? OperationProblems.TooFewJars(different)
            : StepCompletion.Open(bench).Then(finish => LedgerAccess.Record(bench, step => Record(bench, parts, into, finish, step)));
    }

    private static Result<JarOutcome> Record(Workbench bench, IReadOnlyList<(JarNumber Jar, TakenText Amount)> parts, NewJar into, StepCompletion finish, LedgerStep step) =>
        All(parts.Select(p => Part(bench, new Recorder(step, p.Jar), p.Amount))).Then(pours => Begin(bench, pours, into).Then(begun =>
        {
            var recorder = Recorder.ForNewJar(step);
            return finish.Record(recorder, begun, into.Label, [.. pours.SelectMany(p => BatchCautions.OfState(p.Jar.StateAt(bench.Now))).Distinct()], goesOn: true)
                .Then(outcome => All(pours.Select(p => p.Out(bench, recorder.Jar))).Then<JarOutcome>(left => outcome with
                {
                    Cautions = [.. outcome.Cautions, .. finish.OfShelves(step, [.. left.Select(history => history.Jar)], [outcome.History.Jar])],
                }));
        }));

    private static Result<Pour> Part(Workbench bench, Recorder from, TakenText amount) =>
        from.History.Then(history => Pour.Of(bench, from, amount.Of(history.Jar.Contents.Liquid), "jar"));

    private static Result<Blended> Begin(Workbench bench, IReadOnlyList<Pour> pours, NewJar into)
    {
        var contents = pours.Select(p => p.Taken).Aggregate((one, other) => one.With(other));
        return bench.Settings.Shelf(into.Shelf ?? pours[0].Jar.Shelf).Then(shelf => Pour.Fits(into.Container, contents).Then<Blended>(container => new Blended(
            bench.Now,
            contents,
            container,
            pours.Select(p => p.DatesOn(bench, shelf)).Aggregate((one, other) => one.Shortest(other)),
            shelf.Name,
            pours.Min(p => p.Jar.MixedAt),
            [.. pours.Select(p => p.Jar.Number)],
            into.By,
            into.Job,
            into.Note,
            TestResult.OfBlend([.. pours.Select(p => p.Jar.Test)]))));
    }

    /// <summary>Every value, or every problem.</summary>
    internal static Result<IReadOnlyList<T>> All<T>(IEnumerable<Result<T>> results)
        where T : notnull
    {
        var all = results.ToArray();
        Problem[] problems = [.. all.SelectMany(r => r.Problems)];
        return problems.Length > 0 ? Result<IReadOnlyList<T>>.Failed(problems) : Result<IReadOnlyList<T>>.Of([.. all.Select(r => r.Require())]);
    }
}
