namespace JarLabel.Layout.Charts;

/// <summary>How many jars of one kind still dry hard at an age: the curve with its band, the use-by age on it, and under it the tested jars on
/// the same scale. Everything reads in one-bit black.</summary>
public static class LifeChart
{
    /// <summary>So many tested jars are drawn at the most.</summary>
    public const int MostJars = 108;

    private const string Box = "life";
    private const double Width = 180;
    private const double Left = 22, Right = 172, Top = 32, Bottom = 104;
    private const double Small = 8;
    private const double LanesTop = 131;
    private const double NoteLine = 4, BottomMargin = 4;
    private static readonly double[] Shares = [.. Enumerable.Range(1, 99).Select(i => 1 - (i / 100.0)).Prepend(0.999).Append(0.002)];
    private static readonly Strokes Draw = new(Box);

    /// <summary>The chart on a page of its own.</summary>
    /// <param name="life">What is known of the kind.</param>
    /// <param name="stillGood">The share that the use-by is meant for.</param>
    /// <param name="band">The ages of the chart's shares; see <see cref="BandShares"/>.</param>
    /// <param name="jars">Its tested jars, at most <see cref="MostJars"/>.</param>
    /// <param name="text">Its words.</param>
    /// <param name="ruler">Measures text.</param>
    public static Page Of(LifeEstimate life, double stillGood, IReadOnlyList<LifeBandPoint> band, IReadOnlyList<LifeChartJar> jars, LifeChartText text, ITextRuler ruler)
    {
        var (type, lanes) = (new ChartType(ruler), new LifeLanes(jars.Count, LanesTop));
        var scale = new LifeScale((Left, Top, Right, Bottom), Length(life, stillGood, jars));
        var notes = lanes.Bottom + 7;
        return new Page(Width, notes + ((text.Notes.Count - 1) * NoteLine) + BottomMargin,
        [
            .. Headings(text, type),
            .. Band(scale, band),
            .. Axes(scale, stillGood, type),
            .. Curve(scale, life.Curve(stillGood)),
            .. UseBy(scale, life, stillGood, type),
            .. LifeChartKey.Of(Bottom + 14, jars.Any(j => j.Tests.Any(t => t.Dried == Drying.Slow)), type),
            ChartType.At(Box, 4, LanesTop - 4, text.Jars, Face.SemiBold, 9),
            .. lanes.Of(jars, scale, type),
            .. text.Notes.Select((note, i) => ChartType.At(Box, 4, notes + (i * NoteLine), note, Face.Regular, Small)),
        ]);
    }

    /// <summary>The shares whose ages make the band.</summary>
    public static IReadOnlyList<double> BandShares => Shares;

    /// <summary>Until one in ten is left by the estimate, and beyond the last test and the band at the use-by's share.</summary>
    private static double Length(LifeEstimate life, double stillGood, IReadOnlyList<LifeChartJar> jars) =>
        Math.Ceiling(Math.Max(Math.Max(life.Curve(stillGood).AgeWhen(0.1), life.High * 1.1), jars.Select(j => Math.Max(j.LastMonths, j.Life.Expected ? LifeChartJar.MonthsOf(j.Life.Until!.Value) : 0) * 1.08).DefaultIfEmpty().Max()));

    private static IEnumerable<Mark> Headings(LifeChartText text, ChartType type) =>
    [
        type.Within(Box, 4, 8, Width - 8, text.Title, Face.Bold, 13, 11, 9),
        type.Within(Box, 4, 14, Width - 8, text.Answer, Face.SemiBold, 9.5, 9, 8, 7),
        type.Within(Box, 4, 19, Width - 8, text.Basis, Face.Regular, 9, 8, 7),
        ChartType.At(Box, 4, 27, LifeChartText.ExifOrientation, Face.Regular, Small),
        ChartType.At(Box, Left, Bottom + 9, LifeChartText.Across, Face.Regular, Small),
    ];

