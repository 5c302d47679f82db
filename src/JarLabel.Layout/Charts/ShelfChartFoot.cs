using JarLabel.Core.Labels;
using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Charts;

/// <summary>The foot of the drawing of the shelves: its key, drawn as one jar's line, and its notes.</summary>
internal static class ShelfChartFoot
{
    private const double Margin = 9;
    private const double KeyDown = 14.5, NotesDown = 22.5;

    /// <summary>What it takes under the last jar, mm.</summary>
    internal const double Room = 30;

    private const double Points = 9;
    private const double Between = 6;

    internal static IEnumerable<Mark> Of(ShelfChartText text, double bottom, ChartType type)
    {
        var (marks, x, y) = (new List<Mark>(), Margin, bottom + KeyDown);
        foreach (var (words, width, draw) in Signs(y))
        {
            marks.AddRange(draw(x));
            marks.Add(ChartType.At("key", x + width + 1.5, y + type.HalfCap(Face.Regular, Points), words, Face.Regular, Points));
            x += width + 1.5 + type.Width(words, Face.Regular, Points) + Between;
        }

        return [.. marks, .. text.Notes.Select((note, i) => ChartType.At("notes", Margin, bottom + NotesDown + (4.2 * i), note, Face.Regular, Points))];
    }

    private static IEnumerable<(string Words, double Width, Func<double, IEnumerable<Mark>> Draw)> Signs(double y) =>
    [
        (ShelfChartKey.Mixed, 1.2, x => LifeLine.Begun(x + 0.6, x + 0.6, y)),
        (ShelfChartKey.Dissolving, 6, x => Dots(x, y)),
        (ShelfChartKey.Good, 9, x => LifeLine.Filled(x, x + 9, y)),
        (ShelfChartKey.Test, 9, x => LifeLine.HalfFilled(x, x + 9, y)),
        (ShelfChartKey.UseBy, 4.4, x => LifeLine.UseBy(x + 2.2, y)),
        (ShelfChartKey.Past, 9, x => LifeLine.Hollow(x, x + 9, y)),
        (ShelfChartKey.Passed, 3.6, x => LifeLine.Test(x + 1.8, y, passed: true)),
        (ShelfChartKey.Failed, 3.6, x => LifeLine.Test(x + 1.8, y, passed: false)),
    ];

    private static IEnumerable<Mark> Dots(double x, double y) => Enumerable.Range(0, 5).Select(i => new Strokes("key").Disc(x + 0.6 + (1.2 * i), y, 0.35));
}
