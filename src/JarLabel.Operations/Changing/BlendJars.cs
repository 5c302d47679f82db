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
            ? OperationProblems.TooFewJars(different, JarToName.OnShelf(bench, 2))
            : StepCompletion.Open(bench).Then(completion => LedgerAccess.Record(bench, step => Record(bench, parts, into, completion, step)));
    }

    private static Result<JarOutcome> Record(Workbench bench, IReadOnlyList<(JarNumber Jar, TakenText Amount)> parts, NewJar into, StepCompletion completion, LedgerStep step)
    {
        if (!Results.All(parts.Select(part => Part(bench, new Recorder(step, part.Jar), part.Amount))).TryGet(out var pours, out var faults)
            || !Begin(bench, pours, into).TryGet(out var begun, out faults))
        {
            return faults;
        }

        var recorder = Recorder.ForNewJar(step);
        Problem[] ofParts = [.. pours.Where(pour => !pour.IsAll).SelectMany(pour => pour.Cautions(bench)).Distinct()];
        if (!completion.Record(recorder, begun, into.Label, ofParts, goesOn: true).TryGet(out var outcome, out faults)
            || !Results.All(pours.Select(pour => pour.Out(bench, recorder.Jar))).TryGet(out var left, out faults))
        {
            return faults;
        }

        return outcome with { Cautions = [.. outcome.Cautions, .. completion.OfShelves(step, [.. left.Select(history => history.Jar)], [outcome.History.Jar])] };
    }

    private static Result<Pour> Part(Workbench bench, Recorder from, TakenText amount) =>
        from.Unchanged(bench).Then(history => Pour.Of(bench, from, amount.Of(history.Jar.Contents.Liquid), "jar"));

    private static Result<Blended> Begin(Workbench bench, IReadOnlyList<Pour> pours, NewJar into)
    {
        var contents = pours.Select(p => p.Taken).Aggregate((one, other) => one.With(other));
        return bench.Settings.Shelf(into.Shelf ?? pours[0].Jar.Shelf).Then(shelf => Pour.Fits(into.Container, contents).Then(container => Results.All(pours.Select(p => p.DatesOn(bench, shelf))).Then<Blended>(dates => new Blended(
            bench.Now,
            contents,
            container,
            dates.Aggregate((one, other) => one.Shortest(other)),
            shelf.Name,
            pours.Min(p => p.Jar.MixedAt),
            [.. pours.Select(p => p.Jar.Number)],
            into.By,
            into.Job,
            into.Note,
            TestResult.OfBlend([.. pours.Select(p => p.Jar.Test)])))));
    }
}
