using JarLabel.Core.Labels;
using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Charts;

/// <summary>The key of the chart of one kind of jar, in one row.</summary>
internal static class LifeChartKey
{
    private const string Box = "key";
    private const double Points = 8;
    private static readonly Strokes Draw = new(Box);

    internal static IEnumerable<Mark> Of(double y, ChartType type)
    {
        var (marks, x) = (new List<Mark>(), 4.0);
        foreach (var (words, width, draw) in Signs(y))
        {
            marks.AddRange(draw(x));
            marks.Add(ChartType.At(Box, x + width + 1.2, y + type.HalfCap(Face.Regular, Points), words, Face.Regular, Points));
            x += width + 4.4 + type.Width(words, Face.Regular, Points);
        }

        return marks;
    }

    private static IEnumerable<(string Words, double Width, Func<double, IEnumerable<Mark>> Draw)> Signs(double y) =>
    [
        (LifeChartText.Curve, 6, x => [Draw.Bar(x, y - 0.45, 6, 0.9)]),
        (LifeChartText.Band, 6, x => [Draw.Bar(x, y - 1.5, 6, 3), Draw.Bar(x + 0.25, y - 1.25, 5.5, 2.5, Ink.Pale)]),
        (LifeChartText.Claims, 2.6, x => [Draw.Polygon(Ink.Black, (x + 1.3, y + 1.3), (x, y - 1.3), (x + 2.6, y - 1.3))]),
        (LifeChartText.Passed, 3, x => LifeLanes.Test(x + 1.5, y, passed: true, 1.5)),
        (LifeChartText.Failed, 3, x => LifeLanes.Test(x + 1.5, y, passed: false, 1.5)),
        (LifeChartText.Between, 6, x => LifeLanes.Ended(x, x + 6, y)),
        (LifeChartText.Still, 6, x => LifeLanes.Lasting(x, y)),
    ];
}
