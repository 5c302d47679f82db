namespace JarLabel.Operations.Labels;

/// <summary>From words to checked pages: chooses stock and design, places, runs the preflight. Writes nothing.</summary>
public sealed class LabelComposer
{
    private const int MostNamed = 3;

    private readonly Workbench bench;
    private readonly LayoutLibrary library;
    private readonly SkiaRuler ruler = new();
    private readonly Preflight preflight;

    private LabelComposer(Workbench bench, LayoutLibrary library)
    {
        this.bench = bench;
        this.library = library;
        preflight = new Preflight(ruler, QrCheck.Read);
    }

    /// <summary>A press with our layouts and the shop's own over them.</summary>
    public static Result<LabelComposer> Open(Workbench bench) =>
        ShopFiles.Layouts(bench.Folder).Then<LabelComposer>(files => new LabelComposer(bench, new LayoutLibrary(files)));

    /// <summary>The stock and design that are meant.</summary>
    public Result<LabelStock> Choose(LabelChoice choice)
    {
        return StockOf(choice).Then(sheet => DesignOf(choice, sheet).Then(design => KnownPrinter.Check(bench, choice).Then(_ =>
            Calibrated(sheet, choice.Printer).Then<LabelStock>(calibrated => new LabelStock(calibrated with { BlackOnly = calibrated.BlackOnly || choice.Mono }, design)))));
    }

    /// <summary>One kind of stock as it is, uncorrected.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="where">Where it was named.</param>
    public Result<Sheet> Stock(string id, string where = "sheet") => library.Sheet(id, where);

    /// <summary>One design.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="where">Where it was named.</param>
    public Result<Design> Design(string id, string where) => library.Design(id, where);

    /// <summary>The stock that is used where none is named.</summary>
    internal Result<Sheet> UsualStock() => StockOf(new LabelChoice());

    private Result<Sheet> StockOf(LabelChoice choice) =>
        choice.Sheet is { } typed ? library.Sheet(typed)
        : bench.Settings.Sheet is { } settled ? SettledStock.Sheet(library, settled)
        : library.Sheet(UsualSheet);

    private Result<Design> DesignOf(LabelChoice choice, Sheet sheet) =>
        choice.Design is { } typed ? library.Design(typed)
        : bench.Settings.Design is { } settled ? SettledStock.Design(library, settled)
        : library.Design(sheet.Design);

    // The places as they must be told to the printer, by what was measured on it.
    private Result<Sheet> Calibrated(Sheet sheet, string? printer) => CalibrationFile.Find(bench.Folder, printer, sheet.Id).Then<Sheet>(found =>
        found.Calibration is { } c ? sheet.For(c.ShiftX, c.ShiftY, c.ScaleX, c.ScaleY) : sheet);

    /// <summary>The ids of all stock.</summary>
    public IReadOnlyCollection<string> SheetIds => library.SheetIds;

    /// <summary>The ids of all designs.</summary>
    public IReadOnlyCollection<string> DesignIds => library.DesignIds;

    /// <summary>All stock, by id.</summary>
    public Result<IReadOnlyList<Sheet>> Sheets() => Results.All(library.SheetIds.Select(id => library.Sheet(id)));

    /// <summary>All designs, by id.</summary>
    public Result<IReadOnlyList<Design>> Designs() => Results.All(library.DesignIds.Select(id => library.Design(id)));

    /// <summary>The page with one label at a place, and what had no room on it.</summary>
    /// <param name="text">What it says.</param>
    /// <param name="stock">On what, and how it looks.</param>
    /// <param name="place">The place on the sheet, from 1.</param>
    /// <param name="from">For a wall sign: from how far it is to be read.</param>
    public Result<ComposedLabel> Press(LabelText text, LabelStock stock, int place, Length? from = null)
    {
        var sheet = stock.Sheet;
        return Placed(text, stock, place).Then(label =>
        {
            Problem[] problems = [.. preflight.Check(label, sheet.PaperWidth, sheet.PaperHeight), .. from is { } distance ? preflight.CheckFrom(label, distance) : []];
            return problems.Length == 0
                ? new ComposedLabel(sheet.PageOf(label.Marks), label)
                : Result<ComposedLabel>.Failed(problems);
        });
    }

    /// <summary>The label alone, on a page of its own size.</summary>
    public Result<Page> Proof(LabelText text, LabelStock stock)
    {
        var sheet = stock.Sheet;
        return Press(text, stock with { Sheet = sheet with { PaperWidth = sheet.Width, PaperHeight = sheet.Height, Left = 0, Top = 0 } }, 1).Then<Page>(pressed => pressed.Page);
    }

    /// <summary>Fills pages of this stock with many labels, each checked like a single one.</summary>
    public PageFiller Filler(LabelStock stock) => new PageFiller(stock.Sheet, stock.Design, preflight, ruler);

