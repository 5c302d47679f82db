namespace JarLabel.Operations.Supplies;

/// <summary>What a person does with a bottle of alcohol, beside mixing from it. Each is recorded whole or not at all.</summary>
public static class BottleDesk
{
    /// <summary>Puts a new bottle into the ledger and writes its label.</summary>
    public static Result<BottleOutcome> Add(Workbench bench, BottleRequest request)
    {
        return bench.Settings.Shelf(request.Shelf).Then(shelf => SupplyLabels.Open(bench).Then(labels => LedgerAccess.Record(bench, step =>
        {
            var number = SupplyNumber.From(step.NextNumber(SubjectKind.Bottle));
            SupplyBook.Append(
                step,
                Subject.Bottle(number.Value),
                new BottleAdded(bench.Now, request.Solvent.Id, request.Volume, request.Since, shelf.Name, request.Material, request.Note));
            return StepCompletion(bench, step, labels, number, request.Label, null);
        })));
    }

    /// <summary>Prints the bottle's label again.</summary>
    public static Result<BottleOutcome> Label(Workbench bench, SupplyNumber number, LabelChoice choice, string? file)
    {
        return SupplyLabels.Open(bench).Then(labels => LedgerAccess.Record(bench, step =>
            SupplyBook.Bottle(step, number).Then(bottle => bottle.DemandOnHand("bottle")).Then(_ => StepCompletion(bench, step, labels, number, choice, file))));
    }

    /// <summary>Says what is left by measure.</summary>
    public static Result<BottleOutcome> Left(Workbench bench, SupplyNumber number, Volume volume) =>
        SupplyBook.Bottle(bench, number).Then(bottle => SupplyFit.Check(new SolventLeft(Now(bench), volume), bottle)).Then(left => Record(bench, number, left));

    /// <summary>Says where it stands now.</summary>
    public static Result<BottleOutcome> Move(Workbench bench, SupplyNumber number, string shelf) =>
        bench.Settings.Shelf(shelf).Then(to => Record(bench, number, new BottleMoved(bench.Now, to.Name)));

    /// <summary>Takes the bottle out of the shop.</summary>
    public static Result<BottleOutcome> Discard(Workbench bench, SupplyNumber number, string? why) => Record(bench, number, new SupplyDiscarded(Now(bench), why));

    /// <summary>A bottle looked up, with what is in it.</summary>
    internal static BottleOutcome Of(Workbench bench, Bottle bottle) => new(bottle, SupplyWords.Hazards(bench, bottle), null, []);

    private static Result<BottleOutcome> Record(Workbench bench, SupplyNumber number, SupplyEvent happened) => LedgerAccess.Record(bench, step => SupplyBook.Bottle(step, number)
        .Then(bottle => happened is SupplyDiscarded or BottleMoved ? bottle.DemandOnHand("bottle") : bottle)
        .Then(_ => SupplyBook.InTime(bench, step, Subject.Bottle(number.Value), happened))
        .Then(timed =>
        {
            SupplyBook.Append(step, Subject.Bottle(number.Value), timed);
            return SupplyBook.Bottle(step, number).Then<BottleOutcome>(bottle => Of(bench, bottle) with
            {
                Cautions = [.. bench.ClockBehind is { } clock ? [clock] : (Problem[])[], .. happened is BottleMoved ? ShelfCautions.Of(bench, step, bottle.Shelf) : []],
            });
        }));

    private static Result<BottleOutcome> StepCompletion(Workbench bench, LedgerStep step, SupplyLabels labels, SupplyNumber number, LabelChoice? choice, string? file) =>
        SupplyBook.Bottle(step, number).Then(bottle =>
        {
            var outcome = Of(bench, bottle);
            outcome = outcome with { Cautions = [.. step.Cautions, .. BatchCautions.OfLid(outcome.Hazards), .. Stored(bench, outcome), .. ShelfCautions.Of(bench, step, bottle.Shelf)] };
            if (choice is null)
            {
                return outcome;
            }

            var text = SupplyLabelText.For(bottle, outcome.Hazards, bench.Catalog, SupplyWords.Owner(bench), bench.Settings.PoisonCenter);
            return labels.Write(step, new SupplyCode(SupplyKind.Bottle, number), text, choice, file, labels.RulesFor(bottle, text))
                .Then<BottleOutcome>(label => outcome with { Label = label, Cautions = [.. outcome.Cautions, .. LabelCautions.Of($"bottle {number}", bottle.Note)] });
        });

    private static IEnumerable<Problem> Stored(Workbench bench, BottleOutcome outcome) => outcome.Bottle.Material is { } material
        ? StorageCautions.Of(new Container(material, outcome.Bottle.Bought), outcome.Hazards, bench.Catalog)
        : [];

    private static DateTime Now(Workbench bench) => bench.Now;
}

/// <summary>How a bottle stands after something was done with it.</summary>
/// <param name="Bottle">The bottle.</param>
/// <param name="Hazards">What is in it.</param>
/// <param name="Label">The label that was written, if one was.</param>
/// <param name="Cautions">What went through but should be known.</param>
public sealed record BottleOutcome(Bottle Bottle, HazardAssessment Hazards, WrittenSupplyLabel? Label, IReadOnlyList<Problem> Cautions);

/// <summary>A bottle of alcohol that came into the shop.</summary>
/// <param name="Solvent">The alcohol.</param>
/// <param name="Volume">What it holds.</param>
/// <param name="Since">When it was bought or opened.</param>
/// <param name="Shelf">Where it stands; null for the shop's first shelf.</param>
/// <param name="Material">What it is made of; null when nobody said.</param>
/// <param name="Note">Anything else.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record BottleRequest(
    Solvent Solvent, Volume Volume, DateOnly Since, string? Shelf = null, ContainerMaterial? Material = null, string? Note = null, LabelChoice? Label = null);
