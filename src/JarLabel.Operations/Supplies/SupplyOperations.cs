namespace JarLabel.Operations.Supplies;

/// <summary>What a person does with a bag of flakes or a bottle of alcohol, beside mixing from it. Each is recorded whole or not at all.</summary>
public static class SupplyOperations
{
    /// <summary>Puts a new bag or bottle into the ledger and writes its label.</summary>
    public static Result<SupplyOutcome> Add(Workbench bench, SupplyRequest request)
    {
        if (!Begun(bench, request).TryGet(out var added, out var faults) || !SupplyLabels.Open(bench).TryGet(out var labels, out faults))
        {
            return faults;
        }

        return LedgerAccess.Record(bench, step =>
        {
            var number = SupplyNumber.From(step.NextNumber(SupplyBook.Kind(request.Kind)));
            SupplyBook.Append(step, SupplyBook.Subject(request.Kind, number), added);
            return SupplyBook.Find(step, request.Kind, number).Then(supply => Labelled(bench, step, labels, supply, request.Label, null));
        });
    }

    /// <summary>Prints its label again.</summary>
    public static Result<SupplyOutcome> Label(Workbench bench, SupplyKind kind, SupplyNumber number, LabelChoice choice, string? file) =>
        SupplyLabels.Open(bench).Then(labels => LedgerAccess.Record(bench, step =>
            SupplyBook.Find(step, kind, number).Then(supply => supply.DemandOnHand(kind.Word())).Then(supply => Labelled(bench, step, labels, supply, choice, file))));

    /// <summary>Says what the scale or the measure says is left; nothing is an answer too.</summary>
    public static Result<SupplyOutcome> Left(Workbench bench, SupplyKind kind, SupplyNumber number, SupplyEvent reading) =>
        Record(bench, kind, number, supply => SupplyFit.Check(reading, supply), ofMoment: true);

    /// <summary>Says how a pinch of a bag dissolved.</summary>
    public static Result<SupplyOutcome> Test(Workbench bench, SupplyNumber number, Pinch pinch) =>
        Record(bench, SupplyKind.Bag, number, bag => OnHand(bag, new FlakesTested(bench.Now, pinch)))
            .Then(outcome => LedgerAccess.Read<SupplyOutcome>(bench, view => outcome with { Cautions = [.. outcome.Cautions, .. BagCautions.OfTest((Bag)outcome.Supply, JarsInDoubt.Holding(view, (Bag)outcome.Supply))] }));

    /// <summary>Says where a bottle stands now.</summary>
    public static Result<SupplyOutcome> Move(Workbench bench, SupplyNumber number, string shelf) =>
        bench.Settings.Shelf(shelf).Then(to => LedgerAccess.Read(bench, view => SupplyBook.Find(view, SupplyKind.Bottle, number)).Then(bottle => bottle is Bottle { OnHand: true } standing && standing.Shelf == to.Name
            ? Of(bench, bottle) with { Cautions = [KeepingProblems.StandsThere($"Bottle {bottle.Number}", to.Name)] }
            : Record(bench, SupplyKind.Bottle, number, moved => OnHand(moved, new BottleMoved(bench.Now, to.Name)))));

    /// <summary>Takes it out of the shop.</summary>
    public static Result<SupplyOutcome> Discard(Workbench bench, SupplyKind kind, SupplyNumber number, string? why) =>
        Record(bench, kind, number, supply => OnHand(supply, new SupplyDiscarded(bench.Now, why)));

    /// <summary>Takes the last step at it back, by a new event.</summary>
    public static Result<SupplyOutcome> Undo(Workbench bench, SupplyKind kind, SupplyNumber number) =>
        Record(bench, kind, number, supply => supply.Undo(bench.Now).Then<SupplyEvent>(undone => undone), ofMoment: true);

    /// <summary>One looked up, with what is dangerous about it.</summary>
    internal static SupplyOutcome Of(Workbench bench, Supply supply) => new(supply, supply is Bottle bottle ? SupplyWords.Hazards(bench, bottle) : null, null, []);

    private static Result<SupplyEvent> OnHand(Supply supply, SupplyEvent happened) => supply.DemandOnHand(supply.Kind.Word()).Then<SupplyEvent>(_ => happened);

    private static Result<SupplyEvent> Begun(Workbench bench, SupplyRequest request) => request.Added is BottleAdded bottle
        ? bench.Settings.Shelf(bottle.Shelf.Length == 0 ? null : bottle.Shelf).Then<SupplyEvent>(shelf => bottle with { At = bench.Now, Shelf = shelf.Name })
        : request.Added with { At = bench.Now };

