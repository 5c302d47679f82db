using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using JarLabel.Bench.Printing;
using JarLabel.Core;
using JarLabel.Printing.Printers;

namespace JarLabel.Cli.Answers;

/// <summary>What a command says, and after it how printing went.</summary>
internal static class PrintAnswer
{
    internal static Answer Of(Answer answer, PrintOutcome outcome) => answer with
    {
        Screen = answer.Screen.Told("printer", $"{outcome.Printer}: {Words(outcome)}"),
        Json = () => Json(answer, outcome),
        Warnings = [.. answer.Warnings, .. outcome.Cautions],
        Failures = outcome.Problems,
    };

    /// <summary>How a job stands, in one line.</summary>
    internal static string Line(JobReport job)
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
        return string.Create(CultureInfo.InvariantCulture, $"job {job.Id} {state}{(job.Sheets is > 0 and var done ? $", {done} done" : "")}{(job.State == JobState.Completed || job.Why is null ? "" : $": {job.Why}")}; Ctrl-C takes it back");
    }

    private static string Words(PrintOutcome outcome) => outcome.End switch
    {
        PrintEnd.Printed => string.Create(CultureInfo.InvariantCulture, $"printed, job {string.Join(", ", outcome.Jobs)}"),
        PrintEnd.Failed => "not printed",
        PrintEnd.Unknown => "sent, and perhaps printed",
        _ => "ready; nothing was sent",
    };

    private static string Json(Answer answer, PrintOutcome outcome)
    {
        var json = JsonNode.Parse(answer.Json())!.AsObject();
        var state = outcome.End?.ToString().ToLowerInvariant() ?? "not-sent";
        json["printed"] = JsonSerializer.SerializeToNode(new PrintedJson(outcome.Printer, state, outcome.Jobs), AnswerContext.Default.PrintedJson);
        json["warnings"] = JsonSerializer.SerializeToNode((IReadOnlyList<Problem>)[.. answer.Warnings, .. outcome.Cautions], AnswerContext.Default.IReadOnlyListProblem);
        if (outcome.Problems.Count > 0)
        {
            json["problems"] = JsonSerializer.SerializeToNode(outcome.Problems, AnswerContext.Default.IReadOnlyListProblem);
        }

        return json.ToJsonString(AnswerContext.Default.Options);
    }
}
