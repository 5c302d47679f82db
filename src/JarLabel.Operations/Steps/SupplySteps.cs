namespace JarLabel.Operations.Steps;

/// <summary>The bags of flakes and the bottles of alcohol that batches draw from: what is done with both, declared once, and what only one has.</summary>
internal sealed class SupplySteps
{
    private readonly SupplyKind kind;
    private readonly Wording said;

    private SupplySteps(SupplyKind kind, Wording said) => (this.kind, this.said) = (kind, said);

    internal static SupplySteps Bag => field ??= new(SupplyKind.Bag, new("12 or 12-9", "New bag of flakes", "a new bag of flakes", "The bags with something in them, the oldest flakes first.", "gone lumpy"));

    internal static SupplySteps Bottle => field ??= new(SupplyKind.Bottle, new("7 or 7-6", "New bottle of alcohol", "a new bottle of alcohol", "The bottles with something in them, the oldest first.", "empty"));

    private string Word => kind.Word();

    private string Title => Capital.Of(Word);

    // Which one.

    private Input<SupplyNumber> One => field ??= Of(OnHand);

    /// <summary>The same, with those that are empty or discarded to choose from too, and without those that by the ledger never came.</summary>
    private Input<SupplyNumber> Any => field ??= Of(bench => Chosen(bench, SupplyBook.All(bench, kind).Then(all => Result<IReadOnlyList<Supply>>.Of([.. all.Where(one => !one.TakenBack)]))));

    private Input<string?> Why => field ??= Shared.WhyItGoes(said.Why);

    // What is filled in for one kind only.

    private static Input<Mass> Weight => field ??= Input.Of<Mass>("mass", "The bag holds", "500 g", MassText.Read).In(UsualUnits.Masses).Help("weight", "What the bag holds: \"1 lb\", \"500 g\".").Hint("1 lb, 500 g");

    private static Input<Volume> Volume => field ??= Input.Of<Volume>("volume", "It holds", "1 gal", VolumeText.Read).In(UsualUnits.Volumes).Help("volume", "What it holds: \"1 gal\", \"5 L\".").Hint("1 gal, 5 L");

    private static Input<DateOnly> Made => field ??= Shared.PastDay("Made or bought on", "2025-10-01", "When the flakes were made or bought: 2025-10-01.");

    private static Input<DateOnly?> Since => field ??= Input.Optional<DateOnly>("date", "Bought or opened on", "2026-03-01", (bench, text, where) => ValueReader.DayUntil(bench.Now)(text, where))
        .Help("date", "When it was bought or opened: 2026-03-01; else today.").Hint("year-month-day; today when left empty");

    private static Input<string?> Shelf => field ??= Shared.Shelf("Where it stands; else the shop's first shelf.", "the shop's first").Change(one => one with { IsMore = false });

    private static Input<string> NewShelf => field ??= Input.Of("shelf", "To the shelf", "main", (Reader<string>)ValueReader.TextUpTo(40).Invoke).Alone().Help("name", "Where it stands; else the shop's first shelf.")
        .Choices(Choose.Shelves());

    private static Input<ContainerMaterial?> Material => field ??= Input.Optional<ContainerMaterial>("material", "It is of", "glass", ValueReader.Material)
        .Help("material", "glass, lined-metal, metal or plastic, for the storage limits.")
        .Choices(Choose.Materials("not said"));

    private static Input<Pinch> Pinch => field ??= Input.Of("pinch", "A pinch, overnight in a little alcohol", "all", (Reader<Pinch>)ValueReader.Pinch)
        .Help("word", "all when it dissolved, cloudy when haze or specks stay beyond a waxy grade's wax, gel when it swelled or left lumps.").Argument().Observed()
        .Choices(_ => [("", "choose"), ("all", "dissolved, all of it"), ("cloudy", "haze or specks stay, beyond the wax of a waxy grade"), ("gel", "swelled, or left lumps")]);

