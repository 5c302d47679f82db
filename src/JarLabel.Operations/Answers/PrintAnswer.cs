namespace JarLabel.Operations.Answers;

/// <summary>What a command says, and after it how printing went.</summary>
internal static class PrintAnswer
{
    internal static Answer Of(Answer answer, PrintOutcome outcome) => (answer with
    {
        Screen = answer.Screen.Told("printer", $"{outcome.Printer}: {PrintWords.Of(outcome)}"),
        Writes = tell => Json(answer, outcome, tell),
    }).With(outcome.Cautions, outcome.Problems);

    /// <summary>How a job stands, in one line.</summary>
    internal static string Line(JobReport job) => $"{PrintWords.Of(job)}; Ctrl-C takes it back";

    private static string Json(Answer answer, PrintOutcome outcome, Tell tell)
    {
        var json = JsonNode.Parse(answer.Writes(tell))!.AsObject();
        var state = outcome.End?.ToString().ToLowerInvariant() ?? "not-sent";
        json["printed"] = JsonSerializer.SerializeToNode(new PrintedJson(outcome.Printer, state, outcome.Jobs), AnswerContext.Default.PrintedJson);
        return json.ToJsonString(AnswerContext.Default.Options);
    }
}

/// <summary>How printing went: <c>printed</c>, <c>failed</c>, <c>unknown</c>, or <c>not-sent</c>.</summary>
internal sealed record PrintedJson(string Printer, string State, IReadOnlyList<int> Jobs);
