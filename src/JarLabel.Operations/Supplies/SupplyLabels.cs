namespace JarLabel.Operations.Supplies;

/// <summary>Writes the labels of bags and bottles and records that they were written, in one step of the ledger.</summary>
internal sealed class SupplyLabels(Workbench bench, LabelComposer composer)
{
    /// <summary>Opens the press first, so that a fault in a layout file is told before anything is done.</summary>
    internal static Result<SupplyLabels> Open(Workbench bench) => LabelComposer.Open(bench).Then<SupplyLabels>(composer => new SupplyLabels(bench, composer));

    /// <summary>Takes the next free place on the sheet, presses the label, stages its file, and records the event.</summary>
    /// <param name="step">The ledger.</param>
    /// <param name="of">The bag or bottle.</param>
    /// <param name="choice">Which label; the design for its kind where none is named.</param>
    /// <param name="file">The file to write; null for the usual place.</param>
    internal Result<WrittenSupplyLabel> Write(LedgerStep step, SupplyOutcome of, LabelChoice choice, string? file)
    {
        var (supply, kind, owner) = (of.Supply, of.Supply.Kind.Word(), SupplyWords.Owner(bench));
        var text = supply is Bottle bottle
            ? SupplyLabelText.For(bottle, of.Hazards!, bench.Catalog, owner, bench.Settings.PoisonCenter)
            : SupplyLabelText.For((Bag)supply, bench.Catalog, owner);
        var order = new LabelOrder(OwnWords.Drawn(text, new SkiaRuler()), $"{kind} {supply.Number}", file, design => $"{kind}-{supply.Number}-{design}.pdf");
        return LabelPrint.Take(bench, composer, step, order, choice with { Design = choice.Design ?? kind }).Then<WrittenSupplyLabel>(printed =>
        {
            var written = new SupplyLabelled(bench.Now, printed.Kept, printed.Stock.Design.Id, printed.Stock.Sheet.Id, printed.Place, text.Code ?? "") { Sha256 = printed.Sha256 };
            SupplyBook.Append(step, SupplyBook.Subject(supply.Kind, supply.Number), written);
            return new WrittenSupplyLabel(printed.Path, written, supply is Bottle full ? composer.Rules(printed.Pressed, text, printed.Stock, full.Bought) : null);
        });
    }
}

/// <summary>A bag's or bottle's label as written.</summary>
/// <param name="File">The file's full path.</param>
/// <param name="Event">The fact that the ledger keeps.</param>
/// <param name="Rules">What it meets of the labelling rules; null for a bag, which has no hazard.</param>
public sealed record WrittenSupplyLabel(string File, SupplyLabelled Event, LabelRuleReport? Rules);
