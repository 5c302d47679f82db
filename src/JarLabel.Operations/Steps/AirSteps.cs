using JarLabel.Operations.Air;

namespace JarLabel.Operations.Steps;

/// <summary>What evaporates into a room, and the fresh air that it takes.</summary>
internal static class AirSteps
{
    private static Input<Volume?> Evaporate => field ??= Input.Optional<Volume>("evaporate", "Alcohol that goes into the air", "250 mL", VolumeText.Read).In(UsualUnits.Volumes).Help("volume", "Alcohol that goes into the air: \"250 mL\".");

    private static Input<PoundCut?> Cut => field ??= Input.Optional<PoundCut>("cut", "Or the cut that is laid on", "2", CutText.Read).Help("cut", "Instead: the cut that is laid on, with --coats and --area.");

    private static Input<int?> Coats => field ??= Input.Optional<int>("coats", "Coats", "3", ValueReader.WholeNumber(1, 1000).Invoke).Help("number", "How many coats.");

    private static Input<Area?> Area => field ??= Input.Optional<Area>("area", "What is covered", "14 sq ft", AreaText.Read).Help("area", "What is covered: \"14 sq ft\", \"1.3 m2\", \"30 x 20 in\".").Hint("14 sq ft, 1.3 m2, 30 x 20 in");

    /// <summary>A spell of finishing, said either way: the alcohol that goes into the air, or cut, coats and area of the job.</summary>
    private static Input<Volume> Evaporated => field ??= Input.Group<Volume>([Evaporate, Cut, Coats, Area, CalcSteps.Spread], OfSpell);

    private static Input<Volume> Room => field ??= Input.Of<Volume>("room", "Air in the room", "50 m3", RoomText.Read).Help("volume", "Air in the room: \"50 m3\", \"1800 cu ft\", \"20 x 15 x 9 ft\".").Hint("50 m3, 1800 cu ft, 20 x 15 x 9 ft");

    private static Input<Duration?> Over => field ??= Input.Optional<Duration>("over", "How long it takes", "1 h", TimeText.Read).Help("time", "How long it takes: \"1 h\"; else all at once.").Hint("all at once when left empty; 1 h");

    private static Input<double> Changes => field ??= Input.Or("changes", "Air changes an hour", "6", ValueReader.Number(0, 1000, 6).Invoke, 0).Help("number", "Room volumes of fresh air an hour (a closed room: under 1).").Hint("none when left empty; a closed room has under 1");

    private static Input<double?> Mixing => field ??= Input.Optional<double>("mixing", "How air mixes", "3", ValueReader.Number(1, 10, 3).Invoke).Help("number", "1 where air mixes perfectly, to 10 where it hardly does; unless said, 3 on screen and 1 in JSON, which has both.").Hint("3 when left empty, as in a shop with a window or a fan").More();

    private static Input<string?> Chart => field ??= Shared.Out("Also draw it over time, limits and all: a .svg, .png or .pdf file.");

    internal static Step Air => field ??= Step.OfShop("calc air", "Air in a room", "Vapour in a room, and the fresh air that keeps it safe.",
        [Shared.Solvent, Evaporated, Room, Over, Changes, Mixing, CalcSteps.PlainTemperature, Chart, Shared.Force], DoAir) with
    { Looks = true, Example = [new("solvent", "ethanol-95"), new("evaporate", "250 mL"), new("room", "50 m3")] };

    private static Input<double> ChangesNeeded => field ??= Input.Of<double>("changes", "Air changes an hour", "6", ValueReader.Number(0.01, 1000, 6).Invoke).Help("number", "Room volumes of fresh air an hour.");

    private static Input<double?> Left => field ??= Input.Optional<double>("to", "Until this fraction is left", "0.01", ValueReader.Fraction("0.01").Invoke).Help("fraction", "The fraction that may be left: 0.01.");

