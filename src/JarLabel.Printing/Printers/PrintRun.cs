using System.Diagnostics;
using System.Security.Cryptography;

namespace JarLabel.Printing.Printers;

/// <summary>Sends one order and follows it to its end. The document is sent once and never again: when the connection breaks and the job's
/// number never came back, the printer is asked for a job of our name, and only when it says it has none is the job called failed.</summary>
public sealed class PrintRun
{
    private const int SlowestFactor = 8;
    private readonly Printer printer;
    private readonly PrintOrder order;
    private readonly PrinterFacts facts;
    private readonly Action<JobReport> tell;
    private readonly CancellationToken stop;

    /// <summary>Names the job so that it is told from all others at that printer.</summary>
    private readonly string jobName;

    private PrintRun(Printer printer, PrintOrder order, PrinterFacts facts, Action<JobReport> tell, CancellationToken stop)
    {
        (this.printer, this.order, this.facts, this.tell, this.stop) = (printer, order, facts, tell, stop);
        jobName = $"{order.Title} [{Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(3))}]";
    }

    /// <summary>Prints, and says how it ended.</summary>
    /// <param name="printer">The printer.</param>
    /// <param name="order">What is printed.</param>
    /// <param name="facts">What the printer said of itself.</param>
    /// <param name="tell">Hears how the job stands, whenever that changes.</param>
    /// <param name="stop">Takes the job back from the printer.</param>
    public static Task<PrintResult> Go(Printer printer, PrintOrder order, PrinterFacts facts, Action<JobReport> tell, CancellationToken stop = default)
    {
        return new PrintRun(printer, order, facts, tell, stop).Go();
    }

    private async Task<PrintResult> Go()
    {
        var answer = await printer.Send(order, jobName, facts, stop).ConfigureAwait(false);
        if (answer.Message is null)
        {
            return answer.MayHaveArrived ? await Look(answer.Fault!).ConfigureAwait(false) : Failed(null, answer.Fault!);
        }

        return printer.Told(answer).TryGet(out var accepted, out var refused) && accepted.First(Ipp.IppTag.JobGroup).Number("job-id") is { } id
            ? await Follow(Printer.Report(accepted.First(Ipp.IppTag.JobGroup), id)).ConfigureAwait(false)
            : refused.Count > 0 ? Failed(null, refused[0]) : await Look(PrintingProblems.NotIpp(printer.Uri)).ConfigureAwait(false);
    }

    /// <summary>The answer to the order was lost: the printer is asked whether it has the job.</summary>
    private async Task<PrintResult> Look(Problem lost)
    {
        await Task.Delay(printer.Patience.Between, CancellationToken.None).ConfigureAwait(false);
        var found = await printer.Find(jobName, CancellationToken.None).ConfigureAwait(false);
        if (!found.TryGet(out var job, out _))
        {
            return new PrintResult(PrintEnd.Unknown, null, PrintingProblems.LostSight(printer.Uri, lost), []);
        }

        if (job.Report is not { } report)
        {
            return Failed(null, lost);
        }

        return stop.IsCancellationRequested ? await TakeBack(report, lost).ConfigureAwait(false) : await Follow(report).ConfigureAwait(false);
    }

    private async Task<PrintResult> Follow(JobReport report)
    {
        var still = Stopwatch.StartNew();
        var pause = printer.Patience.Between;
        tell(report);
        while (!report.IsOver)
        {
            if (still.Elapsed > printer.Patience.Stall)
            {
                return await TakeBack(report, PrintingProblems.Stalled(printer.Uri, still.Elapsed, await Hindrance(report).ConfigureAwait(false))).ConfigureAwait(false);
            }

            if (!await Slept(pause).ConfigureAwait(false))
            {
                return await TakeBack(report, PrintingProblems.Stopped()).ConfigureAwait(false);
            }

            pause = Min(pause * 1.5, printer.Patience.Between * SlowestFactor);
            var now = await printer.Job(report.Id, CancellationToken.None).ConfigureAwait(false);
            if (now.TryGet(out var next, out var problems))
            {
                if ((next.State, next.Sheets, next.Why) != (report.State, report.Sheets, report.Why))
                {
                    still.Restart();
                    tell(next);
                }

                report = next;
            }
            else if (Printer.IsForgotten(problems) || still.Elapsed > printer.Patience.Stall || stop.IsCancellationRequested)
            {
                return new PrintResult(PrintEnd.Unknown, report.Id, PrintingProblems.LostSight(printer.Uri, problems[0]), []);
            }
        }

        return Ended(report);
    }

