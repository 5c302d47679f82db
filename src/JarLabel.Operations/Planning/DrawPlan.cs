namespace JarLabel.Operations.Planning;

/// <summary>Draws a planned job on one sheet for the bench.</summary>
public static class DrawPlan
{
    /// <summary>Writes the sheet whole or not at all; on a dry run it is drawn and dropped.</summary>
    /// <param name="bench">The shop at this moment.</param>
    /// <param name="job">The planned job.</param>
    /// <param name="file">Full path of the file; its ending says what it becomes.</param>
    /// <param name="paper">The paper, upright.</param>
    /// <returns>The file, or why not.</returns>
    public static Result<string> Do(Workbench bench, PlannedJob job, string file, Paper paper)
    {
        var request = job.Request;
        var text = PlanSheetText.For(bench.Settings.Name, job.Plan, [.. job.Steps.Select(step => (step.Words, CommandLine.Of(step.Step)))], request.Grade, request.Solvent, job.Air, request.Room, bench.Now, bench.Metric);
        return DrawnPages.Write(bench, [PlanSheet.Of(text, paper, new SkiaRuler())], $"Bench sheet: {text.Title}", file);
    }
}
