namespace JarLabel.Layout.Charts;

/// <summary>The tested jars of one kind, a lane each, on the scale of the curve above: passed tests, failed ones, and between the two a bar in
/// which the life ended; an arrow where it lasts.</summary>
internal sealed class LifeLanes
{
    private const string Box = "jars";
    private const double WidestPitch = 5, NarrowestPitch = 1.2;
    private const double Room = 120;
    private const double LeastForNumbers = 3;
    private static readonly Strokes Draw = new(Box);

    private readonly double top;
    private readonly double pitch;

    internal LifeLanes(int jars, double top)
    {
        this.top = top;
        pitch = Math.Clamp(Room / Math.Max(1, jars), NarrowestPitch, WidestPitch);
        Bottom = top + (jars * pitch);
    }

    /// <summary>Where the last lane ends, mm.</summary>
    internal double Bottom { get; }

    private double Radius => Math.Min(1.5, pitch * 0.42);

    /// <summary>The lanes, the youngest last test first.</summary>
    internal IEnumerable<Mark> Of(IEnumerable<LifeChartJar> jars, LifeScale scale, ChartType type) =>
        jars.OrderBy(j => j.LastMonths).ThenBy(j => j.Number.Value).SelectMany((jar, i) => Lane(jar, top + ((i + 0.5) * pitch), scale, type));

    private IEnumerable<Mark> Lane(LifeChartJar jar, double y, LifeScale scale, ChartType type)
    {
        if (pitch >= LeastForNumbers)
        {
            yield return type.EndingAt(Box, scale.Left - 2.5, y + type.HalfCap(Face.Regular, 7.5), jar.Number.ToString(), Face.Regular, 7.5);
        }

        var end = scale.X(jar.LastMonths);
        yield return Draw.Bar(scale.Left, y - 0.125, Math.Max(0.1, end - scale.Left), 0.25);
        foreach (var mark in Fate(jar, end, y, scale))
        {
            yield return mark;
        }

        foreach (var mark in jar.Tests.SelectMany(t => Test(scale.X(LifeChartJar.MonthsOf(t.Age)), y, t.Dried, Radius)))
        {
            yield return mark;
        }
    }

    private static IEnumerable<Mark> Fate(LifeChartJar jar, double end, double y, LifeScale scale) => (jar.Life.Until, jar.Life.Expected) switch
    {
        (null, _) => Lasting(end, y),
        ({ } until, true) => Expected(scale.X(LifeChartJar.MonthsOf(jar.Life.After)), scale.X(LifeChartJar.MonthsOf(until)), y),
        ({ } until, _) => Ended(scale.X(LifeChartJar.MonthsOf(jar.Life.After)), scale.X(LifeChartJar.MonthsOf(until)), y),
    };

    /// <summary>Two thin lines in which the end is expected, as drops dried slowly.</summary>
    internal static IEnumerable<Mark> Expected(double from, double to, double y) =>
        [Draw.Bar(from, y - 0.55, Math.Max(0.1, to - from), 0.25), Draw.Bar(from, y + 0.3, Math.Max(0.1, to - from), 0.25)];

    internal static IEnumerable<Mark> Ended(double from, double to, double y) => [Draw.Bar(from, y - 0.4, Math.Max(0.1, to - from), 0.8)];

    internal static IEnumerable<Mark> Lasting(double x, double y) =>
    [
        Draw.Bar(x, y - 0.125, 4.5, 0.25),
        Draw.Polygon(Ink.Black, (x + 6, y), (x + 4.2, y - 0.8), (x + 4.2, y + 0.8)),
    ];

    /// <summary>A ring for a pass, with a dot in it for a slow one, a cross for a failure.</summary>
    internal static IEnumerable<Mark> Test(double x, double y, Drying dried, double radius) => dried switch
    {
        Drying.Soft =>
        [
            Draw.Line((x - radius, y - radius), (x + radius, y + radius), Math.Max(0.13, radius * 0.25)),
            Draw.Line((x - radius, y + radius), (x + radius, y - radius), Math.Max(0.13, radius * 0.25)),
        ],
        Drying.Slow => [.. Ring(x, y, radius), Draw.Disc(x, y, radius * 0.36, Ink.Black)],
        _ => Ring(x, y, radius),
    };

    private static Mark[] Ring(double x, double y, double radius) => [Draw.Disc(x, y, radius, Ink.Black), Draw.Disc(x, y, radius * 0.68, Ink.White)];
}
