namespace JarLabel.Operations.Labels;

/// <summary>Writes a jar's label and records that it was written, in one step of the ledger.</summary>
internal sealed class LabelWriter(Workbench bench, LabelComposer composer)
{
    /// <summary>Opens the press first, so that a fault in a layout file is told before anything is done.</summary>
    internal static Result<LabelWriter> Open(Workbench bench) => LabelComposer.Open(bench).Then<LabelWriter>(composer => new LabelWriter(bench, composer));

    /// <summary>Takes the next free place on the sheet, presses the label, stages its file, and records the event.</summary>
    internal Result<WrittenLabel> Write(Recorder recorder, JarHistory history, HazardAssessment hazards, LabelChoice choice, string? file = null)
    {
        var jar = history.Jar;
        var text = JarWords.Of(bench, history, hazards);
        var order = new LabelOrder(text, $"Jar {jar.Number}", file, design => LabelFiles.NameFor(jar, design));
        return JarDesigns.Demand(bench, choice).Then(_ => LabelPrint.Take(bench, composer, recorder.Step, order, choice)).Then(printed =>
        {
            var stock = printed.Stock;
            var written = new Labelled(bench.Now, jar.Revision, printed.Kept, stock.Design.Id, stock.Sheet.Id, printed.Place, text.Code ?? "") { Sha256 = printed.Sha256 };
            return recorder.Append(written).Then<WrittenLabel>(_ => new WrittenLabel(printed.Path, written, composer.Rules(printed.Pressed, text, stock, jar.Container.Holds)));
        });
    }
}

/// <summary>Which designs are for jars.</summary>
internal static class JarDesigns
{
    private static readonly Dictionary<string, string> Others = new(StringComparer.Ordinal) { ["bag"] = "a bag of flakes", ["bottle"] = "a bottle of alcohol", ["notice"] = "the wall" };

    /// <summary>True for a design that a jar's label may have.</summary>
    internal static bool Suits(string design) => !Others.ContainsKey(design);

    /// <summary>The choice, unless its design is made for something else.</summary>
    internal static Result<LabelChoice> Demand(Workbench bench, LabelChoice choice) => (choice.Design ?? bench.Settings.Design) is { } design && Others.TryGetValue(design, out var what)
        ? OperationProblems.NoJarDesign(design, what)
        : choice;
}

/// <summary>The way of one label to its file, the same for jars, bags and bottles: the next free place on the sheet, the checked page, the staged
/// file. What the ledger keeps of it is the caller's.</summary>
internal static class LabelPrint
{
    /// <summary>Takes the place, presses the label and stages its file; on a dry run nothing is staged.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="composer">Its composer.</param>
    /// <param name="step">The step of the ledger that it belongs to.</param>
    /// <param name="order">What is to be printed.</param>
    /// <param name="choice">Which label.</param>
    internal static Result<PrintedLabel> Take(Workbench bench, LabelComposer composer, LedgerStep step, LabelOrder order, LabelChoice choice) =>
        composer.Choose(choice).Then(stock => SheetsInUse.TakeNext(bench, step, stock.Sheet, 1, choice.Start).Then(places =>
            composer.Press(order.Text, stock, places[0].Place).Then(pressed =>
            {
                var path = order.File ?? Path.Combine(bench.Folder.Labels, order.UsualName(stock.Design.Id));
                return LabelFiles.Bytes(path, [pressed.Page], order.Title, bench.Now).Then<PrintedLabel>(bytes =>
                {
                    var printed = new PrintedLabel(path, path, null, stock, places[0].Place, pressed);
                    return step.Write(bench, path, bytes) is { } staged ? printed with { Kept = staged.Path, Sha256 = staged.Sha256 } : printed;
                });
            })));
}

/// <summary>A label as written.</summary>
/// <param name="File">The file's full path.</param>
/// <param name="Event">The fact that the ledger keeps.</param>
/// <param name="Rules">What it meets of the labelling rules, and what moved to the jar card.</param>
public sealed record WrittenLabel(string File, Labelled Event, LabelRuleReport Rules);
