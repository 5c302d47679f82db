namespace JarLabel.Operations.Answers;

/// <summary>What is said of a wall notice.</summary>
internal static class NoticeAnswer
{
    internal static Answer Of(Workbench bench, WrittenNotice notice) =>
        Answer.Of(Show(notice, bench), tell => new NoticeAnswerJson(JsonOf(notice, bench.Rules, bench.Catalog), tell(notice.Cautions)), c => c.NoticeAnswerJson, notice.Cautions);

    private static Screen Show(WrittenNotice notice, Workbench bench) => new Screen()
        .Title($"Notice for shelf {notice.Shelf}").Gap()
        .Rows(
            ("file", notice.File),
            ("stands there", Standing(notice) is { Length: > 0 } standing ? $"{standing}, {BenchAmount.Both(Total(notice), bench.Metric)}" : "nothing yet"),
            ("signal word", notice.Stock.Signal.ToString()),
            ("read from", string.Create(CultureInfo.InvariantCulture, $"{notice.Request.Distance.Meters:0.#} m")),
            ("air", notice.Air is { PeakPpm: var peak, LimitPpm: { } limit } ? string.Create(CultureInfo.InvariantCulture, $"{peak:0} ppm at the most in {notice.Request.Room.CubicMeters:0.#} m³ (limit {limit:0} ppm){(notice.Request.Room.CubicMeters.Equals(NoticeRequest.UsualRoom.CubicMeters) ? "; it fits your own room when you say how large it is" : "")}") : null))
        .NextInWords("print at actual size, hang it at eye height, and print it again when the shelf changes");

    private static Volume Total(WrittenNotice notice) => Volume.FromMilliliters(notice.Stock.Liquids.Sum(l => l.Liquid.Milliliters));

    private static NoticeJson JsonOf(WrittenNotice notice, RuleSet rules, ShopCatalog catalog) => new(
        notice.File,
        notice.Sheet,
        notice.Shelf,
        Count(notice, bottles: false),
        Total(notice).Milliliters,
        notice.Stock.Signal.ToString(),
        notice.Stock.Toxic,
        notice.Request.Distance.Meters,
        notice.Request.Room.CubicMeters,
        notice.Air?.PeakPpm,
        notice.Air?.LimitPpm,
        notice.Air?.LimitUnverified ?? false,
        notice.Air is { } air ? AirWords.Limits(air) : [],
        [.. notice.Stock.PassedOutsideCabinet(rules, catalog).Select(l => l.Id)],
        [.. notice.Stock.Liquids.SelectMany(l => l.Hazards.Unverified).Concat(notice.Air?.Unverified ?? []).Distinct()])
    { Bottles = Count(notice, bottles: true) };

    private static int Count(WrittenNotice notice, bool bottles) => notice.Stock.Liquids.Count(liquid => liquid.IsBottle == bottles);

    private static string Standing(WrittenNotice notice) => CountWords.Several((Count(notice, bottles: false), "jar"), (Count(notice, bottles: true), "bottle"));
}

/// <summary>What <c>notice</c> says to a program.</summary>
internal sealed record NoticeAnswerJson(NoticeJson Notice, IReadOnlyList<Problem> Warnings);

/// <summary>A wall notice that was written.</summary>
internal sealed record NoticeJson(
    string File,
    string Sheet,
    string Shelf,
    int Jars,
    double TotalMilliliters,
    string SignalWord,
    bool Toxic,
    double DistanceMeters,
    double RoomCubicMeters,
    double? PeakPpm,
    double? LimitPpm,
    bool LimitUnverified,
    IReadOnlyList<string> Limits,
    IReadOnlyList<string> LimitsPassed,
    IReadOnlyList<string> Unverified)
{
    /// <summary>How many bottles stand there beside the jars.</summary>
    public int Bottles { get; init; }
}
