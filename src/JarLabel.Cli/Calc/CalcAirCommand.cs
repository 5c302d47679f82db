using System.CommandLine;
using System.Globalization;
using JarLabel.Cli.Answers;
using JarLabel.Cli.Commands;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Air;
using JarLabel.Core.Labels;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Cli.Calc;

/// <summary><c>calc air</c>: what an evaporating alcohol does to a room, and the fresh air it takes.</summary>
internal static class CalcAirCommand
{
    private static readonly Option<string> Solvent = BatchOptions.Solvent();
    private static readonly Option<string> Evaporate = new("--evaporate") { Description = "Alcohol that goes into the air: \"250 mL\".", HelpName = "volume" };
    private static readonly Option<string> Room = new("--room") { Description = "Air in the room: \"50 m3\", \"1800 cu ft\".", HelpName = "volume" };
    private static readonly Option<string> Over = new("--over") { Description = "How long it takes: \"1 h\"; else all at once.", HelpName = "time" };
    private static readonly Option<string> Changes = new("--changes") { Description = "Room volumes of fresh air an hour (a closed room: under 1).", HelpName = "number" };
    private static readonly Option<string> Mixing = new("--mixing") { Description = "1 where air mixes perfectly, to 10 where it hardly does.", HelpName = "number" };
    private static readonly Option<string> Temperature = new("--temp") { Description = "Temperature: 68F, \"20 C\" (the default).", HelpName = "temperature" };

    internal static Command Create(Runner runner) =>
        runner.Runs(new Command("air", "Vapour in a room, and the fresh air that keeps it safe.") { Solvent, Evaporate, Room, Over, Changes, Mixing, Temperature }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var solvent = typed.Needed(Solvent, "ethanol-95", session.Solvent);
        var evaporated = typed.Needed(Evaporate, "\"250 mL\"", VolumeText.Read);
        var room = typed.Needed(Room, "\"50 m3\"", RoomText.Read);
        var over = typed.Value(Over, TimeText.Read);
        var changes = typed.Value(Changes, Words.Number(0, 1000)) ?? 0;
        var mixing = typed.Value(Mixing, Words.Number(1, 10)) ?? 1;
        var temperature = typed.Value(Temperature, TemperatureText.Read);
        return typed.Then(() => AirQuestion.Of(evaporated, room, over, changes, mixing, temperature)
            .Then(question => RoomAirAssessor.Assess(solvent, question, session.Workbench.Rules))
            .Then<Answer>(air => Answer.Of(Show(air, session), AirAnswerJson.Of(air), AnswerContext.Default.AirAnswerJson)));
    }

    private static Screen Show(AirAssessment air, Session session)
    {
        var question = air.Question;
        return new Screen().Title($"{BenchAmount.Both(question.Evaporated, session.Workbench.Metric)} evaporating in {question.Room.CubicMeters:0.#} m³ ({question.Room.CubicFeet:0} cu ft)").Gap()
            .Rows(
                ("vapour", $"{air.VaporVolume.CubicMeters:0.000} m³ at {question.Temperature.DegreesCelsius:0.#} °C"),
                ("at the most", $"{air.PeakPpm:0} ppm{(air.Saturated ? ", all that the air can hold" : "")}"),
                ("health", air.LimitPpm is { } limit ? $"{Times(air.FractionOfLimit)} the exposure limit of {limit:0} ppm" : "no exposure limit is known"),
                ("fire", $"{100 * air.FractionOfLel:0.#} % of the lower explosive limit; work below 25 %"),
                ("fresh air for health", air.AirForLimit is { } health ? Flow(health) : null),
                ("fresh air for fire", Flow(air.AirForQuarterLel)),
                ("governs", air.HealthGoverns ? "health: breathing asks for more air than fire does" : "fire"),
                ("a window", Window(air)),
                ("a fan", air.AirForLimit is { } wanted ? $"must really move {Flow(wanted)} outdoors, with a way in across the room" : null),
                ("clear after", air.ClearAfter is { } clear ? $"{clear.Minutes:0} min" : "never without fresh air: open up"))
            .Rows(air.Doubts.Select((doubt, i) => (i == 0 ? "doubt" : "", (string?)doubt)));
    }

    private static string Window(AirAssessment air)
    {
        var draught = Draught.ThroughSmallWindow;
        var enough = (air.AirForLimit ?? air.AirForQuarterLel) <= draught;
        return string.Create(CultureInfo.InvariantCulture, $"½ m² open, another across, faint breeze: ≈ {Flow(draught)}, {Draught.ChangesPerHour(draught, air.Question.Room):0.#} air changes an hour; {(enough ? "enough then, not on a still day" : "not enough")}");
    }

    private static string Times(double fraction) => fraction.ToString(fraction < 10 ? "0.0" : "0", CultureInfo.InvariantCulture) + " times";

    private static string Flow(VolumeFlow air) => string.Create(CultureInfo.InvariantCulture, $"{air.CubicMetersPerHour:0} m³/h ({air.CubicFeetPerMinute:0} cfm)");
}
