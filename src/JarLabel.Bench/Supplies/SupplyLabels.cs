using System.Globalization;
using JarLabel.Bench.Labels;
using JarLabel.Core;
using JarLabel.Core.Labels;
using JarLabel.Core.Supplies;
using JarLabel.Layout.Rules;
using JarLabel.Store;

namespace JarLabel.Bench.Supplies;

/// <summary>Writes the labels of bags and bottles and records that they were written, in one step of the ledger.</summary>
internal sealed class SupplyLabels(Workbench bench, LabelPress press)
{
    /// <summary>Opens the press first, so that a fault in a layout file is told before anything is done.</summary>
    internal static Result<SupplyLabels> Open(Workbench bench) => LabelPress.Open(bench).Then<SupplyLabels>(press => new SupplyLabels(bench, press));

    /// <summary>Takes the next free place on the sheet, presses the label, stages its file, and records the event.</summary>
    /// <param name="step">The ledger.</param>
    /// <param name="code">The bag or bottle.</param>
    /// <param name="text">What it says.</param>
    /// <param name="choice">Which label; the design for its kind where none is named.</param>
    /// <param name="file">The file to write; null for the usual place.</param>
    /// <param name="rules">How the label stands against the rules; null where none apply.</param>
    internal Result<WrittenSupplyLabel> Write(
        LedgerStep step, SupplyCode code, LabelText text, LabelChoice choice, string? file, Func<PressedLabel, LabelStock, LabelRuleReport>? rules)
    {
        var kind = code.Kind == SupplyKind.Bag ? "bag" : "bottle";
        return press.Choose(choice with { Design = choice.Design ?? kind }).Then(stock => TakePlace(step, stock, choice).Then(place => press.Press(text, stock, place).Then(pressed =>
        {
            var path = file ?? Path.Combine(bench.Folder.Labels, $"{kind}-{code.Number}-{stock.Design.Id}.pdf");
            return LabelFiles.Bytes(path, [pressed.Page], $"{kind} {code.Number}", bench.Now).Then<WrittenSupplyLabel>(bytes =>
            {
                var written = Recorded(step, path, bytes, new SupplyLabelled(bench.Now, path, stock.Design.Id, stock.Sheet.Id, place, text.Code ?? ""));
                SupplyBook.Append(step, SupplyBook.Subject(code.Kind, code.Number), written);
                return new WrittenSupplyLabel(path, written, rules?.Invoke(pressed, stock));
            });
        })));
    }

    /// <summary>How a bottle's label stands against the rules that apply here.</summary>
    internal Func<PressedLabel, LabelStock, LabelRuleReport> RulesFor(Bottle bottle, LabelText text) => (pressed, stock) => press.Rules(pressed, text, stock, bottle.Bought);

    private SupplyLabelled Recorded(LedgerStep step, string path, byte[] bytes, SupplyLabelled label)
    {
        if (bench.DryRun)
        {
            return label;
        }

        var staged = step.Stage(path, bytes);
        return label with { File = staged.Path, Sha256 = staged.Sha256 };
    }

    private Result<int> TakePlace(LedgerStep step, LabelStock stock, LabelChoice choice)
    {
        var at = bench.Now.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture);
        return step.Sheets.Take(stock.Sheet.Id, stock.Sheet.Places, 1, choice.Start, at).Then<int>(places => places[0].Place);
    }
}
