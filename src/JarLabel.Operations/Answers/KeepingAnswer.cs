namespace JarLabel.Operations.Answers;

/// <summary>What <c>keeping</c> says.</summary>
internal static class KeepingAnswer
{
    internal static Answer Of(Workbench bench, LearnedLives lives, IReadOnlyList<LifeClass> kinds, IReadOnlyList<JarNumber> alone, string? drawing)
    {
        Kind[] estimates = [.. kinds.Select(kind => new Kind(lives.Of(kind), [.. Shelves(bench).Select(s => (s, lives.Of(kind, s.Temperature)))]))];
        return Answer.Of(
            Show(bench, estimates, lives.Pace, alone, drawing),
            new KeepingAnswerJson(bench.Settings.Learning.StillGood, [.. estimates.Select(Json)], []) { Aging = AgingJson.Of(lives.Pace), NotCounted = [.. alone.Select(jar => jar.Value)], Drawing = drawing },
            c => c.KeepingAnswerJson);
    }

    /// <summary>Whose tests teach nothing, and why.</summary>
    private static string? Alone(IReadOnlyList<JarNumber> jars) => jars.Count == 0
        ? null
        : $"tests of {(jars.Count == 1 ? "jar" : "jars")} {string.Join(", ", jars.Take(MostNamed))}{(jars.Count > MostNamed ? " and more" : "")}: of several batches or alcohols, after fresh flakes, or of flakes that were going off, a test holds for that jar alone; before it is dissolved it says nothing";

    private const int MostNamed = 12;

    /// <summary>The shop's shelves that are not at 20 °C.</summary>
    private static IEnumerable<Shelf> Shelves(Workbench bench) => bench.Settings.Shelves.Where(s => Math.Abs(s.Temperature.DegreesCelsius - Warmth.Reference.DegreesCelsius) > 1e-6);

    private static LifeEstimateJson Json(Kind kind) => LifeEstimateJson.Of(kind.Estimate) with
    {
        Shelves = [.. kind.Shelves.Select(s => ShelfLifeJson.Of(s.Shelf.Name, s.Shelf.Temperature.DegreesCelsius, s.Estimate))],
    };

    private static Screen Show(Workbench bench, IReadOnlyList<Kind> kinds, AgingEstimate pace, IReadOnlyList<JarNumber> alone, string? drawing)
    {
        var share = bench.Settings.Learning.StillGood.ToString("0.## %", CultureInfo.InvariantCulture);
        var screen = new Screen().Title($"Months at 20 °C after which {share} of jars should still dry hard: estimates");
        if (kinds.Count == 0)
        {
            screen = screen.Gap().Text($"{(alone.Count == 0 ? "No jar was tested yet" : "No test tells of one kind yet")}: every use-by stands on published claims.").Rows(("not counted", Alone(alone)));
            return JarToName.OnShelf(bench, 1) is [var jar] ? screen.Next("test", ("jar", $"{jar.Value}"), ("verdict", "pass")) : screen.Next("shelf");
        }

        screen = OnShelves(Table(screen, kinds, bench.Catalog), kinds, bench.Catalog).Gap().Rows(("10 °C warmer", Pace(pace)), ("not counted", Alone(alone)), ("drawing", drawing));
        return screen.Next("shelf", ("due", "yes"));
    }

    private static Screen Table(Screen screen, IReadOnlyList<Kind> kinds, ShopCatalog catalog) => screen.Gap().Table(
        ["kind", " claims", " learned", " 90 % band", " tests", " jars", " slow", " failed", "other jars"],
        [.. kinds.Select(k => Row(k.Estimate, catalog))]);

    private static Screen OnShelves(Screen screen, IReadOnlyList<Kind> kinds, ShopCatalog catalog) => kinds.All(k => k.Shelves.Count == 0) ? screen : screen.Gap()
        .Text("On the shelves, in months there; no date is set later than 12 months").Gap()
        .Table(["kind", "shelf", " claims", " learned", " 90 % band"], [.. kinds.SelectMany(k => k.Shelves.Select(s => Row(s.Shelf, s.Estimate, catalog)))]);