    /// <param name="bench">The shop.</param>
    /// <param name="kind">Which of both.</param>
    /// <param name="number">Its number.</param>
    /// <param name="happen">What happens to it.</param>
    /// <param name="ofMoment">True for what is said of it as it was seen, and is no longer true when something was done with it since.</param>
    private static Result<SupplyOutcome> Record(Workbench bench, SupplyKind kind, SupplyNumber number, Func<Supply, Result<SupplyEvent>> happen, bool ofMoment = false) => LedgerAccess.Record(bench, step =>
    {
        if (!(ofMoment ? SupplyBook.Unchanged(bench, step, kind, number) : SupplyBook.Find(step, kind, number)).TryGet(out var before, out var faults)
            || !happen(before).TryGet(out var happened, out faults)
            || !SupplyBook.InTime(bench, before, happened).TryGet(out var timed, out faults))
        {
            return faults;
        }

        SupplyBook.Append(step, SupplyBook.Subject(kind, number), timed);
        return SupplyBook.Find(step, kind, number).Then<SupplyOutcome>(after => Of(bench, after) with
        {
            Step = timed,
            Cautions = [.. bench.ClockBehind is { } clock ? [clock] : (Problem[])[], .. bench.Slips, .. MovedTo(before, after) is { } shelf ? ShelfCautions.Of(bench, step, shelf) : []],
        });
    });

    /// <summary>The shelf that it has now and had not before; null for none.</summary>
    private static string? MovedTo(Supply before, Supply after) => after is Bottle { OnHand: true } bottle && (before as Bottle)?.Shelf != bottle.Shelf ? bottle.Shelf : null;

    private static Result<SupplyOutcome> Labelled(Workbench bench, LedgerStep step, SupplyLabels labels, Supply supply, LabelChoice? choice, string? file)
    {
        var outcome = Of(bench, supply);
        outcome = outcome with { Cautions = [.. step.Cautions, .. bench.Slips, .. OfContents(bench, step, outcome)] };
        return choice is null ? outcome : labels.Write(step, outcome, choice, file)
            .Then<SupplyOutcome>(label => outcome with { Label = label, Cautions = [.. outcome.Cautions, .. LabelCautions.Of($"{supply.Kind.Word()} {supply.Number}", supply.Note)] });
    }

    private static IEnumerable<Problem> OfContents(Workbench bench, LedgerView view, SupplyOutcome outcome) =>
        [.. OfContents(bench, view, outcome.Supply), .. outcome.Supply is Bottle bottle ? ShelfCautions.Of(bench, view, bottle.Shelf) : []];

    /// <summary>What should be known of what is in it, and of what it stands in.</summary>
    internal static IReadOnlyList<Problem> OfContents(Workbench bench, LedgerView view, Supply supply)
    {
        if (supply is not Bottle bottle)
        {
            var grade = bench.Catalog.GradeOf(supply.Holds);
            return [.. BatchCautions.OfFlakes(grade, bench.Catalog.Keeping.Find(grade.Keeping)!, supply.Since, DateOnly.FromDateTime(bench.Now)), .. BagCautions.OfTest((Bag)supply, JarsInDoubt.Holding(view, (Bag)supply))];
        }

        var hazards = SupplyWords.Hazards(bench, bottle);
        return [.. BatchCautions.OfSolvent(bench.Catalog.SolventOf(bottle.Solvent)), .. BatchCautions.OfLid(hazards), .. StorageCautions.Of(bottle, hazards, bench.Catalog)];
    }
}

/// <summary>How a bag or bottle stands after something was done with it.</summary>
/// <param name="Supply">The bag or bottle.</param>
/// <param name="Hazards">What is dangerous about it; null for a bag, which has no hazard.</param>
/// <param name="Label">The label that was written, if one was.</param>
/// <param name="Cautions">What went through but should be known.</param>
public sealed record SupplyOutcome(Supply Supply, HazardAssessment? Hazards, WrittenSupplyLabel? Label, IReadOnlyList<Problem> Cautions)
{
    /// <summary>What was recorded of it; null when it was only looked at, entered or labelled.</summary>
    public SupplyEvent? Step { get; init; }
}

/// <summary>A bag or bottle that came into the shop.</summary>
/// <param name="Kind">Which of both.</param>
/// <param name="Added">What came; its moment and the shop's first shelf are filled in when it is recorded.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record SupplyRequest(SupplyKind Kind, SupplyEvent Added, LabelChoice? Label)
{
    /// <summary>A bag of flakes.</summary>
    /// <param name="grade">The grade.</param>
    /// <param name="weight">What it holds.</param>
    /// <param name="made">When the flakes were made or bought.</param>
    /// <param name="note">Anything else.</param>
    /// <param name="label">The label wanted; null for none.</param>
    public static SupplyRequest Bag(Grade grade, Mass weight, DateOnly made, string? note = null, LabelChoice? label = null) =>
        new(SupplyKind.Bag, new BagAdded(default, grade.Id, weight, made, note), label);

    /// <summary>A bottle of alcohol.</summary>
    /// <param name="solvent">The alcohol.</param>
    /// <param name="volume">What it holds.</param>
    /// <param name="since">When it was bought or opened.</param>
    /// <param name="shelf">Where it stands; null for the shop's first shelf.</param>
    /// <param name="material">What it is made of; null when nobody said.</param>
    /// <param name="note">Anything else.</param>
    /// <param name="label">The label wanted; null for none.</param>
    public static SupplyRequest Bottle(
        Solvent solvent, Volume volume, DateOnly since, string? shelf = null, ContainerMaterial? material = null, string? note = null, LabelChoice? label = null) =>
        new(SupplyKind.Bottle, new BottleAdded(default, solvent.Id, volume, since, shelf ?? "", material, note), label);
}
