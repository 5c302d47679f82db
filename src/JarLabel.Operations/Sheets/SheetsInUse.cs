namespace JarLabel.Operations.Sheets;

/// <summary>The sheets of label stock that are begun: a new one, which places are free, and a print that went wrong.</summary>
public static class SheetsInUse
{
    /// <summary>Begins a new sheet; the open one of that stock is put away.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="stock">The stock's id; null for the shop's usual one.</param>
    public static Result<OpenSheet> Begin(Workbench bench, string? stock)
    {
        return LabelComposer.Open(bench).Then(composer => composer.Choose(new LabelChoice(Sheet: stock))).Then(chosen =>
            LedgerAccess.Record<OpenSheet>(bench, step => new OpenSheet(step.Sheets.Begin(chosen.Sheet.Id, chosen.Sheet.Places, Moment(bench)), chosen.Sheet)));
    }

    /// <summary>All open sheets, the latest first.</summary>
    public static Result<IReadOnlyList<OpenSheet>> State(Workbench bench)
    {
        return LabelComposer.Open(bench).Then(composer => LedgerAccess.Read<IReadOnlyList<OpenSheet>>(bench, view =>
            Result<IReadOnlyList<OpenSheet>>.Of([.. view.OpenSheets().Select(sheet => new OpenSheet(sheet, Layout(composer, sheet)))])));
    }

    /// <summary>Gives places back whose labels were never printed, or jammed.</summary>
    public static Result<OpenSheet> TakeBack(Workbench bench, int sheet, IReadOnlyList<int> places)
    {
        return LabelComposer.Open(bench).Then(composer => LedgerAccess.Record(bench, step =>
            step.Sheets.TakeBack(sheet, places, Moment(bench)).Then<OpenSheet>(now => new OpenSheet(now, Layout(composer, now)))));
    }

    /// <summary>Takes places for the labels of a step: the next free ones, or those from a place on.</summary>
    internal static Result<IReadOnlyList<SheetPlace>> TakeNext(Workbench bench, LedgerStep step, Sheet sheet, int count, int? start) =>
        step.Sheets.Take(sheet.Id, sheet.Places, count, start, Moment(bench));

    /// <summary>The layout may have been taken away since; then there is no picture.</summary>
    private static Sheet? Layout(LabelComposer composer, SheetInUse sheet) => composer.Choose(new LabelChoice(Sheet: sheet.Stock)).TryGet(out var stock, out _) ? stock.Sheet : null;

    private static string Moment(Workbench bench) => bench.Now.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture);
}
