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
            .Rows([.. PlanWords.Takes(plan, job.Air, job.Request.Room, metric), ("calendar", job.Request.Calendar), ("sheet", sheet), ("glass", PlanWords.Glass(plan)), ("mist", PlanWords.Mist(plan)), .. PoisonRows.Of(bench, SupplyWords.Hazards(bench, job.Request.Solvent))]).Gap()
            .ToDo([.. job.Steps.Select(s => (s.Words, s.Step))])
            .Next(job.Steps.FirstOrDefault(s => s.Step is not null)?.Step ?? new Remedy("shelf"));
    }
}
