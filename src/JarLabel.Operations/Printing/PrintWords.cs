namespace JarLabel.Operations.Printing;

/// <summary>How printing stands and went, in words.</summary>
public static class PrintWords
{
    /// <summary>How a job stands: <c>job 7 is printing, 1 done</c>.</summary>
    public static string Of(JobReport job)
    {
        var state = job.State switch
        {
            JobState.Pending => "waits its turn",
            JobState.Held => "is held",
            JobState.Processing => "is printing",
            JobState.Stopped => "stands still",
            JobState.Completed => "is done",
            JobState.Canceled => "was cancelled",
            JobState.Aborted => "was given up",
            _ => "is there",
        };
        return string.Create(CultureInfo.InvariantCulture, $"job {job.Id} {state}{(job.Sheets is > 0 and var done ? $", {done} done" : "")}{(job.State == JobState.Completed || job.Why is null ? "" : $": {job.Why}")}");
    }

    /// <summary>How it went: <c>printed, job 7</c>.</summary>
    public static string Of(PrintOutcome outcome)
    {
        return outcome.End switch
        {
            PrintEnd.Printed => string.Create(CultureInfo.InvariantCulture, $"printed, job {string.Join(", ", outcome.Jobs)}"),
            PrintEnd.Failed => "not printed",
            PrintEnd.Unknown => "sent, and perhaps printed",
            _ => "ready; nothing was sent",
        };
    }
}