    private static string Pace(AgingEstimate pace) => string.Create(
        CultureInfo.InvariantCulture,
        $"ages {pace.Q10:0.0} times faster{(pace.Set ? ", as the shop has set" : $", 90 % band {pace.Low:0.0} to {pace.High:0.0}")}");

    private static string[] Row(LifeEstimate e, ShopCatalog catalog) =>
    [
        Name(e.Class, catalog),
        Months(e.BaseMonths),
        Months(e.Months),
        Band(e),
        Count(e.Tests),
        Count(e.Lives.Count),
        Count(e.Lives.Count(l => l.Expected)),
        Count(e.Lives.Count(l => l.Ended)),
        Count(e.Related),
    ];

    private static string[] Row(Shelf shelf, LifeEstimate e, ShopCatalog catalog) =>
        [Name(e.Class, catalog), string.Create(CultureInfo.InvariantCulture, $"{shelf.Name} ({shelf.Temperature.DegreesCelsius:0.#} °C)"), Months(e.BaseMonths), Months(e.Months), Band(e)];

    private static string Name(LifeClass kind, ShopCatalog catalog) => $"{kind.NameIn(catalog)} in {kind.Solvent}";

    private static string Band(LifeEstimate e) => $"{Months(e.Low)} to {Months(e.High)}";

    private static string Months(double months) => months.ToString("0.0", CultureInfo.InvariantCulture);

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>One kind of jar.</summary>
    /// <param name="Estimate">At 20 °C.</param>
    /// <param name="Shelves">On the shelves that are warmer or cooler.</param>
    private sealed record Kind(LifeEstimate Estimate, IReadOnlyList<(Shelf Shelf, LifeEstimate Estimate)> Shelves);
}

/// <summary>How many times faster jars age when they are 10 °C warmer, for a program.</summary>
internal sealed record AgingJson(double TimesPerTenKelvin, double Low, double High, bool Settled)
{
    internal static AgingJson Of(AgingEstimate e) => new(e.Q10, e.Low, e.High, e.Set);
}

/// <summary>What <c>keeping</c> says to a program.</summary>
internal sealed record KeepingAnswerJson(double StillGood, IReadOnlyList<LifeEstimateJson> Kinds, IReadOnlyList<Problem> Warnings)
{
    /// <summary>Jars with a test that counts for no kind: they hold several batches, got fresh flakes, or hold flakes that were going off.</summary>
    public IReadOnlyList<int> NotCounted { get; init; } = [];

    /// <summary>How ageing follows warmth.</summary>
    public AgingJson? Aging { get; init; }

    /// <summary>The drawing that was written, if one was.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Drawing { get; init; }
}

/// <summary>How long one kind of jar keeps, for a program; the likeliest distribution of its tests alone where they have one.</summary>
internal sealed record LifeEstimateJson(
    string Keeping, string Solvent, double ClaimedMonths, double Months, double LowMonths, double HighMonths, int Tests, int Jars, int Failed, int OtherJars, double? FitShape, double? FitScaleDays)
{
    /// <summary>How many of its jars dried hard but slowly when last tested, so that their end is near.</summary>
    public int Slow { get; init; }

    /// <summary>The same on the shop's shelves that are not at 20 °C.</summary>
    public IReadOnlyList<ShelfLifeJson> Shelves { get; init; } = [];

    internal static LifeEstimateJson Of(LifeEstimate e)
    {
        var fit = WeibullFit.Of(e.Lives);
        return new(
            e.Class.Keeping, e.Class.Solvent, e.BaseMonths, e.Months, e.Low, e.High, e.Tests, e.Lives.Count, e.Lives.Count(l => l.Ended), e.Related, fit?.Shape, fit?.Scale)
        {
            Slow = e.Lives.Count(l => l.Expected),
        };
    }
}

/// <summary>How long one kind of jar keeps on a shelf of the shop, for a program. No date is set later than 12 months, whatever is said here.</summary>
internal sealed record ShelfLifeJson(string Shelf, double Celsius, double ClaimedMonths, double Months, double LowMonths, double HighMonths)
{
    internal static ShelfLifeJson Of(string shelf, double celsius, LifeEstimate e) => new(shelf, celsius, e.BaseMonths, e.Months, e.Low, e.High);
}
