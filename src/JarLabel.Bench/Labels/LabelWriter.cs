using JarLabel.Bench.Recording;
using JarLabel.Core;
using JarLabel.Core.Hazards;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Labels;

/// <summary>Writes a jar's label and records that it was written, in one step of the ledger.</summary>
internal sealed class LabelWriter(Workbench bench, LabelPress press)
{
    /// <summary>Opens the press first, so that a fault in a layout file is told before anything is done.</summary>
    internal static Result<LabelWriter> Open(Workbench bench) => LabelPress.Open(bench).Then<LabelWriter>(press => new LabelWriter(bench, press));

    /// <summary>Takes the next free place on the sheet, presses the label, stages its file, and records the event.</summary>
    internal Result<WrittenLabel> Write(Recorder recorder, JarHistory history, HazardAssessment hazards, LabelChoice choice, string? file = null)
    {
        var jar = history.Jar;
        var text = JarWords.Of(bench, history, hazards);
        var order = new LabelOrder(text, $"Jar {jar.Number}", file, design => LabelFiles.NameFor(jar, design));
        return LabelPrint.Take(bench, press, recorder.Step, order, choice).Then(printed =>
        {
            var stock = printed.Stock;
            var written = new Labelled(bench.Now, jar.Revision, printed.Kept, stock.Design.Id, stock.Sheet.Id, printed.Place, text.Code ?? "") { Sha256 = printed.Sha256 };
            return recorder.Append(written).Then<WrittenLabel>(_ => new WrittenLabel(printed.Path, written, press.Rules(printed.Pressed, text, stock, jar.Container.Holds)));
        });
    }
}
