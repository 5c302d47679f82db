using JarLabel.Operations.Samples;

namespace JarLabel.Operations.Steps;

/// <summary>Label stock, designs and printers.</summary>
internal static class StockSteps
{
    private const int MostSheets = 1_000_000;

    private static readonly TimeSpan UsualWait = TimeSpan.FromSeconds(1.5);

    private static Input<string?> OneKind => field ??= Input.Word("id", "One kind", "letter-2x5-101.6x50.8").Help("id", "One kind of stock, drawn.").Change(Argument);

    private static Input<string?> Kind => field ??= Input.Word("id", "Label stock", "letter-2x5-101.6x50.8").Help("id", "The label stock; else the shop's usual one.").Change(Argument).Choices(Choose.Stock("the shop's usual"));

    private static Input<int> Number => field ??= Input.Of<int>("sheet", "Sheet", "1", ValueReader.WholeNumber(1, MostSheets).Invoke).Help("number", "The sheet's number, as \"sheet state\" shows it.").Argument();

    private static Input<IReadOnlyList<int>> Places => field ??= Input.Some<int>("place", "Places", "1", (_, text, where) => ValueReader.WholeNumber(1, Shared.MostPlaces)(text, where))
        .Help("place", "The places whose labels jammed or were never printed.").Hint("1; 2").Argument();

    internal static Step Sheets => field ??= Step.OfShop("sheets", "Label stock", "The label stock there is, by dimensions; or one kind of it, drawn.", [OneKind], ShowSheets) with { Looks = true };

    internal static Step New => field ??= Step.OfShop("sheet new", "New sheet", "Begin a new sheet; the open one of that stock is put away.", [Kind],
        given => SheetsInUse.Begin(given.Bench, given.Get(Kind)).Then<Outcome>(sheet => new Outcome(SheetAnswer.Open(given.Bench, [sheet])))) with
    { Button = "Begin it" };

    internal static Step State => field ??= Step.OfShop("sheet state", "Sheets in use", "The open sheets with their free and used places.", [],
        given => SheetsInUse.State(given.Bench).Then<Outcome>(sheets => new Outcome(SheetAnswer.Open(given.Bench, sheets)))) with
    { Looks = true };

    internal static Step Back => field ??= Step.OfShop("sheet back", "Give places back", "Give places back whose labels jammed: sheet back 3 5 6", [Number, Places],
        given => SheetsInUse.TakeBack(given.Bench, given.Get(Number), given.Get(Places)).Then<Outcome>(sheet => new Outcome(SheetAnswer.Open(given.Bench, [sheet])))) with
    { Button = "Give them back", Example = [new("sheet", "1"), new("place", "1")] };

    private static Input<string?> Drawn => field ??= Shared.Out("Draw them all on one large page at their true size: .pdf, .png or .svg.");

    private static Input<bool> Mono => field ??= Input.Flag("mono", "In pure black and white").Help("In pure black and white, as a thermal printer shows them.").Change(one => one with { IsTypedOnly = true });

    internal static Step Designs => field ??= Step.OfShop("designs", "Label designs", "The label designs there are, with the smallest label each is for.", [Drawn, Mono, Shared.Force], ShowDesigns) with { Looks = true };

    private static Input<double?> Listen => field ??= Input.Optional<double>("listen", "Seconds to listen", "1.5", ValueReader.Number(0, 30, 3).Invoke)
        .Help("seconds", "How many seconds to listen for printers on the network: 1.5 (the default), 0 for not at all.").More();

    internal static Step Printers => field ??= Step.OfShop("printers", "Printers", "The printers --to can name: those the shop named, queues of this machine, printers that answer on the network.", [Listen], ShowPrinters) with { Looks = true };

    private static Field Argument(Field one) => one with { IsArgument = true, IsOptional = true };

    private static Result<Outcome> ShowSheets(Values given)
    {
        if (!LabelComposer.Open(given.Bench).TryGet(out var composer, out var faults))
        {
            return faults;
        }

        return given.Get(OneKind) is { } id
            ? composer.Stock(id).Then<Outcome>(sheet => new Outcome(SheetAnswer.Drawn(given.Bench, sheet)))
            : composer.Sheets().Then<Outcome>(sheets => new Outcome(SheetAnswer.All(given.Bench, sheets)));
    }

    private static Result<Outcome> ShowDesigns(Values given)
    {
        string? drawn = null;
        if (given.Get(Drawn) is { } file && !ContactSheet.Write(given.Bench, file, given.Get(Mono)).TryGet(out drawn, out var faults))
        {
            return faults;
        }

        return LabelComposer.Open(given.Bench).Then(composer => composer.Designs()).Then<Outcome>(designs => new Outcome(DesignAnswer.Of(given.Bench, designs, drawn)));
    }

    private static Result<Outcome> ShowPrinters(Values given)
    {
        var wait = given.Get(Listen) is { } seconds ? TimeSpan.FromSeconds(seconds) : UsualWait;
        var printers = new PrinterBook(given.Bench, Environment.GetEnvironmentVariable).All(wait > TimeSpan.Zero ? wait : null);
        return new Outcome(PrinterAnswer.Of(given.Bench, printers));
    }
}
