namespace JarLabel.Core.Labels;

/// <summary>The words of the chart of a room's air.</summary>
/// <param name="Title">What dries where.</param>
/// <param name="Peak">The most in the air, against both limits.</param>
/// <param name="ExifOrientation">Names the upright axis.</param>
/// <param name="Across">Names the axis of time.</param>
/// <param name="Limits">The lines drawn in, the lowest first.</param>
/// <param name="Notes">Short lines under the chart.</param>
public sealed record AirChartText(
    string Title, string Peak, string ExifOrientation, string Across, IReadOnlyList<AirChartLimit> Limits, IReadOnlyList<string> Notes)
{
    private static readonly (double Fraction, string Name)[] OfLel = [(0.10, "10 % of LEL"), (0.25, "25 % of LEL"), (1, "LEL, it can burn")];

    /// <summary>Everything that is printed on the chart.</summary>
    /// <param name="air">What was answered for the room.</param>
    /// <param name="metric">Metric amounts first.</param>
    public static AirChartText For(AirAssessment air, bool metric)
    {
        var question = air.Question;
        var room = metric ? Say($"{question.Room.CubicMeters:0.#} m³") : Say($"{question.Room.CubicFeet:0} cu ft");
        var pace = question.Over is { } over ? $"over {AirWords.Time(over)}" : "all at once";
        return new(
            $"{BenchAmount.Both(question.Evaporated, metric)} dries {pace} in {room}",
            $"At the most {AirWords.Three(air.PeakPpm)} ppm: {(air.LimitPpm is null ? "no exposure limit known" : Say($"{air.FractionOfLimit:0.#} times the exposure limit"))}, {Say($"{100 * air.FractionOfLel:0.#}")} % of the LEL.",
            "vapour in the air, ppm",
            "time since the drying began",
            [.. Lines(air).OrderBy(l => l.Ppm)],
            [.. UnderIt(air)]);
    }

    private static IEnumerable<AirChartLimit> Lines(AirAssessment air)
    {
        if (air.LimitPpm is { } health)
        {
            yield return new(health, $"exposure limit: {AirWords.Three(health)} ppm{(air.LimitUnverified ? " *" : "")}", Health: true);
        }

        if (air.FractionOfLel > 0)
        {
            var lel = air.PeakPpm / air.FractionOfLel;
            foreach (var (fraction, name) in OfLel)
            {
                yield return new(fraction * lel, $"{name}: {AirWords.Three(fraction * lel)} ppm", Health: false);
            }
        }
    }

    private static IEnumerable<string> UnderIt(AirAssessment air)
    {
        var question = air.Question;
        if (AirWords.Fire(air) is { } fire)
        {
            yield return fire;
        }

        yield return AirWords.Governs(air);
        yield return question.ChangesPerHour > 0
            ? Say($"Calculated with {question.ChangesPerHour:0.##} air changes an hour, mixing factor {question.MixingFactor:0.#}; {Clear(air)}.")
            : "Calculated for a closed room: without fresh air it does not clear.";
        yield return $"A window: {AirWords.Window(air)}.";
        if (air.LimitUnverified)
        {
            yield return "* from memory, not looked up in its source.";
        }

        yield return "An estimate for the room as a whole; near the work there is more. Local code and the data sheet come first.";
    }

    private static string Clear(AirAssessment air) => air.ClearAfter switch
    {
        { Minutes: > 0 } clear => $"back at the exposure limit {AirWords.Time(clear)} after the drying",
        { } => "it stays within the exposure limit",
        _ => "it does not clear",
    };

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A line across the chart of a room's air.</summary>
/// <param name="Ppm">Where it lies, ppm by volume, more than 0.</param>
/// <param name="Words">What stands beside it.</param>
/// <param name="Health">True for the exposure limit, false for fractions of the lower explosive limit.</param>
public sealed record AirChartLimit(double Ppm, string Words, bool Health);
