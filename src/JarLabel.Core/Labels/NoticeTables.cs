namespace JarLabel.Core.Labels;

/// <summary>The figures of a shelf notice.</summary>
internal static class NoticeTables
{
    /// <summary>What stands there: name, how many jars and bottles, amount, under a line that names the columns.</summary>
    internal static IReadOnlyList<IReadOnlyList<string>> Stock(NoticeFacts facts)
    {
        var stock = facts.Stock;
        return stock.Liquids.Count == 0
            ? [[Heading(facts), "", ""], ["nothing", "", ""]]
            : [[Heading(facts), "count", "amount"], .. stock.Categories.Select(c => Row(c, facts.Metric)), .. Methanol(stock, facts.Metric)];
    }

    /// <summary>What a spell of work does to the air, under a line that says which.</summary>
    internal static IReadOnlyList<IReadOnlyList<string>> Air(NoticeFacts facts)
    {
        if (facts.Air is not { } air)
        {
            return [];
        }

        var question = air.Question;
        return
        [
            [$"Air when {Amount(question.Evaporated, facts.Metric)} dries in {Room(question.Room, facts.Metric)}", ""],
            ["in the air at the most, closed room", $"{AirWords.Three(air.PeakPpm)} ppm"],
            [LimitRow(air), air.LimitPpm is { } limit ? $"{AirWords.Three(limit)} ppm{(air.LimitUnverified ? " *" : "")}" : "no limit known"],
            ["of the least that burns (LEL); keep under 25 %", Percent(air.FractionOfLel) + AirWords.FireMark(air)],
            [Say($"fresh air for that, in {Over(question)} (mixing factor {question.MixingFactor:0.#})"), air.AirForLimit is { } health ? AirWords.Flow(health, facts.Metric) : "no limit known"],
            [$"{Window(facts.Metric)} window, another across, faint breeze", "≈ " + AirWords.Flow(Draught.ThroughSmallWindow, facts.Metric)],
            .. air.LimitUnverified ? (string[][])[["* not looked up in its source", ""]] : [],
        ];
    }

    private static string LimitRow(AirAssessment air) =>
        AirWords.LimitNames(air) is { Length: > 0 } names ? $"the most to breathe over a shift ({names})" : "the most to breathe over a shift";

    private static IReadOnlyList<string> Row(StockedCategory stocked, bool metric) =>
        [CategoryName(stocked.Category), Count(stocked.Containers), BenchAmount.Both(stocked.Liquid, metric)];

    private static IEnumerable<IReadOnlyList<string>> Methanol(ShelfStock stock, bool metric)
    {
        var jars = stock.WithMethanol;
        return jars.Count == 0
            ? []
            : [["of these with methanol", Count(jars.Count), BenchAmount.Both(Volume.FromMilliliters(jars.Sum(l => l.Liquid.Milliliters)), metric)]];
    }

    /// <summary>The words of the category's own hazard statement, H224 to H227.</summary>
    private static string CategoryName(int? category) => category switch
    {
        1 => "extremely flammable (cat. 1)",
        2 => "highly flammable (cat. 2)",
        3 => "flammable (cat. 3)",
        4 => "combustible (cat. 4)",
        _ => "not flammable",
    };

    private static string Over(AirQuestion question) => question.Over is { } over
        ? over.Hours >= 1 ? Say($"{over.Hours:0.#} h") : Say($"{over.Minutes:0} min")
        : "1 h";

    private static string Heading(NoticeFacts facts) => $"Shelf {facts.Shelf}, {DateWords.Of(facts.Day)}";

    private static string Amount(Volume liquid, bool metric) => metric ? BenchAmount.Metric(liquid) : BenchAmount.Us(liquid);

    private static string Room(Volume room, bool metric) => metric ? Say($"{room.CubicMeters:0.#} m³") : Say($"{room.CubicFeet:0} cu ft");

    private static string Window(bool metric) => metric ? "½ m²" : "5.4 sq ft";

    private static string Percent(double fraction) => Say($"{100 * fraction:0.#} %");

    private static string Count(int jars) => jars.ToString(CultureInfo.InvariantCulture);

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