    private static Input<Mass> WeightLeft => field ??= Input.Of<Mass>("weight", "What the scale says", "120 g", (text, where) => LeftText.Read(text, where, MassText.Read, Mass.Zero)).In(UsualUnits.Masses)
        .Help("weight", "What the scale says: \"120 g\"; or empty.").Hint("120 g, or empty").Argument().Observed();

    private static Input<Volume> VolumeLeft => field ??= Input.Of<Volume>("volume", "What is left by measure", "200 mL", (text, where) => LeftText.Read(text, where, VolumeText.Read, UnitsNet.Volume.Zero)).In(UsualUnits.Volumes)
        .Help("volume", "What is left by measure: \"200 mL\"; or empty.").Hint("200 mL, or empty").Argument().Observed();

    private Input LeftOver => kind == SupplyKind.Bag ? WeightLeft : VolumeLeft;

    // The steps.

    internal Step Add => field ??= Step.OfShop(Verb("add"), said.New, $"Put {said.ANew} into the ledger and print its label.",
        kind == SupplyKind.Bag ? [Shared.Grade, Weight, Made, Shared.SupplyNote, Shared.NewLabel] : [Shared.Solvent, Volume, Since, Shelf, Material, Shared.SupplyNote, Shared.NewLabel],
        given => Said(given, SupplyOperations.Add(given.Bench, kind == SupplyKind.Bag ? NewBag(given) : NewBottle(given)))) with
    { Button = $"Record the {Word} and its label", WorksOut = true };

    internal Step List => field ??= Step.OfShop(Verb("list"), $"{Title}s", said.List, [],
        given => SupplyBook.OnHand(given.Bench, kind).Then<Outcome>(all => new Outcome(SupplyAnswer.Of(given.Bench, kind, all)))) with
    { Looks = true };

    internal Step Label => field ??= Step.OfShop(Verb("label"), $"Label of a {Word}", $"Print the label of a {Word} again.", [One, Shared.LabelFile, Shared.Force, Shared.Label],
        given => Said(given, SupplyOperations.Label(given.Bench, kind, given.Get(One), given.Get(Shared.Label), given.Get(Shared.LabelFile)))) with
    { Button = "Write the label", WorksOut = true };

    internal Step Left => field ??= kind == SupplyKind.Bag
        ? Step.OfShop(Verb("left"), "Weigh a bag", "Say what the scale says is left: bag left 3 \"120 g\", bag left 3 empty", [Any, LeftOver], DoLeft)
        : Step.OfShop(Verb("left"), "Measure a bottle", "Say what is left by measure: bottle left 2 \"200 mL\", bottle left 2 empty", [Any, LeftOver], DoLeft);

    internal Step Test => field ??= Step.OfShop(Verb("test"), "Test a bag's flakes", "Say how a pinch dissolved overnight in a little alcohol: bag test 3 cloudy", [One, Pinch],
        given => Said(given, SupplyOperations.Test(given.Bench, given.Get(One), given.Get(Pinch)))) with
    { Button = "Record the test" };

    internal Step Move => field ??= Step.OfShop(Verb("move"), "Move a bottle", "Put a bottle on another shelf.", [One, NewShelf],
        given => SupplyOperations.Move(given.Bench, given.Get(One), given.Get(NewShelf)).Then(outcome => Said(given, outcome).Then<Outcome>(said => said with { IsNothing = outcome.Step is null })));

    internal Step Discard => field ??= Step.OfShop(Verb("discard"), $"Discard a {Word}", $"Take a {Word} out of the shop.", [One, Why],
        given => Said(given, SupplyOperations.Discard(given.Bench, kind, given.Get(One), given.Get(Why)))) with
    {
        Button = $"Discard the {Word}",
        Says = kind == SupplyKind.Bag ? null : "What is left in it is waste that burns: hand it in at the hazardous-waste point as your local rules say, never into the drain.",
    };

