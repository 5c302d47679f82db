namespace JarLabel.Operations.Printing;

/// <summary>Prints what a step at the bench writes. The order is: the printer is asked, and when it cannot print this nothing is recorded; the
/// step is recorded, its places taken and its file written; the file is sent and followed; when the job failed its places are given back.
/// Places are taken before and not after the job, so that two people at two benches never print on the same one; the ledger stays open to
/// everybody while a printer works for minutes; and what was poured is recorded whatever paper does. A job that nobody can tell the end of keeps
/// its places, because paper may have come out.</summary>
public sealed class PrintService : IDisposable
{
    private readonly Workbench bench;
    private readonly Printer printer;
    private readonly Sheet sheet;
    private readonly ReadyPrinter ready;

    private PrintService(Workbench bench, Printer printer, Sheet sheet, ReadyPrinter ready) => (this.bench, this.printer, this.sheet, this.ready) = (bench, printer, sheet, ready);

    /// <summary>Asks the printer whether it can print on this stock.</summary>
    public static Result<PrintService> Open(Workbench bench, PrintRequest request, Func<string, string?> environment, CancellationToken stop = default)
    {
        return LabelComposer.Open(bench).Then(composer => composer.Choose(new LabelChoice(request.Design, request.Sheet))).Then(stock =>
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
                : new PrintResult(PrintEnd.Failed, null, OperationProblems.FileNotThere(file), []);
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

    private static Result<PrintService> Ask(Workbench bench, PrinterAddress address, Sheet sheet, CancellationToken stop)
    {
        var printer = new Printer(address, PrintPatience.Usual, PrinterBook.User);
        var ready = Readiness.Of(printer, new PrintOrder("jarlabel", [], sheet.PaperWidth, sheet.PaperHeight, PrinterBook.User), sheet.Dpi, stop).GetAwaiter().GetResult();
        if (ready.TryGet(out var able, out var problems))
        {
            return new PrintService(bench, printer, sheet, able);
        }

        printer.Dispose();
        return Result<PrintService>.Failed(problems);
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
            return [OperationProblems.KeptFile(file)];
        }

        // Each file of a step with several has one label; a step with one file may have many.
        SheetPlace[] back = [.. trace.Files.Count == trace.Places.Count ? trace.Places.Skip(end == PrintEnd.Failed ? sent : sent + 1) : end == PrintEnd.Failed ? trace.Places : []];
        List<Problem> told = [];
        foreach (var group in back.GroupBy(p => p.Sheet))
        {
            int[] places = [.. group.Select(p => p.Place)];
            told.AddRange(SheetsInUse.TakeBack(bench, group.Key, places).TryGet(out _, out var problems)
                ? [OperationProblems.PlacesFree(file, group.Key, places)]
                : problems);
        }

        SheetPlace[] unsure = [.. trace.Places.Except(back).Skip(trace.Files.Count == trace.Places.Count ? sent : 0)];
        return [.. told, .. unsure.GroupBy(p => p.Sheet).Select(g => OperationProblems.PlacesUnsure(file, g.Key, [.. g.Select(p => p.Place)]))];
    }
}

/// <summary>How printing went, after a step that was recorded.</summary>
/// <param name="Printer">The printer's address.</param>
/// <param name="End">How the last job ended; null when nothing was sent, as on a dry run.</param>
/// <param name="Jobs">The jobs' numbers at the printer.</param>
/// <param name="Problems">Why not all is on paper, and what became of the places; empty when all is.</param>
/// <param name="Cautions">What should be known.</param>
public sealed record PrintOutcome(string Printer, PrintEnd? End, IReadOnlyList<int> Jobs, IReadOnlyList<Problem> Problems, IReadOnlyList<Problem> Cautions);

/// <summary>That what a step writes is to go to a printer too.</summary>
/// <param name="To">The printer, as typed.</param>
/// <param name="Sheet">The stock's id; null for the shop's usual one.</param>
/// <param name="Design">The design's id; null for the stock's usual one.</param>
/// <param name="Start">The place it begins at; null for the next free one.</param>
public sealed record PrintRequest(string To, string? Sheet = null, string? Design = null, int? Start = null)
{
    /// <summary>Where the printer was named.</summary>
    public string Where { get; init; } = "print-to";
}

/// <summary>What a recorded step put on paper's way: the places it took and the files it wrote.</summary>
/// <param name="Places">Places of label stock, in order.</param>
/// <param name="Files">Full paths, in order.</param>
public sealed record StepTrace(IReadOnlyList<SheetPlace> Places, IReadOnlyList<string> Files);
