using JarLabel.Bench.Labels;
using JarLabel.Core;
using JarLabel.Core.Labels;
using JarLabel.Core.Supplies;
using JarLabel.Layout;
using JarLabel.Layout.Rules;
using JarLabel.Render;
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
        var order = new LabelOrder(OwnWords.Drawn(text, new SkiaRuler()), $"{kind} {code.Number}", file, design => $"{kind}-{code.Number}-{design}.pdf");
        return LabelPrint.Take(bench, press, step, order, choice with { Design = choice.Design ?? kind }).Then<WrittenSupplyLabel>(printed =>
        {
            var written = new SupplyLabelled(bench.Now, printed.Kept, printed.Stock.Design.Id, printed.Stock.Sheet.Id, printed.Place, text.Code ?? "") { Sha256 = printed.Sha256 };
            SupplyBook.Append(step, SupplyBook.Subject(code.Kind, code.Number), written);
            return new WrittenSupplyLabel(printed.Path, written, rules?.Invoke(printed.Pressed, printed.Stock));
        });
    }

    /// <summary>How a bottle's label stands against the rules that apply here.</summary>
    internal Func<PressedLabel, LabelStock, LabelRuleReport> RulesFor(Bottle bottle, LabelText text) => (pressed, stock) => press.Rules(pressed, text, stock, bottle.Bought);
}
