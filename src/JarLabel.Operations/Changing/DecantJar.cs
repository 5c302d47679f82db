namespace JarLabel.Operations.Changing;

/// <summary>Pours a jar off into new ones. Each is the same liquid with the same dates, under a number of its own.</summary>
public static class DecantJar
{
    /// <summary>The jar with what is left in it and the new jars, or every reason why not; then nothing was recorded and nothing written.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="number">The jar.</param>
    /// <param name="amounts">How much into each new jar; a share is one of what the jar holds at first.</param>
    /// <param name="into">What the new jars are like.</param>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, IReadOnlyList<TakenText> amounts, NewJar into)
    {
        return amounts.Count == 0
            ? OperationProblems.NothingToDecant()
            : StepCompletion.Open(bench).Then(completion => LedgerAccess.Record(bench, step => Record(bench, new Recorder(step, number), amounts, into, completion)));
    }

    private static Result<JarOutcome> Record(Workbench bench, Recorder from, IReadOnlyList<TakenText> amounts, NewJar into, StepCompletion completion)
    {
        var full = from.History.TryGet(out var before, out _) ? before.Jar.Contents.Liquid : Volume.Zero;
        var made = new List<JarOutcome>();
        foreach (var amount in amounts)
        {
            if (made.Count > 0 && from.History.TryGet(out var so, out _) && !so.Jar.OnShelf)
            {
                return OperationProblems.NothingLeftToDecant(from.Jar, made.Count);
            }

            if (!Pour.Of(bench, from, amount.Of(full), "into").Then(pour => Fill(bench, pour, into, completion)).TryGet(out var outcome, out var problems))
            {
                // Of what is wanted altogether is told, not of what the first ones leave.
                var wanted = Volume.FromMilliliters(amounts.Sum(one => one.Of(full)?.Milliliters ?? 0));
                return made.Count > 0 && before is not null && !before.Jar.Take(wanted, "into").TryGet(out _, out var tooMuch) ? tooMuch : Result<JarOutcome>.Failed(problems);
            }

            made.Add(outcome);
        }

        if (!from.History.TryGet(out var left, out var faults))
        {
            return faults;
        }

        var shelves = completion.OfShelves(from.Step, [left.Jar], [.. made.Select(one => one.History.Jar)]);
        return new JarOutcome(left, Labels.JarWords.Hazards(bench, left.Jar), null, [.. made.SelectMany(one => one.Cautions).Concat(shelves).Distinct()]) { Made = made };
    }

    private static Result<JarOutcome> Fill(Workbench bench, Pour pour, NewJar into, StepCompletion completion) => Begin(bench, pour, into).Then(begun =>
    {
        var recorder = Recorder.ForNewJar(pour.From.Step);
        return completion.Record(recorder, begun, into.Label, pour.Cautions(bench), goesOn: true).Then(outcome => pour.Out(bench, recorder.Jar).Then<JarOutcome>(_ => outcome));
    });

    private static Result<Decanted> Begin(Workbench bench, Pour pour, NewJar into)
    {
        var jar = pour.Jar;
        return bench.Settings.Shelf(into.Shelf ?? jar.Shelf).Then(shelf => Pour.Fits(into.Container, pour.Taken).Then(container => pour.DatesOn(bench, shelf).Then<Decanted>(dates => new Decanted(
            bench.Now,
            pour.Taken,
            container,
            dates,
            shelf.Name,
            jar.MixedAt,
            jar.Number,
            into.By ?? jar.By,
            into.Job ?? jar.Job,
            into.Note ?? jar.Note,
            jar.Test,
            jar.Changed))));
    }
}

/// <summary>The jar that something is poured into; what is null comes from where it was poured from.</summary>
/// <param name="Container">What it is.</param>
/// <param name="Shelf">The shelf it goes to.</param>
/// <param name="By">Who pours.</param>
/// <param name="Job">What for.</param>
/// <param name="Note">Anything else.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record NewJar(Container Container, string? Shelf = null, string? By = null, string? Job = null, string? Note = null, LabelChoice? Label = null);