    private PrintResult Ended(JobReport report) => report.State == JobState.Completed
        ? new PrintResult(PrintEnd.Printed, report.Id, null, report.Troubled ? [PrintingProblems.DoneWithErrors(printer.Uri, report.Why ?? "it does not say what")] : [])
        : Failed(report.Id, PrintingProblems.JobFailed(printer.Uri, report.Why ?? (report.State == JobState.Canceled ? "it was cancelled" : "it does not say why")));

    /// <summary>Takes the job back from the printer. A job that was done in the meantime is done.</summary>
    private async Task<PrintResult> TakeBack(JobReport report, Problem why)
    {
        var let = await printer.Cancel(report.Id).ConfigureAwait(false);
        var last = await printer.Job(report.Id, CancellationToken.None).ConfigureAwait(false);
        if (last.TryGet(out var now, out _) && now.State == JobState.Completed)
        {
            return Ended(now);
        }

        return let || (last.Ok && now!.IsOver)
            ? Failed(report.Id, why)
            : new PrintResult(PrintEnd.Unknown, report.Id, PrintingProblems.NotCancelled(printer.Uri), []);
    }

    /// <summary>A job that waits often says nothing itself; the printer knows why.</summary>
    private async Task<string?> Hindrance(JobReport report) =>
        (await printer.Facts(CancellationToken.None).ConfigureAwait(false)).TryGet(out var now, out _) && now.Why is { } why ? why : report.Why;

    private async Task<bool> Slept(TimeSpan pause)
    {
        try
        {
            await Task.Delay(pause, stop).ConfigureAwait(false);
            return true;
        }
        catch (OperationCanceledException)
        {
            return false;
        }
    }

    private static PrintResult Failed(int? job, Problem why) => new(PrintEnd.Failed, job, why, []);

    private static TimeSpan Min(TimeSpan a, TimeSpan b) => a < b ? a : b;
}

/// <summary>How a job stands at one moment.</summary>
/// <param name="Id">Its number at the printer.</param>
/// <param name="State">How it stands.</param>
/// <param name="Sheets">Sheets or pages done; null when unsaid.</param>
/// <param name="Why">Why it stands so, in words; null when unsaid.</param>
/// <param name="Troubled">True when a completed job had errors.</param>
public sealed record JobReport(int Id, JobState State, int? Sheets, string? Why, bool Troubled)
{
    /// <summary>True when it goes no further.</summary>
    public bool IsOver => State is JobState.Canceled or JobState.Aborted or JobState.Completed;
}

/// <summary>How a job ended.</summary>
public enum PrintEnd
{
    /// <summary>The printer says that it is on paper.</summary>
    Printed,

    /// <summary>It is surely not all on paper.</summary>
    Failed,

    /// <summary>It was sent, and nobody can say whether it is on paper.</summary>
    Unknown,
}

/// <summary>How a job ended.</summary>
/// <param name="End">On paper, not on paper, or nobody can say.</param>
/// <param name="Job">Its number at the printer; null when it never got one.</param>
/// <param name="Problem">Why it is not surely on paper; null when it is.</param>
/// <param name="Cautions">What should be known of it.</param>
public sealed record PrintResult(PrintEnd End, int? Job, Problem? Problem, IReadOnlyList<Problem> Cautions);
