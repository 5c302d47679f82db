namespace JarLabel.Layout.Charts;

/// <summary>The foot of the drawing of the shelves: its key, drawn as one jar's line, and its notes.</summary>
internal static class ShelfChartFoot
{
    private const double KeyDown = 14.5, NotesDown = 22.5;

    /// <summary>What it takes under the last jar, mm.</summary>
    internal const double Room = 30;

    private const double Points = 9;

    internal static IEnumerable<Mark> Of(ShelfChartText text, double bottom, ChartType type) =>
    [
        .. KeySign.Row(Signs(bottom + KeyDown), ShelfChartPage.Margin, bottom + KeyDown, gap: 1.5, between: 6, Points, type),
        .. text.Notes.Select((note, i) => ChartType.At("notes", ShelfChartPage.Margin, bottom + NotesDown + (4.2 * i), note, Face.Regular, Points)),
    ];

    private static IEnumerable<KeySign> Signs(double y) =>
    [
        new(ShelfChartKey.Mixed, 1.2, x => LifeLine.Begun(x + 0.6, x + 0.6, y)),
        new(ShelfChartKey.Dissolving, 6, x => Dots(x, y)),
        new(ShelfChartKey.Good, 9, x => LifeLine.Filled(x, x + 9, y)),
        new(ShelfChartKey.Test, 9, x => LifeLine.HalfFilled(x, x + 9, y)),
        new(ShelfChartKey.UseBy, 4.4, x => LifeLine.UseBy(x + 2.2, y)),
        new(ShelfChartKey.Past, 9, x => LifeLine.Hollow(x, x + 9, y)),
        new(ShelfChartKey.Passed, 3.6, x => LifeLine.Test(x + 1.8, y, passed: true)),
        new(ShelfChartKey.Failed, 3.6, x => LifeLine.Test(x + 1.8, y, passed: false)),
    ];

    private static IEnumerable<Mark> Dots(double x, double y) => Enumerable.Range(0, 5).Select(i => new Strokes("key").Disc(x + 0.6 + (1.2 * i), y, 0.35));
}
