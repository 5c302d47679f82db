using System.Globalization;
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
    internal Result<WrittenLabel> Write(Recorder recorder, JarHistory history, HazardAssessment hazards, LabelChoice choice, string? file = null) =>
        press.Choose(choice).Then(stock => TakePlace(recorder, stock, choice).Then(place => Write(recorder, history, hazards, stock, place, file)));

    private Result<WrittenLabel> Write(Recorder recorder, JarHistory history, HazardAssessment hazards, LabelStock stock, int place, string? file)
    {
        var jar = history.Jar;
        var text = JarWords.Of(bench, history, hazards);
        var path = file ?? Path.Combine(bench.Folder.Labels, LabelFiles.NameFor(jar, stock.Design.Id));
        return press.Press(text, stock, place).Then(pressed =>
            LabelFiles.Bytes(path, [pressed.Page], $"Jar {jar.Number}", bench.Now).Then<WrittenLabel>(bytes =>
            {
                var written = new Labelled(bench.Now, jar.Revision, path, stock.Design.Id, stock.Sheet.Id, place, text.Code ?? "");
                if (!bench.DryRun)
                {
                    var staged = recorder.Step.Stage(path, bytes);
                    written = written with { File = staged.Path, Sha256 = staged.Sha256 };
                }

                return recorder.Append(written).Then<WrittenLabel>(_ => new WrittenLabel(path, written, press.Rules(pressed, text, stock, jar.Container.Holds)));
            }));
    }

    private Result<int> TakePlace(Recorder recorder, LabelStock stock, LabelChoice choice)
    {
        var at = bench.Now.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture);
        return recorder.Step.Sheets.Take(stock.Sheet.Id, stock.Sheet.Places, 1, choice.Start, at).Then<int>(places => places[0].Place);
    }
}
