using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Air;
using JarLabel.Cli.Commands;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Air;
using JarLabel.Core.Labels;
using JarLabel.Core.Quantities;

namespace JarLabel.Cli.Calc;

/// <summary><c>calc air</c>: what an evaporating alcohol does to a room, and the fresh air it takes.</summary>
internal static class CalcAirCommand
{
    private static readonly Option<string> Solvent = BatchOptions.Solvent();
    private static readonly SpellOptions Spell = new();
    private static readonly Option<string> Room = new("--room") { Description = "Air in the room: \"50 m3\", \"1800 cu ft\".", HelpName = "volume" };
    private static readonly Option<string> Over = new("--over") { Description = "How long it takes: \"1 h\"; else all at once.", HelpName = "time" };
    private static readonly Option<string> Changes = new("--changes") { Description = "Room volumes of fresh air an hour (a closed room: under 1).", HelpName = "number" };
    private static readonly Option<string> Mixing = new("--mixing") { Description = "1 where air mixes perfectly, to 10 where it hardly does.", HelpName = "number" };
    private static readonly Option<string> Temperature = new("--temp") { Description = "Temperature: 68F, \"20 C\" (the default).", HelpName = "temperature" };
    private static readonly Option<string> Out = new("--out") { Description = "Also draw it over time, limits and all: a .svg, .png or .pdf file.", HelpName = "file" };

    internal static Command Create(Runner runner)
    {
        var command = new Command("air", "Vapour in a room, and the fresh air that keeps it safe.") { Solvent };
        Spell.AddTo(command);
        foreach (var option in (Option[])[Room, Over, Changes, Mixing, Temperature, Out, SharedOptions.Force])
        {
            command.Add(option);
        }

        return runner.Runs(command, Run);
    }

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var solvent = typed.Needed(Solvent, "ethanol-95", session.Solvent);
        var evaporated = Spell.Read(typed);
        var room = typed.Needed(Room, "\"50 m3\"", RoomText.Read);
        var over = typed.Value(Over, TimeText.Read);
        var changes = typed.Value(Changes, Words.Number(0, 1000, 6)) ?? 0;
        var mixing = typed.Value(Mixing, Words.Number(1, 10, 3)) ?? 1;
        var temperature = typed.Value(Temperature, TemperatureText.Read);
        var file = typed.File(Out);
        return typed.Then(() => AirQuestion.Of(evaporated, room, over, changes, mixing, temperature)
            .Then(question => RoomAirAssessor.Assess(solvent, question, session.Workbench.Rules))
            .Then(air => Chart(file, session, air).Then<Answer>(chart =>
                Answer.Of(Show(air, session, chart), AirAnswerJson.Of(air, chart), c => c.AirAnswerJson, [.. AirCautions.Of(air)]))));
    }

    /// <summary>The chart's file where one was asked for, else nothing.</summary>
    private static Result<string> Chart(string? file, Session session, AirAssessment air) =>
        file is not null ? DrawAirChart.Do(session.Workbench, air, file) : "";

    private static Screen Show(AirAssessment air, Session session, string chart)
    {
        var question = air.Question;
        return new Screen().Title($"{BenchAmount.Both(question.Evaporated, session.Workbench.Metric)} evaporating in {question.Room.CubicMeters:0.#} m³ ({question.Room.CubicFeet:0} cu ft)").Gap()
            .Rows(
                ("vapour", $"{air.VaporVolume.CubicMeters:0.000} m³ at {question.Temperature.DegreesCelsius:0.#} °C"),
                ("at the most", $"{air.PeakPpm:0} ppm{(air.Saturated ? ", all that the air can hold" : "")}"),
                ("health", air.LimitPpm is { } limit ? $"{Times(air.FractionOfLimit)} the exposure limit of {limit:0} ppm" : "no exposure limit is known"),
                ("held against", AirWords.Limits(air) is { Count: > 0 } limits ? string.Join("; ", limits) : null),
                ("fire", $"{100 * air.FractionOfLel:0.#} % of the lower explosive limit; work below 25 %"),
                ("it burns at", $"{AirWords.Burns(air)}; near the wet work there is always some that can"),
                ("fresh air for health", air.AirForLimit is { } health ? $"{AirWords.Flow(health)}{Spread(question)}" : null),
                ("fresh air for fire", $"{AirWords.Flow(air.AirForQuarterLel)}{Spread(question)}"),
                ("governs", AirWords.Governs(air)),
                ("a window", AirWords.Window(air)),
                ("a fan", AirWords.Fan(air)),
                ("clear after", air.ClearAfter is { } clear ? $"{clear.Minutes:0} min" : "never without fresh air: open up"),
                ("chart", chart.Length > 0 ? chart : null))
            .Rows(air.Doubts.Select((doubt, i) => (i == 0 ? "doubt" : "", (string?)doubt)))
            .Rows(air.Unverified.Select((figure, i) => (i == 0 ? "unverified" : "", (string?)figure)));
    }

    /// <summary>A sudden spill has no pace; the air is then reckoned as if it took an hour.</summary>
    private static string Spread(AirQuestion question) => question.Over is null ? ", if it dries over an hour" : "";

    private static string Times(double fraction) => fraction.ToString(fraction < 10 ? "0.0" : "0", CultureInfo.InvariantCulture) + " times";
}
