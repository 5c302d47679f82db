using System.Text.Json;
using System.Text.Json.Nodes;
using JarLabel.Bench.Printing;
using JarLabel.Printing.Printers;

namespace JarLabel.Bench.Answers;

/// <summary>What a command says, and after it how printing went.</summary>
internal static class PrintAnswer
{
    internal static Answer Of(Answer answer, PrintOutcome outcome) => answer with
    {
        Screen = answer.Screen.Told("printer", $"{outcome.Printer}: {PrintWords.Of(outcome)}"),
        Writes = tell => Json(answer, outcome, tell),
        Warnings = [.. answer.Warnings, .. outcome.Cautions],
        Failures = outcome.Problems,
    };

    /// <summary>How a job stands, in one line.</summary>
    internal static string Line(JobReport job) => $"{PrintWords.Of(job)}; Ctrl-C takes it back";

    private static string Json(Answer answer, PrintOutcome outcome, Tell tell)
    {
        var json = JsonNode.Parse(answer.Writes(tell))!.AsObject();
        var state = outcome.End?.ToString().ToLowerInvariant() ?? "not-sent";
        json["printed"] = JsonSerializer.SerializeToNode(new PrintedJson(outcome.Printer, state, outcome.Jobs), AnswerContext.Default.PrintedJson);
        json["warnings"] = JsonSerializer.SerializeToNode(tell([.. answer.Warnings, .. outcome.Cautions]), AnswerContext.Default.IReadOnlyListProblem);
        if (outcome.Problems.Count > 0)
        {
            json["problems"] = JsonSerializer.SerializeToNode(tell(outcome.Problems), AnswerContext.Default.IReadOnlyListProblem);
        }

        return json.ToJsonString(AnswerContext.Default.Options);
    }
}
