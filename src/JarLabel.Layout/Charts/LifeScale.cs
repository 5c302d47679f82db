namespace JarLabel.Layout.Charts;

/// <summary>Where ages and shares lie on the chart of one kind of jar.</summary>
/// <param name="area">Left, top, right and bottom of the plot, mm.</param>
/// <param name="months">The length of the axis of age.</param>
internal sealed class LifeScale((double Left, double Top, double Right, double Bottom) area, double months)
{
    private const int MostMarks = 13;
    private static readonly double[] Steps = [0.25, 0.5, 1, 2, 3, 6, 12, 24, 48, 120];

    internal double Left => area.Left;

    internal double X(double age) => area.Left + ((area.Right - area.Left) * Math.Clamp(age / months, 0, 1));

    /// <summary>A curve's points up to the right edge, where it is cut.</summary>
    internal (double X, double Y)[] Cut(IEnumerable<(double Age, double Share)> points)
    {
        var cut = new List<(double X, double Y)>();
        foreach (var point in points.Select(p => (X: area.Left + ((area.Right - area.Left) * p.Age / months), Y: Y(p.Share))))
        {
            if (point.X > area.Right)
            {
                var (x, y) = cut[^1];
                cut.Add((area.Right, y + ((point.Y - y) * (area.Right - x) / (point.X - x))));
                break;
            }

            cut.Add(point);
        }

        return [.. cut];
    }

    internal double Y(double share) => area.Bottom - ((area.Bottom - area.Top) * share);

    /// <summary>Ages that get a mark.</summary>
    internal IEnumerable<double> Marks()
    {
        var step = Steps.FirstOrDefault(s => months / s <= MostMarks, Steps[^1] * Math.Ceiling(months / Steps[^1] / MostMarks));
        for (var mark = 0; mark * step <= months * 1.0001; mark++)
        {
            yield return mark * step;
        }
    }
}
