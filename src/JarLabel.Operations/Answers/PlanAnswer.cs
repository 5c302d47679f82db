namespace JarLabel.Operations.Answers;

/// <summary>What is said of a plan.</summary>
internal static class PlanAnswer
{
    internal static Answer Of(Workbench bench, PlannedJob job, string? sheet) =>
        Answer.Of(Show(bench, job, sheet), tell => PlanAnswerJson.Of(job, tell) with { Sheet = sheet }, c => c.PlanAnswerJson, job.Cautions);

    private static Screen Show(Workbench bench, PlannedJob job, string? sheet)
    {
        var (plan, metric) = (job.Plan, bench.Metric);
        return new Screen().Title($"Plan: {PlanWords.Liquid(plan, metric)}, low confidence: coats and waste differ much").Gap()
            .Table([.. PlanWords.LineHeads], [.. PlanWords.Lines(plan, metric)]).Gap()
            .Rows([.. PlanWords.Takes(plan, job.Air, job.Request.Room, metric), ("calendar", job.Request.Calendar), ("sheet", sheet)]).Gap()
            .Steps([.. job.Steps.SelectMany((s, i) => Step(s, i + 1))])
            .Next(job.Steps.FirstOrDefault(s => s.Command is not null)?.Command ?? "jarlabel shelf");
    }

    private static IEnumerable<(string, string, bool)> Step(PlanStep step, int place) =>
        [(place.ToString(CultureInfo.InvariantCulture), step.Words, false), .. step.Command is { } command ? [("", command, true)] : Array.Empty<(string, string, bool)>()];
}
