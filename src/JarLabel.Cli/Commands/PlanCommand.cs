using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Notices;
using JarLabel.Bench.Planning;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Labels;
using JarLabel.Core.Planning;
using JarLabel.Core.Quantities;
using UnitsNet;

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

    internal static Command Create(Runner runner)
    {
        var command = new Command("plan", "From a job to what to mix: volumes, jars that serve, what is missing, steps, air.");
        Job.AddTo(command);
        foreach (var option in (Option[])[Grade, Solvent, Temp, Room, Over, Ics])
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
        return typed.Then(() => PlanJob.Do(session.Workbench, request).Then<Answer>(job =>
            Answer.Of(Show(job, session), PlanAnswerJson.Of(job), AnswerContext.Default.PlanAnswerJson, job.Cautions)));
    }

    private static Screen Show(PlannedJob job, Session session)
    {
        var (plan, metric) = (job.Plan, session.Workbench.Metric);
        return new Screen().Title($"Plan: {BenchAmount.Both(Volume.FromMilliliters(plan.Lines.Sum(l => l.Needed.Milliliters)), metric)} of liquid, low confidence: coats and waste differ much").Gap()
            .Table(["line", "way", " cut", " coats", " on the wood", " with waste", " dry film a coat"], [.. plan.Lines.Select((l, i) => Row(l, i, metric))]).Gap()
            .Rows(
                ("flakes", $"{BenchAmount.Both(plan.Flakes, metric)}; in bags {BenchAmount.Both(plan.FlakesAtHand, metric)}{Missing(plan.FlakesMissing > Mass.Zero, BenchAmount.Both(plan.FlakesMissing, metric))}"),
                ("alcohol", $"{BenchAmount.Both(plan.Alcohol, metric)}; in bottles {BenchAmount.Both(plan.AlcoholAtHand, metric)}{Missing(plan.AlcoholMissing > Volume.Zero, BenchAmount.Both(plan.AlcoholMissing, metric))}"),
                ("evaporates", $"{BenchAmount.Both(plan.Evaporated, metric)} altogether, {BenchAmount.Both(plan.WorstCoat, metric)} with the thirstiest coat"),
                ("fresh air", Air(job)),
                ("calendar", job.Request.Calendar)).Gap()
            .Rows(job.Steps.SelectMany((s, i) => Step(s, i + 1)))
            .Next(job.Steps.FirstOrDefault(s => s.Command is not null)?.Command ?? "jarlabel shelf");
    }

    private static IEnumerable<(string, string?)> Step(PlanStep step, int place) =>
        [(place.ToString(CultureInfo.InvariantCulture), step.Words), ("", step.Command)];

    private static string Missing(bool any, string amount) => any ? $", {amount} missing" : "";

    private static string Air(PlannedJob job)
    {
        var air = job.Air;
        var flow = air.AirForLimit ?? air.AirForQuarterLel;
        return string.Create(CultureInfo.InvariantCulture, $"{flow.CubicMetersPerHour:0} m³/h ({flow.CubicFeetPerMinute:0} cfm) while that coat dries; closed up, {air.PeakPpm:0} ppm in {job.Request.Room.CubicMeters:0.#} m³{(air.LimitPpm is { } limit ? string.Create(CultureInfo.InvariantCulture, $" (limit {limit:0} ppm)") : "")}, {100 * air.FractionOfLel:0.#} % of the lower explosive limit");
    }

    private static string[] Row(JobLine line, int place, bool metric) =>
    [
        (place + 1).ToString(CultureInfo.InvariantCulture),
        line.Kind.Word,
        CutWords.Of(line.Cut),
        line.Coats.ToString(CultureInfo.InvariantCulture),
        BenchAmount.Both(line.Coverage.Liquid, metric),
        BenchAmount.Both(line.Needed, metric),
        line.Coverage.DryCoat.Micrometers.ToString("0.#", CultureInfo.InvariantCulture) + " µm",
    ];
}
