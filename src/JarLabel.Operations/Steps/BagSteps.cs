namespace JarLabel.Operations.Steps;

/// <summary>The bags of flakes that batches draw from.</summary>
internal static class BagSteps
{
    private static Input<SupplyNumber> Bag => field ??= Input.Of<SupplyNumber>("bag", "Bag", "1", SupplyNumber.ReadBag).Change(one => one with { Help = "The bag: 12 or 12-9.", IsArgument = true, Choices = Bags });

    private static Input<Mass> Holds => field ??= Input.Of<Mass>("mass", "The bag holds", "500 g", MassText.Read).Help("weight", "What the bag holds: \"1 lb\", \"500 g\".").Hint("1 lb, 500 g");

    private static Input<DateOnly> Made => field ??= Shared.PastDay("Made or bought on", "2025-10-01", "When the flakes were made or bought: 2025-10-01.");

    private static Input<string?> Why => field ??= Shared.WhyItGoes("gone lumpy");

    private static Input<Mass> LeftOver => field ??= Input.Of<Mass>("weight", "What the scale says", "120 g", MassText.Read).Help("weight", "What the scale says: \"120 g\".").Argument();

    private static Input<Pinch> Pinch => field ??= Input.Of("pinch", "A pinch, overnight in a little alcohol", "all", (Reader<Pinch>)ValueReader.Pinch)
        .Help("word", "all when it dissolved, cloudy when haze or specks stay beyond a waxy grade's wax, gel when it swelled or left lumps.").Argument()
        .Choices(_ => [("", "choose"), ("all", "dissolved, all of it"), ("cloudy", "haze or specks stay, beyond the wax of a waxy grade"), ("gel", "swelled, or left lumps")]);

    internal static Step Add => field ??= Step.OfShop("bag add", "New bag of flakes", "Put a new bag of flakes into the ledger and print its label.", [Shared.Grade, Holds, Made, Shared.SupplyNote, Shared.NewLabel],
        given => Said(given, BagDesk.Add(given.Bench, new BagRequest(given.Get(Shared.Grade), given.Get(Holds), given.Get(Made), given.Get(Shared.SupplyNote), given.Get(Shared.NewLabel))))) with
    { Button = "Record the bag and its label", WorksOut = true };

    internal static Step List => field ??= Step.OfShop("bag list", "Bags", "The bags with something in them, the oldest flakes first.", [],
        given => SupplyBook.Bags(given.Bench).Then<Outcome>(bags => new Outcome(SupplyAnswer.Of(given.Bench, bags)))) with
    { Looks = true };

    internal static Step Left => field ??= Step.OfShop("bag left", "Weigh a bag", "Say what the scale says is left: bag left 3 \"120 g\"", [Bag, LeftOver],
        given => Said(given, BagDesk.Left(given.Bench, given.Get(Bag), given.Get(LeftOver))));

    internal static Step Test => field ??= Step.OfShop("bag test", "Test a bag's flakes", "Say how a pinch dissolved overnight in a little alcohol: bag test 3 cloudy", [Bag, Pinch],
        given => Said(given, BagDesk.Test(given.Bench, given.Get(Bag), given.Get(Pinch)))) with
    { Button = "Record the test" };

    internal static Step Discard => field ??= Step.OfShop("bag discard", "Discard a bag", "Take a bag out of the shop.", [Bag, Why],
        given => Said(given, BagDesk.Discard(given.Bench, given.Get(Bag), given.Get(Why)))) with
    { Button = "Discard the bag" };

    private static IReadOnlyList<(string Value, string Words)> Bags(Workbench bench) =>
        SupplyBook.Bags(bench).TryGet(out var bags, out _) ? [.. bags.Select(bag => ($"{bag.Number}", SupplyChoiceWords.Of(bench, bag)))] : [];

    private static Result<Outcome> Said(Values given, Result<BagOutcome> result) => result.Then<Outcome>(outcome => new Outcome(SupplyAnswer.Of(given.Bench, outcome)) { Files = outcome.Label is { } label ? [label.File] : [] });
}
