namespace JarLabel.Operations.Steps;

/// <summary>The bottles and cans of alcohol that batches draw from.</summary>
internal static class BottleSteps
{
    private static Input<SupplyNumber> Bottle => field ??= Input.Of<SupplyNumber>("bottle", "Bottle", "1", SupplyNumber.ReadBottle)
        .Change(one => one with { Help = "The bottle: 7 or 7-6.", IsArgument = true, Choices = Bottles });

    private static Input<Volume> Holds => field ??= Input.Of<Volume>("volume", "It holds", "1 gal", VolumeText.Read).Help("volume", "What it holds: \"1 gal\", \"5 L\".").Hint("1 gal, 5 L");

    private static Input<DateOnly> Since => field ??= Shared.PastDay("Bought or opened on", "2026-03-01", "When it was bought or opened: 2026-03-01.");

    private static Input<string?> Shelf => field ??= Shared.Shelf("Where it stands; else the shop's first shelf.").Change(one => one with { IsMore = false });

    private static Input<string> NewShelf => field ??= Input.Of("shelf", "To the shelf", "main", (Reader<string>)ValueReader.TextUpTo(40).Invoke).Alone().Help("name", "Where it stands; else the shop's first shelf.")
        .Choices(Choose.Shelves());

    private static Input<ContainerMaterial?> Material => field ??= Input.Optional<ContainerMaterial>("material", "It is of", "glass", ValueReader.Material)
        .Help("material", "glass, lined-metal, metal or plastic, for the storage limits.")
        .Choices(Choose.Materials("not said"));

    private static Input<string?> Why => field ??= Shared.WhyItGoes("empty");

    private static Input<Volume> LeftOver => field ??= Input.Of<Volume>("volume", "What is left by measure", "200 mL", VolumeText.Read).Help("volume", "What is left by measure: \"200 mL\".").Argument();

    internal static Step Add => field ??= Step.OfShop("bottle add", "New bottle of alcohol", "Put a new bottle of alcohol into the ledger and print its label.",
        [Shared.Solvent, Holds, Since, Shelf, Material, Shared.SupplyNote, Shared.NewLabel], Enter) with
    { Button = "Record the bottle and its label", WorksOut = true };

    internal static Step List => field ??= Step.OfShop("bottle list", "Bottles", "The bottles with something in them, the oldest first.", [],
        given => SupplyBook.Bottles(given.Bench).Then<Outcome>(bottles => new Outcome(SupplyAnswer.Of(given.Bench, bottles)))) with
    { Looks = true };

    internal static Step Left => field ??= Step.OfShop("bottle left", "Measure a bottle", "Say what is left by measure: bottle left 2 \"200 mL\"", [Bottle, LeftOver],
        given => Said(given, BottleDesk.Left(given.Bench, given.Get(Bottle), given.Get(LeftOver))));

    internal static Step Move => field ??= Step.OfShop("bottle move", "Move a bottle", "Put a bottle on another shelf.", [Bottle, NewShelf],
        given => Said(given, BottleDesk.Move(given.Bench, given.Get(Bottle), given.Get(NewShelf))));

    internal static Step Discard => field ??= Step.OfShop("bottle discard", "Discard a bottle", "Take a bottle out of the shop.", [Bottle, Why],
        given => Said(given, BottleDesk.Discard(given.Bench, given.Get(Bottle), given.Get(Why)))) with
    {
        Button = "Discard the bottle",
        Says = "What is left in it is waste that burns: hand it in as your local rules say, not into the drain.",
    };

    private static Result<Outcome> Enter(Values given)
    {
        var request = new BottleRequest(
            given.Get(Shared.Solvent),
            given.Get(Holds),
            given.Get(Since),
            given.Get(Shelf),
            given.Get(Material),
            given.Get(Shared.SupplyNote),
            given.Get(Shared.NewLabel));
        return Said(given, BottleDesk.Add(given.Bench, request));
    }

    private static IReadOnlyList<(string Value, string Words)> Bottles(Workbench bench) =>
        SupplyBook.Bottles(bench).TryGet(out var bottles, out _) ? [.. bottles.Select(bottle => ($"{bottle.Number}", SupplyChoiceWords.Of(bench, bottle)))] : [];

    private static Result<Outcome> Said(Values given, Result<BottleOutcome> result) => result.Then<Outcome>(outcome => new Outcome(SupplyAnswer.Of(given.Bench, outcome)) { Files = outcome.Label is { } label ? [label.File] : [] });
}