    /// <summary>How a pressed label stands against the rules that apply here.</summary>
    /// <param name="pressed">The label.</param>
    /// <param name="text">All that might have been printed.</param>
    /// <param name="stock">Its stock.</param>
    /// <param name="capacity">What the container holds; null when nobody said.</param>
    public LabelRuleReport Rules(ComposedLabel pressed, LabelText text, LabelStock stock, Volume? capacity) =>
        LabelRules.Of(pressed.Label, text, capacity, bench.Rules, ruler, blackOnly: stock.Sheet.BlackOnly);

    // What has no room is told together with the stock that has.
    private Result<PlacedLabel> Placed(LabelText text, LabelStock stock, int place)
    {
        var placed = Composer.Place(text, stock.Design, stock.Sheet.AreaAt(place), ruler);
        return placed.Ok || Larger(text, stock) is not { Length: > 0 } larger ? placed : Result<PlacedLabel>.Failed([.. placed.Problems.Select(problem => OperationProblems.FitsOnStock(problem, larger))]);
    }

    private string[] Larger(LabelText text, LabelStock stock) =>
    [
        .. library.SheetIds.Select(library.Sheet).Where(sheet => sheet.Ok).Select(sheet => sheet.Require())
            .Where(sheet => sheet.Places > 1 && stock.Design.Suits(sheet.AreaAt(1)) && Composer.Place(text, stock.Design, sheet.AreaAt(1), ruler).Ok)
            .OrderBy(sheet => sheet.Width * sheet.Height).Select(sheet => sheet.Id).Take(MostNamed),
    ];

    private string UsualSheet => bench.Rules == RuleSet.Clp ? "a4-2x4-99.1x67.7" : "letter-2x5-101.6x50.8";
}

/// <summary>A page that passed the preflight.</summary>
/// <param name="Page">What is drawn.</param>
/// <param name="Label">The label on it, with what had no room and stands on the jar card instead.</param>
public sealed record ComposedLabel(Page Page, PlacedLabel Label);

/// <summary>Whether there is a printer of the name that a label is laid out for: under a misspelled one it would lose its calibration unseen.</summary>
internal static class KnownPrinter
{
    /// <summary>The choice, when nobody named a printer for its calibration alone or that printer was measured or is known.</summary>
    internal static Result<LabelChoice> Check(Workbench bench, LabelChoice choice) => choice is { LaidOutOnly: true, Printer: { } name }
        ? CalibrationFile.Read(bench.Folder).Then<LabelChoice>(all => Check(bench, name, [.. all.Select(one => one.Printer).OfType<string>()]) is { } problem ? problem : choice)
        : choice;

    private static Problem? Check(Workbench bench, string name, IReadOnlyList<string> measured)
    {
        if (measured.Contains(name, StringComparer.OrdinalIgnoreCase) || bench.Settings.Printers.Any(printer => printer.Name == name))
        {
            return null;
        }

        // Only now is the machine asked for its queues, which takes a while.
        string[] known = [.. measured.Concat(new PrinterBook(bench, Environment.GetEnvironmentVariable).Names()).Distinct(StringComparer.OrdinalIgnoreCase)];
        return known.Contains(name, StringComparer.Ordinal) ? null : CalibrationProblems.NobodyKnows(name, known);
    }
}

/// <summary>The stock to print on and the design to print.</summary>
/// <param name="Sheet">The stock.</param>
/// <param name="Design">The design.</param>
public sealed record LabelStock(Sheet Sheet, Design Design);

/// <summary>The sheet and the design that a shop settled on. Where one is not there any more, nobody typed it on this line, and the message
/// says where it comes from.</summary>
internal static class SettledStock
{
    internal static Result<Sheet> Sheet(LayoutLibrary library, string id) =>
        library.SheetIds.Contains(id) ? library.Sheet(id) : Gone(library.Sheet(id, "shop.json#/sheet"), "sheet");

    internal static Result<Design> Design(LayoutLibrary library, string id) =>
        library.DesignIds.Contains(id) ? library.Design(id) : Gone(library.Design(id, "shop.json#/design"), "design");

    /// <summary>Those that are not there.</summary>
    internal static IEnumerable<Problem> Problems(LayoutLibrary library, ShopSettings settings) =>
    [
        .. settings.Sheet is { } sheet && !library.SheetIds.Contains(sheet) ? Sheet(library, sheet).Problems : [],
        .. settings.Design is { } design && !library.DesignIds.Contains(design) ? Design(library, design).Problems : [],
    ];

    private static Result<T> Gone<T>(Result<T> unknown, string setting)
        where T : notnull => Result<T>.Failed([.. unknown.Problems.Select(problem => OperationProblems.OfSetting(problem, setting))]);
}
