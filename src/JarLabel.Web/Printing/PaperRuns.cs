namespace JarLabel.Web.Printing;

/// <summary>The labels that are on their way to paper. When the server ends, those that are not printed yet are taken back from their printers
/// and their places given back, as Ctrl-C does on the command line.</summary>
/// <param name="say">Where a line for the person at the terminal goes.</param>
internal sealed class PaperRuns(Action<string> say) : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    private readonly CancellationTokenSource stop = new();
    private readonly Lock gate = new();
    private readonly HashSet<Task> going = [];

    /// <summary>Asks a printer whether it can print what is wanted. Only printers that are offered are asked.</summary>
    internal Result<PrintService> Ask(Workbench bench, PrintRequest request)
    {
        Func<string, string?> environment = Environment.GetEnvironmentVariable;
        return new PrinterBook(bench, environment).Offered(request.To, request.Where).Then(_ => PrintService.Open(bench, request, environment, stop.Token));
    }

    /// <summary>Begins to print what the bench's last step wrote, and lets go of the desk in the end.</summary>
    internal PaperRun Begin(PrintService service, string printer, string title)
    {
        var run = new PaperRun(printer);
        var task = Task.Run(() => Print(service, run, title));
        lock (gate)
        {
            going.RemoveWhere(one => one.IsCompleted);
            going.Add(task);
        }

        return run;
    }

    /// <summary>Takes back what is not printed yet and waits until every printer has said so.</summary>
    internal void Stop()
    {
        Task[] left;
        lock (gate)
        {
            left = [.. going];
        }

        stop.Cancel();
        Task.WaitAll(left, Patience);
    }

    /// <inheritdoc/>
    public void Dispose() => stop.Dispose();

    private void Print(PrintService service, PaperRun run, string title)
    {
        using (service)
        {
            try
            {
                run.End(service.Print(title, run.Tell, stop.Token));
            }
            catch (Exception fault) when (fault is not OutOfMemoryException)
            {
                say($"This is a fault in jarlabel. Please report it with what was printed:{Environment.NewLine}{fault}");
                run.End(new PrintOutcome(run.Printer, PrintEnd.Unknown, [], [WebProblems.FaultWhilePrinting()], []));
            }
        }
    }
}

/// <summary>A label on its way to paper. A printer may work for minutes and no page waits that long: it goes on by itself, and whoever looks is
/// told how it stands.</summary>
/// <param name="printer">The printer's name, as it was chosen.</param>
internal sealed class PaperRun(string printer)
{
    private volatile JobReport? last;
    private volatile PrintOutcome? outcome;

    /// <summary>The printer's name, as it was chosen.</summary>
    internal string Printer => printer;

    /// <summary>How the job stands; null before the printer has taken it.</summary>
    internal JobReport? Last => last;

    /// <summary>How it went; null while it goes.</summary>
    internal PrintOutcome? Outcome => outcome;

    internal void Tell(JobReport report) => last = report;

    internal void End(PrintOutcome how) => outcome = how;
}
