using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Notices;
using JarLabel.Bench.Planning;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Labels;
using JarLabel.Core.Planning;
using JarLabel.Core.Quantities;

namespace JarLabel.Cli.Commands;

/// <summary><c>plan</c>: from a job to what to mix, what serves, what is missing and what to do.</summary>
internal static class PlanCommand
{
    private static readonly PlanOptions Job = new();
    private static readonly Option<string> Grade = new("--grade") { Description = "The flakes: garnet, blonde, ... or one of the shop's own.", HelpName = "id" };
    private static readonly Option<string> Solvent = BatchOptions.Solvent();
    private static readonly Option<string> Temp = BatchOptions.Temperature();
    private static readonly Option<string> Room = new("--room") { Description = "Air in the room: \"50 m3\" (the default), \"1800 cu ft\".", HelpName = "volume" };
    private static readonly Option<string> Over = new("--over") { Description = "How long a coat takes to dry: \"1 h\" (the default).", HelpName = "time" };
    internal static readonly Option<string> Ics = new("--ics") { Description = "Write a calendar (iCalendar, RFC 5545) with the dates to swirl, strain, test and use by.", HelpName = "file" };

    private static readonly Option<string> Out = DrawingOptions.Out("Also write one sheet for the bench, with boxes to tick: a .pdf, .svg or .png file.");
    private static readonly Option<string> Paper = DrawingOptions.PaperOption();

    internal static Command Create(Runner runner)
    {
        var command = new Command("plan", "From a job to what to mix: volumes, jars that serve, what is missing, steps, air.");
        Job.AddTo(command);
        foreach (var option in (Option[])[Grade, Solvent, Temp, Room, Over, Ics, Out, Paper, SharedOptions.Force])
        {
            command.Add(option);
        }

        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var lines = Job.Read(typed);
        var grade = typed.Needed(Grade, "garnet", session.Grade);
        var solvent = typed.Needed(Solvent, "ethanol-95", session.Solvent);
        var request = new PlanRequest(
            lines,
            grade,
            solvent,
            typed.Value(Room, RoomText.Read) ?? NoticeRequest.UsualRoom,
            typed.Value(Over, TimeText.Read) ?? NoticeRequest.UsualOver,
            typed.Value(Temp, TemperatureText.Read),
            typed.File(Ics));
        var (sheet, paper) = (typed.File(Out), DrawingOptions.Of(typed, Paper, session));
        return typed.Then(() => PlanJob.Do(session.Workbench, request).Then(job =>
            (sheet is null ? "" : DrawPlan.Do(session.Workbench, job, sheet, paper)).Then<Answer>(_ =>
                Answer.Of(Show(job, session, sheet), PlanAnswerJson.Of(job) with { Sheet = sheet }, c => c.PlanAnswerJson, job.Cautions))));
    }

    private static Screen Show(PlannedJob job, Session session, string? sheet)
    {
        var (plan, metric) = (job.Plan, session.Workbench.Metric);
        return new Screen().Title($"Plan: {PlanWords.Liquid(plan, metric)}, low confidence: coats and waste differ much").Gap()
            .Table([.. PlanWords.LineHeads], [.. PlanWords.Lines(plan, metric)]).Gap()
            .Rows([.. PlanWords.Takes(plan, job.Air, job.Request.Room, metric), ("calendar", job.Request.Calendar), ("sheet", sheet)]).Gap()
            .Rows(job.Steps.SelectMany((s, i) => Step(s, i + 1)))
            .Next(job.Steps.FirstOrDefault(s => s.Command is not null)?.Command ?? "jarlabel shelf");
    }

    private static IEnumerable<(string, string?)> Step(PlanStep step, int place) =>
        [(place.ToString(CultureInfo.InvariantCulture), step.Words), ("", step.Command)];
}
