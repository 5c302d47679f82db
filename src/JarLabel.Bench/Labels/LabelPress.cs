using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Labels;
using JarLabel.Layout;
using JarLabel.Layout.Designs;
using JarLabel.Layout.Marks;
using JarLabel.Layout.Rules;
using JarLabel.Layout.Sheets;
using JarLabel.Render;
using JarLabel.Store.Printers;
using UnitsNet;

namespace JarLabel.Bench.Labels;

/// <summary>From words to checked pages: chooses stock and design, places, runs the preflight. Writes nothing.</summary>
public sealed class LabelPress
{
    private const int MostNamed = 3;

    private readonly Workbench bench;
    private readonly LayoutLibrary library;
    private readonly SkiaRuler ruler = new();
    private readonly Preflight preflight;

    private LabelPress(Workbench bench, LayoutLibrary library)
    {
        this.bench = bench;
        this.library = library;
        preflight = new Preflight(ruler, QrCheck.Read);
    }

    /// <summary>A press with our layouts and the shop's own over them.</summary>
    public static Result<LabelPress> Open(Workbench bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return ShopFiles.Layouts(bench.Folder).Then<LabelPress>(files => new LabelPress(bench, new LayoutLibrary(files)));
    }

    /// <summary>The stock and design that are meant.</summary>
    public Result<LabelStock> Choose(LabelChoice choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
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
    public Result<IReadOnlyList<Sheet>> Sheets() => All(library.SheetIds, library.Sheet);

    /// <summary>All designs, by id.</summary>
    public Result<IReadOnlyList<Design>> Designs() => All(library.DesignIds, library.Design);

    /// <summary>The page with one label at a place, and what had no room on it.</summary>
    /// <param name="text">What it says.</param>
    /// <param name="stock">On what, and how it looks.</param>
    /// <param name="place">The place on the sheet, from 1.</param>
    /// <param name="from">For a wall sign: from how far it is to be read.</param>
    public Result<PressedLabel> Press(LabelText text, LabelStock stock, int place, Length? from = null)
    {
        ArgumentNullException.ThrowIfNull(stock);
        var sheet = stock.Sheet;
        return Placed(text, stock, place).Then(label =>
        {
            Problem[] problems = [.. preflight.Check(label, sheet.PaperWidth, sheet.PaperHeight), .. from is { } distance ? preflight.CheckFrom(label, distance) : []];
            return problems.Length == 0
                ? new PressedLabel(sheet.PageOf(label.Marks), label)
                : Result<PressedLabel>.Failed(problems);
        });
    }

    /// <summary>The label alone, on a page of its own size.</summary>
    public Result<Page> Proof(LabelText text, LabelStock stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        var sheet = stock.Sheet;
        return Press(text, stock with { Sheet = sheet with { PaperWidth = sheet.Width, PaperHeight = sheet.Height, Left = 0, Top = 0 } }, 1).Then<Page>(pressed => pressed.Page);
    }

    /// <summary>Fills pages of this stock with many labels, each checked like a single one.</summary>
    public PageFiller Filler(LabelStock stock)
    {
        ArgumentNullException.ThrowIfNull(stock);
        return new PageFiller(stock.Sheet, stock.Design, preflight, ruler);
    }

    /// <summary>How a pressed label stands against the rules that apply here.</summary>
    /// <param name="pressed">The label.</param>
    /// <param name="text">All that might have been printed.</param>
    /// <param name="stock">Its stock.</param>
    /// <param name="capacity">What the container holds; null when nobody said.</param>
    public LabelRuleReport Rules(PressedLabel pressed, LabelText text, LabelStock stock, Volume? capacity)
    {
        ArgumentNullException.ThrowIfNull(pressed);
        ArgumentNullException.ThrowIfNull(stock);
        return LabelRules.Of(pressed.Label, text, capacity, bench.Rules, ruler, blackOnly: stock.Sheet.BlackOnly);
    }

    // What has no room is told together with the stock that has.
    private Result<PlacedLabel> Placed(LabelText text, LabelStock stock, int place)
    {
        var placed = Composer.Place(text, stock.Design, stock.Sheet.AreaAt(place), ruler);
        return placed.Ok || Larger(text, stock) is not { Length: > 0 } larger ? placed : Result<PlacedLabel>.Failed([.. placed.Problems.Select(problem => BenchProblems.FitsOnStock(problem, larger))]);
    }

    private string[] Larger(LabelText text, LabelStock stock) =>
    [
        .. library.SheetIds.Select(library.Sheet).Where(sheet => sheet.Ok).Select(sheet => sheet.Require())
            .Where(sheet => sheet.Places > 1 && stock.Design.Suits(sheet.AreaAt(1)) && Composer.Place(text, stock.Design, sheet.AreaAt(1), ruler).Ok)
            .OrderBy(sheet => sheet.Width * sheet.Height).Select(sheet => sheet.Id).Take(MostNamed),
    ];

    private static Result<IReadOnlyList<T>> All<T>(IEnumerable<string> ids, Func<string, Result<T>> read)
        where T : notnull
    {
        var results = ids.Select(read).ToArray();
        Problem[] problems = [.. results.SelectMany(r => r.Problems)];
        return problems.Length > 0 ? Result<IReadOnlyList<T>>.Failed(problems) : Result<IReadOnlyList<T>>.Of([.. results.Select(r => r.Require())]);
    }

    private string UsualSheet => bench.Rules == RuleSet.Clp ? "a4-2x4-99.1x67.7" : "letter-2x5-101.6x50.8";
}