    private static IEnumerable<Mark> Axes(LifeScale scale, double stillGood, ChartType type)
    {
        yield return Draw.Bar(Left, Top, 0.3, Bottom - Top);
        yield return Draw.Bar(Left, Bottom - 0.3, Right - Left, 0.3);
        foreach (var share in (double[])[0, 0.25, 0.5, 0.75, 1, stillGood])
        {
            var (y, face) = (scale.Y(share), share == stillGood ? Face.Bold : Face.Regular);
            yield return Draw.Bar(Left - 1.5, y - 0.15, 1.5, 0.3);
            if (share < 1 || stillGood < 0.93)
            {
                yield return type.EndingAt(Box, Left - 2.5, y + 1, (100 * share).ToString("0.##", CultureInfo.InvariantCulture) + " %", face, Small);
            }
        }

        foreach (var age in scale.Marks())
        {
            yield return Draw.Bar(scale.X(age) - 0.15, Bottom, 0.3, 1.5);
            yield return type.Centred(Box, scale.X(age), Bottom + 5, age.ToString("0.##", CultureInfo.InvariantCulture), Face.Regular, Small);
        }
    }

    /// <summary>A pale field between two thin lines, so that it is there in one bit too.</summary>
    private static IEnumerable<Mark> Band(LifeScale scale, IReadOnlyList<LifeBandPoint> band)
    {
        var low = scale.Cut([(0, 1), .. band.Select(p => (p.Low, p.StillGood))]);
        var high = scale.Cut([(0, 1), .. band.Select(p => (p.High, p.StillGood))]);
        return [Draw.Polygon(Ink.Pale, [.. low, (high[^1].X, low[^1].Y), .. high.Reverse()]), .. Joined(low, 0.125), .. Joined(high, 0.125)];
    }

    private static IEnumerable<Mark> Curve(LifeScale scale, Weibull curve) => Joined(scale.Cut([(0, 1), .. Shares.Select(s => (curve.AgeWhen(s), s))]), 0.45);

    private static IEnumerable<Mark> Joined((double X, double Y)[] points, double half) =>
        points.Zip(points.Skip(1)).Select(step => Draw.Line(step.First, step.Second, half));

    /// <summary>The share and the age it is chosen at, the band there, and what claims say on the axis.</summary>
    private static IEnumerable<Mark> UseBy(LifeScale scale, LifeEstimate life, double stillGood, ChartType type)
    {
        var (x, y, words) = (scale.X(life.Months), scale.Y(stillGood), string.Create(CultureInfo.InvariantCulture, $"{life.Months:0.0}"));
        return
        [
            .. Dashes(Left, x, y),
            Draw.Bar(x - 0.15, y, 0.3, Bottom - y),
            Draw.Bar(scale.X(life.Low), y - 0.4, scale.X(life.High) - scale.X(life.Low), 0.8),
            Draw.Bar(scale.X(life.Low) - 0.2, y - 1.6, 0.4, 3.2),
            Draw.Bar(scale.X(life.High) - 0.2, y - 1.6, 0.4, 3.2),
            Draw.Diamond(x, y, 2.6, Ink.White),
            Draw.Diamond(x, y, 2.1),
            ChartType.At(Box, x + 1.2, Bottom - 5, words, Face.Bold, 10),
            Draw.Polygon(Ink.White, (scale.X(life.BaseMonths), Bottom - 0.3), (scale.X(life.BaseMonths) - 1.6, Bottom - 3.4), (scale.X(life.BaseMonths) + 1.6, Bottom - 3.4)),
            Draw.Polygon(Ink.Black, (scale.X(life.BaseMonths), Bottom - 0.6), (scale.X(life.BaseMonths) - 1.3, Bottom - 3.2), (scale.X(life.BaseMonths) + 1.3, Bottom - 3.2)),
        ];
    }

    private static IEnumerable<Mark> Dashes(double from, double to, double y)
    {
        for (var x = from; x + 1.2 < to; x += 2)
        {
            yield return Draw.Bar(x, y - 0.125, 1.2, 0.25);
        }
    }
}
