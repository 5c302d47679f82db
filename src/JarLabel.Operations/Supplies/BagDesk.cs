namespace JarLabel.Operations.Supplies;

/// <summary>What a person does with a bag of flakes, beside mixing from it. Each is recorded whole or not at all.</summary>
public static class BagDesk
{
    /// <summary>Puts a new bag into the ledger and writes its label.</summary>
    public static Result<BagOutcome> Add(Workbench bench, BagRequest request)
    {
        return SupplyLabels.Open(bench).Then(labels => LedgerAccess.Record(bench, step =>
        {
            var number = SupplyNumber.From(step.NextNumber(SubjectKind.Bag));
            SupplyBook.Append(step, Subject.Bag(number.Value), new BagAdded(bench.Now, request.Grade.Id, request.Weight, request.Made, request.Note));
            return StepCompletion(bench, step, labels, number, request.Label, null);
        }));
    }

    /// <summary>Prints the bag's label again.</summary>
    public static Result<BagOutcome> Label(Workbench bench, SupplyNumber number, LabelChoice choice, string? file)
    {
        return SupplyLabels.Open(bench).Then(labels => LedgerAccess.Record(bench, step =>
            SupplyBook.Bag(step, number).Then(bag => bag.DemandOnHand("bag")).Then(_ => StepCompletion(bench, step, labels, number, choice, file))));
    }

    /// <summary>Says what the scale says is left.</summary>
    public static Result<BagOutcome> Left(Workbench bench, SupplyNumber number, Mass weight) =>
        SupplyBook.Bag(bench, number).Then(bag => SupplyFit.Check(new FlakesLeft(Now(bench), weight), bag)).Then(left => Record(bench, number, left));

    /// <summary>Says how a pinch of it dissolved.</summary>
    public static Result<BagOutcome> Test(Workbench bench, SupplyNumber number, Pinch pinch) => Record(bench, number, new FlakesTested(Now(bench), pinch))
        .Then<BagOutcome>(outcome => outcome with { Cautions = BagCautions.OfTest(outcome.Bag) });

    /// <summary>Takes the bag out of the shop.</summary>
    public static Result<BagOutcome> Discard(Workbench bench, SupplyNumber number, string? why) => Record(bench, number, new SupplyDiscarded(Now(bench), why));

    private static Result<BagOutcome> Record(Workbench bench, SupplyNumber number, SupplyEvent happened) => LedgerAccess.Record(bench, step => SupplyBook.Bag(step, number)
        .Then(bag => happened is SupplyDiscarded or FlakesTested ? bag.DemandOnHand("bag") : bag)
        .Then(_ => SupplyBook.InTime(bench, step, Subject.Bag(number.Value), happened))
        .Then(timed =>
        {
            SupplyBook.Append(step, Subject.Bag(number.Value), timed);
            return SupplyBook.Bag(step, number).Then<BagOutcome>(bag => new BagOutcome(bag, null, bench.ClockBehind is { } clock ? [clock] : []));
        }));

    private static Result<BagOutcome> StepCompletion(Workbench bench, LedgerStep step, SupplyLabels labels, SupplyNumber number, LabelChoice? choice, string? file) =>
        SupplyBook.Bag(step, number).Then(bag =>
        {
            var outcome = new BagOutcome(bag, null, [.. step.Cautions, .. Cautions(bench, bag)]);
            return choice is null ? outcome : labels
                .Write(step, new SupplyCode(SupplyKind.Bag, number), SupplyLabelText.For(bag, bench.Catalog, SupplyWords.Owner(bench)), choice, file, rules: null)
                .Then<BagOutcome>(label => outcome with { Label = label, Cautions = [.. outcome.Cautions, .. LabelCautions.Of($"bag {number}", bag.Note)] });
        });

    private static IReadOnlyList<Problem> Cautions(Workbench bench, Bag bag)
    {
        var grade = bench.Catalog.GradeOf(bag.Grade);
        return BatchCautions.OfFlakes(grade, bench.Catalog.Keeping.Find(grade.Keeping)!, bag.Made, DateOnly.FromDateTime(bench.Now));
    }

    private static DateTime Now(Workbench bench) => bench.Now;
}

/// <summary>How a bag stands after something was done with it.</summary>
/// <param name="Bag">The bag.</param>
/// <param name="Label">The label that was written, if one was.</param>
/// <param name="Cautions">What went through but should be known.</param>
public sealed record BagOutcome(Bag Bag, WrittenSupplyLabel? Label, IReadOnlyList<Problem> Cautions);

/// <summary>A bag of flakes that came into the shop.</summary>
/// <param name="Grade">The grade.</param>
/// <param name="Weight">What it holds.</param>
/// <param name="Made">When the flakes were made or bought.</param>
/// <param name="Note">Anything else.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record BagRequest(Grade Grade, Mass Weight, DateOnly Made, string? Note = null, LabelChoice? Label = null);
