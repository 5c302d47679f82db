using JarLabel.Bench.Labels;
using JarLabel.Bench.Sheets;
using JarLabel.Core;
using JarLabel.Layout.Sheets;
using JarLabel.Printing.Printers;
using JarLabel.Printing.Transport;
using JarLabel.Store.Sheets;

namespace JarLabel.Bench.Printing;

/// <summary>Prints what a step at the bench writes. The order is: the printer is asked, and when it cannot print this nothing is recorded; the
/// step is recorded, its places taken and its file written; the file is sent and followed; when the job failed its places are given back.
/// Places are taken before and not after the job, so that two people at two benches never print on the same one; the ledger stays open to
/// everybody while a printer works for minutes; and what was poured is recorded whatever paper does. A job that nobody can tell the end of keeps
/// its places, because paper may have come out.</summary>
public sealed class PrintDesk : IDisposable
{
    private readonly Workbench bench;
    private readonly Printer printer;
    private readonly Sheet sheet;
    private readonly ReadyPrinter ready;

    private PrintDesk(Workbench bench, Printer printer, Sheet sheet, ReadyPrinter ready) => (this.bench, this.printer, this.sheet, this.ready) = (bench, printer, sheet, ready);

    /// <summary>Asks the printer whether it can print on this stock.</summary>
    public static Result<PrintDesk> Open(Workbench bench, PrintRequest request, Func<string, string?> environment, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(request);
        return LabelPress.Open(bench).Then(press => press.Choose(new LabelChoice(request.Design, request.Sheet))).Then(stock =>
            new PrinterBook(bench, environment).Named(request.To, request.Where).Then(address => Ask(bench, address, stock.Sheet, stop)));
    }

    /// <summary>Prints what the bench's last step wrote.</summary>
    /// <param name="title">The jobs' name.</param>
    /// <param name="tell">Hears how the job stands.</param>
    /// <param name="stop">Takes the job back from the printer.</param>
    public PrintOutcome Print(string title, Action<JobReport> tell, CancellationToken stop = default)
    {
        var trace = bench.LastStep;
        List<Problem> cautions = [.. ready.Cautions, .. MarginCheck.Of(printer.Uri, sheet, ready.Facts, [.. (trace?.Places ?? []).Select(p => p.Place).Distinct()])];
        if (bench.DryRun || trace is null || trace.Files.Count == 0)
        {
            return new PrintOutcome(printer.Uri, null, [], [], cautions);
        }

        var jobs = new List<int>();
        var end = PrintEnd.Printed;
        foreach (var (sent, file) in trace.Files.Index())
        {
            var result = Bytes(file) is { } pdf
                ? PrintRun.Go(printer, Order(title, pdf), ready.Facts, tell, stop).GetAwaiter().GetResult()
                : new PrintResult(PrintEnd.Failed, null, BenchProblems.FileNotThere(file), []);
            jobs.AddRange(result.Job is { } job ? [job] : []);
            cautions.AddRange(result.Cautions);
            if (result.End != PrintEnd.Printed)
            {
                return new PrintOutcome(printer.Uri, result.End, jobs, [result.Problem!, .. After(result.End, trace, sent)], cautions);
            }
        }

        return new PrintOutcome(printer.Uri, end, jobs, [], cautions);
    }

    /// <inheritdoc/>
    public void Dispose() => printer.Dispose();

    private static Result<PrintDesk> Ask(Workbench bench, PrinterAddress address, Sheet sheet, CancellationToken stop)
    {
        var printer = new Printer(address, PrintPatience.Usual, PrinterBook.User);
        var ready = Readiness.Of(printer, new PrintOrder("jarlabel", [], sheet.PaperWidth, sheet.PaperHeight, PrinterBook.User), sheet.Dpi, stop).GetAwaiter().GetResult();
        if (ready.TryGet(out var able, out var problems))
        {
            return new PrintDesk(bench, printer, sheet, able);
        }

        printer.Dispose();
        return Result<PrintDesk>.Failed(problems);
    }

    private static byte[]? Bytes(string file)
    {
        try
        {
            return File.ReadAllBytes(file);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private PrintOrder Order(string title, byte[] pdf) => new(title, pdf, sheet.PaperWidth, sheet.PaperHeight, PrinterBook.User);

    /// <summary>What becomes of the places: those of a failed job, and of files not sent any more, are free again. A long print of many sheets is
    /// one job; sheets of it that came out before it failed are the person's to take again.</summary>
    private IEnumerable<Problem> After(PrintEnd end, StepTrace trace, int sent)
    {
        var file = trace.Files[sent];
        if (trace.Places.Count == 0)
        {
            return [BenchProblems.KeptFile(file)];
        }

        // Each file of a step with several has one label; a step with one file may have many.
        SheetPlace[] back = [.. trace.Files.Count == trace.Places.Count ? trace.Places.Skip(end == PrintEnd.Failed ? sent : sent + 1) : end == PrintEnd.Failed ? trace.Places : []];
        List<Problem> told = [];
        foreach (var group in back.GroupBy(p => p.Sheet))
        {
            int[] places = [.. group.Select(p => p.Place)];
            told.AddRange(SheetsInUse.TakeBack(bench, group.Key, places).TryGet(out _, out var problems)
                ? [BenchProblems.PlacesFree(file, group.Key, places)]
                : problems);
        }

        SheetPlace[] unsure = [.. trace.Places.Except(back).Skip(trace.Files.Count == trace.Places.Count ? sent : 0)];
        return [.. told, .. unsure.GroupBy(p => p.Sheet).Select(g => BenchProblems.PlacesUnsure(file, g.Key, [.. g.Select(p => p.Place)]))];
    }
}