    internal Step Undo => field ??= Step.OfShop(Verb("undo"), $"Undo at a {Word}", $"Take back the last thing said of a {Word}; what a jar took is taken back at the jar.", [Any],
        given => Said(given, SupplyOperations.Undo(given.Bench, kind, given.Get(Any)))) with
    {
        Button = "Take back the last step",
        Says = $"Takes back the last thing said of the {Word}, by a new entry; nothing is erased. What a jar took from it is taken back at the jar.",
        Hinders = NothingToUndo,
        WorksOut = true,
    };

    private IReadOnlyList<Problem> NothingToUndo(Values given) =>
        given.TryRead(Any, out var number) && SupplyBook.Find(given.Bench, kind, number).TryGet(out var supply, out _) && supply.TakenBack ? supply.Undo(given.Bench.Now).Problems : [];

    private Result<Outcome> DoLeft(Values given)
    {
        SupplyEvent reading = kind == SupplyKind.Bag ? new FlakesLeft(given.Bench.Now, given.Get(WeightLeft)) : new SolventLeft(given.Bench.Now, given.Get(VolumeLeft));
        return Said(given, SupplyOperations.Left(given.Bench, kind, given.Get(Any), reading));
    }

    private static SupplyRequest NewBag(Values given) =>
        SupplyRequest.Bag(given.Get(Shared.Grade), given.Get(Weight), given.Get(Made), given.Get(Shared.SupplyNote), given.Get(Shared.NewLabel));

    private static SupplyRequest NewBottle(Values given) => SupplyRequest.Bottle(
        given.Get(Shared.Solvent), given.Get(Volume), given.Get(Since) ?? DateOnly.FromDateTime(given.Bench.Now), given.Get(Shelf), given.Get(Material), given.Get(Shared.SupplyNote), given.Get(Shared.NewLabel));

    private Input<SupplyNumber> Of(Func<Workbench, IReadOnlyList<(string Value, string Words)>> choices) =>
        Input.Of<SupplyNumber>(Word, Title, "1", (text, where) => SupplyNumber.Read(kind, text, where))
            .Change(one => one with { Help = $"The {Word}: {said.Such}.", IsArgument = true, Choices = choices, WhenNone = new(Verb("add")), Stands = SupplyBook.NotThere(kind) });

    private IReadOnlyList<(string Value, string Words)> OnHand(Workbench bench) => Chosen(bench, SupplyBook.OnHand(bench, kind));

    private static IReadOnlyList<(string Value, string Words)> Chosen(Workbench bench, Result<IReadOnlyList<Supply>> found) =>
        found.TryGet(out var all, out _) ? [.. all.Select(one => ($"{one.Number}", SupplyChoiceWords.Of(bench, one)))] : [];

    private string Verb(string step) => $"{Word} {step}";

    private static Result<Outcome> Said(Values given, Result<SupplyOutcome> result) =>
        result.Then<Outcome>(outcome => new Outcome(SupplyAnswer.Of(given.Bench, outcome)) { Files = outcome.Label is { } label ? [label.File] : [], Ways = Ways(outcome.Supply) });

    /// <summary>What can be done with one of them, as it stands.</summary>
    internal static IReadOnlyList<Remedy> Ways(Supply supply)
    {
        var word = supply.Kind.Word();
        string[] steps = !supply.OnHand ? ["left", "undo"] : supply.Kind == SupplyKind.Bag ? ["left", "test", "label", "discard", "undo"] : ["left", "move", "label", "discard", "undo"];
        return [.. steps.Where(step => step != "left" || !(supply.Discarded || supply.TakenBack)).Select(step => Screen.Step($"{word} {step}", (word, $"{supply.Number}")))];
    }

    /// <summary>What the declarations say otherwise of a bag than of a bottle.</summary>
    private sealed record Wording(string Such, string New, string ANew, string List, string Why);
}