    private static Input<double?> Minutes => field ??= Input.Optional<double>("minutes", "Or after so many minutes", "30", ValueReader.Number(0, 100_000, 30).Invoke).Help("number", "Or how long.");

    private static Input<double?> MixingOfPurge => field ??= Mixing.Help("number", "1 where air mixes perfectly, to 10 where it hardly does; unless said, 1, and 3 beside it.").Hint("both perfect mixing and that of a shop when left empty");

    internal static Step Purging => field ??= Step.OfShop("calc purge", "Airing a room", "How long to air a room, or what is left after a time.", [ChangesNeeded, Left, Minutes, MixingOfPurge], DoPurge) with
    { Looks = true, Example = [new("changes", "6"), new("to", "0.01")] };

    private static Result<Volume> OfSpell(Values given)
    {
        var job = ((string[])["cut", "coats", "area", "spread"]).Any(name => given.Text(name) is not null);
        if (job == given.Get(Evaporate) is not null)
        {
            return TypingProblems.OneSpell(both: job);
        }

        if (given.Get(Evaporate) is { } said)
        {
            return said;
        }

        Problem[] missing =
        [
            .. ((Field[])[Cut.Field, Coats.Field, Area.Field]).Where(one => given.Text(one.Name) is null).Select(given.Missing),
        ];
        return missing.Length > 0
            ? Result<Volume>.Failed(missing)
            : new FinishingSession(given.Get(Area)!.Value, given.Get(Coats)!.Value, Volume.FromLiters(1) / given.Get(CalcSteps.Spread), given.Get(Cut)!.Value).Evaporated;
    }

    private static Result<Outcome> DoAir(Values given)
    {
        var bench = given.Bench;
        if (!Assess(given, given.Get(Mixing) ?? AirQuestion.UsualMixingFactor).TryGet(out var air, out var faults) || !Assess(given, given.Get(Mixing) ?? 1).TryGet(out var figures, out faults))
        {
            return faults;
        }

        var chart = "";
        if (given.Get(Chart) is { } file && !DrawAirChart.Do(bench, air, file).TryGet(out chart, out faults))
        {
            return faults;
        }

        return new Outcome(AirAnswer.Of(bench, given.Get(Shared.Solvent), air, figures, chart));
    }

    private static Result<AirAssessment> Assess(Values given, double mixing) =>
        AirQuestion.Of(given.Get(Evaporated), given.Get(Room), given.Get(Over), given.Get(Changes), mixing, given.Get(CalcSteps.PlainTemperature))
            .Then(question => RoomAirAssessor.Assess(given.Get(Shared.Solvent), question, given.Bench.Rules));

    private static Result<Outcome> DoPurge(Values given)
    {
        var (changes, to, minutes, mixing) = (given.Get(ChangesNeeded), given.Get(Left), given.Get(Minutes), given.Get(MixingOfPurge));
        if (to is null == minutes is null)
        {
            return TypingProblems.OneOfTwo("to", "minutes");
        }

        return Purged(mixing ?? 1).Then(purge => Purged(mixing ?? AirQuestion.UsualMixingFactor).Then<Outcome>(careful => new Outcome(Answer.Of(
            new Screen().Title($"{Told(purge)} at {changes.ToString("0.##", CultureInfo.InvariantCulture)} air changes an hour").Gap()
                .Rows(("calculated with", AirWords.Mixing(mixing ?? 1)), ("in a shop", mixing is null ? $"{Told(careful)}, {AirWords.Careful}" : null)),
            new PurgeAnswerJson(purge.Time.Minutes, purge.FractionLeft, mixing ?? 1),
            c => c.PurgeAnswerJson))));

        Result<Purge> Purged(double factor) => to is { } fraction ? Purge.Until(changes, fraction, factor) : Purge.After(changes, Duration.FromMinutes(minutes!.Value), factor);

        static string Told(Purge purge) => string.Create(CultureInfo.InvariantCulture, $"{purge.Time.Minutes:0.#} min leave {100 * purge.FractionLeft:0.###} %");
    }
}
