using JarLabel.Bench.Recording;
using JarLabel.Bench.Sheets;
using JarLabel.Core;
using JarLabel.Store;

namespace JarLabel.Bench.Labels;

/// <summary>The way of one label to its file, the same for jars, bags and bottles: the next free place on the sheet, the checked page, the staged
/// file. What the ledger keeps of it is the caller's.</summary>
internal static class LabelPrint
{
    /// <summary>Takes the place, presses the label and stages its file; on a dry run nothing is staged.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="press">Its press.</param>
    /// <param name="step">The step of the ledger that it belongs to.</param>
    /// <param name="order">What is to be printed.</param>
    /// <param name="choice">Which label.</param>
    internal static Result<PrintedLabel> Take(Workbench bench, LabelPress press, LedgerStep step, LabelOrder order, LabelChoice choice) =>
        press.Choose(choice).Then(stock => SheetsInUse.TakeNext(bench, step, stock.Sheet, 1, choice.Start).Then(places =>
            press.Press(order.Text, stock, places[0].Place).Then(pressed =>
            {
                var path = order.File ?? Path.Combine(bench.Folder.Labels, order.UsualName(stock.Design.Id));
                return LabelFiles.Bytes(path, [pressed.Page], order.Title, bench.Now).Then<PrintedLabel>(bytes =>
                {
                    var printed = new PrintedLabel(path, path, null, stock, places[0].Place, pressed);
                    return step.Write(bench, path, bytes) is { } staged ? printed with { Kept = staged.Path, Sha256 = staged.Sha256 } : printed;
                });
            })));
}
