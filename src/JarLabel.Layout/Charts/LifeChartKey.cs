namespace JarLabel.Layout.Charts;

/// <summary>The key of the chart of one kind of jar, in one row.</summary>
internal static class LifeChartKey
{
    private const double Points = 8, SlowBelow = 3.9;
    private static readonly Strokes Draw = new("key");

    /// <param name="y">Its middle, mm.</param>
    /// <param name="slow">True when a test of a shown jar dried slowly: only then are its signs explained, in a row below.</param>
    /// <param name="type">The type.</param>
    internal static IEnumerable<Mark> Of(double y, bool slow, ChartType type) =>
        [.. KeySign.Row(Signs(y), 4, y, gap: 1.2, between: 3.2, Points, type), .. slow ? KeySign.Row(SlowSigns(y + SlowBelow), 4, y + SlowBelow, gap: 1.2, between: 3.2, Points, type) : []];

    private static IEnumerable<KeySign> SlowSigns(double y) =>
    [
        new(LifeChartText.Slow, 3, x => LifeLanes.Test(x + 1.5, y, Drying.Slow, 1.5)),
        new(LifeChartText.Expected, 6, x => LifeLanes.Expected(x, x + 6, y)),
    ];

    private static IEnumerable<KeySign> Signs(double y) =>
    [
        new(LifeChartText.Curve, 6, x => [Draw.Bar(x, y - 0.45, 6, 0.9)]),
        new(LifeChartText.Band, 6, x => [Draw.Bar(x, y - 1.5, 6, 3), Draw.Bar(x + 0.25, y - 1.25, 5.5, 2.5, Ink.Pale)]),
        new(LifeChartText.Claims, 2.6, x => [Draw.Polygon(Ink.Black, (x + 1.3, y + 1.3), (x, y - 1.3), (x + 2.6, y - 1.3))]),
        new(LifeChartText.Passed, 3, x => LifeLanes.Test(x + 1.5, y, Drying.Hard, 1.5)),
        new(LifeChartText.Failed, 3, x => LifeLanes.Test(x + 1.5, y, Drying.Soft, 1.5)),
        new(LifeChartText.Between, 6, x => LifeLanes.Ended(x, x + 6, y)),
        new(LifeChartText.Still, 6, x => LifeLanes.Lasting(x, y)),
    ];
}
