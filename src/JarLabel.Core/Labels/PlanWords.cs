namespace JarLabel.Core.Labels;

/// <summary>What a plan comes to, in rows.</summary>
public static class PlanWords
{
    /// <summary>What stands over the rows of <see cref="Lines"/>; a column of figures begins with a blank.</summary>
    public static IReadOnlyList<string> LineHeads { get; } = ["line", "way", " cut", " coats", " on the wood", " with waste", " dry film a coat"];

    /// <summary><c>1.51 L of liquid</c> for the whole job.</summary>
    public static string Liquid(JobPlan plan, bool metric) =>
        $"{BenchAmount.Both(Volume.FromMilliliters(plan.Lines.Sum(l => l.Needed.Milliliters)), metric)} of liquid";

    /// <summary>A row for each line of the job.</summary>
    public static IReadOnlyList<string[]> Lines(JobPlan plan, bool metric) =>
        [.. plan.Lines.Select((line, place) => Row(line, place, metric))];

    /// <summary>What it takes, what of that is there, and what it does to the air.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="air">The air while the thirstiest coat dries.</param>
    /// <param name="room">Air in the room.</param>
    /// <param name="metric">Metric amounts first.</param>
    public static IReadOnlyList<(string Label, string? Words)> Takes(JobPlan plan, AirAssessment air, Volume room, bool metric)
    {
        return
        [
            ("flakes", $"{BenchAmount.Both(plan.Flakes, metric)}; in bags {BenchAmount.Both(plan.FlakesAtHand, metric)}{Missing(plan.FlakesMissing > Mass.Zero, BenchAmount.Both(plan.FlakesMissing, metric))}"),
            ("alcohol", $"{BenchAmount.Both(plan.Alcohol, metric)}; in bottles {BenchAmount.Both(plan.AlcoholAtHand, metric)}{Missing(plan.AlcoholMissing > Volume.Zero, BenchAmount.Both(plan.AlcoholMissing, metric))}"),
            ("evaporates", $"{BenchAmount.Both(plan.Evaporated, metric)} altogether, {BenchAmount.Both(plan.WorstCoat, metric)} with the thirstiest coat"),
            ("fresh air", Air(air, room)),
        ];
    }

    /// <summary>What to know where a batch is more than a glass may hold; null where none is.</summary>
    public static string? Glass(JobPlan plan) =>
        plan.Batches.Any(batch => batch.Recipe.Makes > Quart) ? "A batch here is more than one US quart (946 mL): share it among jars, no glass larger than that." : null;

    /// <summary>What to know where something is sprayed; null where nothing is.</summary>
    public static string? Mist(JobPlan plan) =>
        plan.Lines.Any(line => line.Kind.Word == "spray") ? "Spray mist burns like vapor: outdoors or in a spray booth, no motor or heater in the mist, a mask that fits." : null;

    private static Volume Quart => Volume.FromUsQuarts(1);

    private static string Missing(bool any, string amount) => any ? $", {amount} missing" : "";

    private static string Air(AirAssessment air, Volume room)
    {
        var flow = air.AirForLimit ?? air.AirForQuarterLel;
        var limit = air.LimitPpm is { } ppm ? string.Create(CultureInfo.InvariantCulture, $" (limit {ppm:0} ppm)") : "";
        return string.Create(CultureInfo.InvariantCulture, $"{flow.CubicMetersPerHour:0} m³/h ({flow.CubicFeetPerMinute:0} cfm) while that coat dries; closed up, {air.PeakPpm:0} ppm in {room.CubicMeters:0.#} m³{limit}, {100 * air.FractionOfLel:0.#} % of the lower explosive limit");
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
