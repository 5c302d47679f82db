using JarLabel.Printing.Transport;

namespace JarLabel.Printing.Printers;

/// <summary>A printer or print queue that speaks IPP (RFC 8010, RFC 8011), asked one thing at a time.</summary>
public sealed class Printer(PrinterAddress address, PrintPatience patience, string user) : IDisposable
{
    private const ushort NotFound = 0x0406;
    private readonly IppClient client = new(address, patience);

    /// <summary>Its address.</summary>
    public string Uri => address.Uri;

    internal PrintPatience Patience => patience;

    /// <summary>What it says of itself.</summary>
    public async Task<Result<PrinterFacts>> Facts(CancellationToken stop = default)
    {
        var answer = await client.Ask(IppOperation.GetPrinterAttributes, Requests.Attributes(Uri, user), stop: stop).ConfigureAwait(false);
        return Told(answer).Then<PrinterFacts>(message => new PrinterFacts(message.First(IppTag.PrinterGroup)));
    }

    /// <summary>Asks whether it would print the order.</summary>
    public async Task<Result<PrinterFacts>> Validate(PrintOrder order, PrinterFacts facts, CancellationToken stop = default)
    {
        var answer = await client.Ask(IppOperation.ValidateJob, Requests.Print(Uri, order, order.Title, facts), stop: stop).ConfigureAwait(false);
        return Told(answer).Then<PrinterFacts>(_ => facts);
    }

    /// <summary>Sends the order, once.</summary>
    internal Task<IppAnswer> Send(PrintOrder order, string jobName, PrinterFacts facts, CancellationToken stop) =>
        client.Ask(IppOperation.PrintJob, Requests.Print(Uri, order, jobName, facts), order.Pdf, stop);

    /// <summary>How a job stands. A job that the printer no longer knows fails with <see cref="IsForgotten"/>.</summary>
    internal async Task<Result<JobReport>> Job(int id, CancellationToken stop)
    {
        var answer = await client.Ask(IppOperation.GetJobAttributes, Requests.Job(Uri, user, id), stop: stop).ConfigureAwait(false);
        return Told(answer).Then<JobReport>(message => Report(message.First(IppTag.JobGroup), id));
    }

    /// <summary>Finds a job by its name, when its number never came back. Null when the printer has none of that name; a problem when it does
    /// not answer.</summary>
    internal async Task<Result<FoundJob>> Find(string jobName, CancellationToken stop)
    {
        foreach (var done in (bool[])[false, true])
        {
            var answer = await client.Ask(IppOperation.GetJobs, Requests.Jobs(Uri, user, done), stop: stop).ConfigureAwait(false);
            if (!Told(answer).TryGet(out var message, out var problems))
            {
                return Result<FoundJob>.Failed(problems);
            }

            if (message.Of(IppTag.JobGroup).FirstOrDefault(job => job.Word("job-name") == jobName) is { } found && found.Number("job-id") is { } id)
            {
                return new FoundJob(Report(found, id));
            }
        }

        return new FoundJob(null);
    }

    /// <summary>Asks it to let go of a job. True when it did.</summary>
    internal async Task<bool> Cancel(int id)
    {
        var answer = await client.Ask(IppOperation.CancelJob, Requests.Cancel(Uri, user, id)).ConfigureAwait(false);
        return answer.Message is { Succeeded: true };
    }

    /// <summary>The answer when it went well, else why not.</summary>
    internal Result<IppMessage> Told(IppAnswer answer)
    {
        if (answer.Message is not { } message)
        {
            return answer.Fault!;
        }

        return message.Succeeded ? message : Refusal(message);
    }

    internal static bool IsForgotten(IReadOnlyList<Problem> problems) => problems is [{ Code: "JL528" }];

    internal static JobReport Report(IppGroup job, int id)
    {
        var reasons = job.Words("job-state-reasons");
        return new JobReport(
            job.Number("job-id") ?? id,
            (JobState)(job.Number("job-state") ?? 0),
            job.Number("job-media-sheets-completed") ?? job.Number("job-impressions-completed"),
            ReasonWords.Of(reasons, job.Word("job-state-message")),
            reasons.Contains("job-completed-with-errors"));
    }

    /// <inheritdoc/>
    public void Dispose() => client.Dispose();

    private Problem Refusal(IppMessage message) => message.Code == NotFound
        ? PrintingProblems.NotKnown(Uri)
        : PrintingProblems.Refused(Uri, message.Code, message.Says, [.. message.First(IppTag.UnsupportedGroup).Attributes.Select(a => a.Name)]);
}

/// <summary>What came of looking for a job.</summary>
/// <param name="Report">The job; null when the printer has none of that name.</param>
internal sealed record FoundJob(JobReport? Report);
