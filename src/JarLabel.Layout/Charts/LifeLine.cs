namespace JarLabel.Layout.Charts;

/// <summary>One jar's life as a line: a stroke where it was mixed, dots until it is ready, filled while it is good, half-filled while it is to
/// be tested, a diamond at the use-by, hollow from then until today; its tests upon it.</summary>
/// <param name="scale">Where days lie.</param>
/// <param name="now">The moment it shows.</param>
internal sealed class LifeLine(DayScale scale, DateTime now)
{
    private const string Box = "life";
    private const double Half = 1.7;
    private const double Outline = 0.3;
    private const double TestRadius = 1.75;
    private static readonly Strokes Draw = new(Box);

    /// <summary>The line at a height.</summary>
    internal IEnumerable<Mark> Of(ShelfChartDays days, double y)
    {
        var (mixed, ready, ends) = (scale.X(days.Mixed), scale.X(days.Ready), scale.X(days.Ends));
        var testFrom = Math.Clamp(scale.X(days.TestFrom), Math.Min(ready, ends), ends);
        return
        [
            .. DayScale.Day(days.Ends) < now ? Hollow(ends, days.Failed ? scale.X(now) : Math.Max(scale.X(now), scale.X(days.UseBy)), y) : [],
            .. Filled(Math.Min(ready, ends), testFrom, y),
            .. HalfFilled(testFrom, ends, y),
            .. scale.IsBefore(days.Mixed) ? FromBefore(mixed, y) : Begun(mixed, Math.Min(ready, ends), y),
            .. End(days, y),
            .. days.Tests.Where(t => !scale.IsBefore(DayScale.Day(t.Day))).SelectMany(t => Test(scale.X(t.Day), y, t.Passed)),
        ];
    }

    /// <summary>The dots until it is ready, and the stroke where it was mixed.</summary>
    internal static IEnumerable<Mark> Begun(double mixed, double ready, double y)
    {
        for (var x = mixed + 1.1; x < ready - 0.3; x += 1.1)
        {
            yield return Draw.Disc(x, y, 0.35);
        }

        yield return Draw.Bar(mixed - 0.3, y - Half - 0.8, 0.6, 2 * (Half + 0.8));
    }

    internal static IEnumerable<Mark> Filled(double from, double to, double y) => to - from > 0.01 ? [Draw.Bar(from, y - Half, to - from, 2 * Half, Ink.Green)] : [];

    internal static IEnumerable<Mark> HalfFilled(double from, double to, double y) => to - from < 2 * Outline ? [] :
    [
        Draw.Bar(from, y - Half, to - from, 2 * Half),
        Draw.Bar(from + Outline, y - Half + Outline, to - from - (2 * Outline), Half - Outline, Ink.Orange),
    ];

    internal static IEnumerable<Mark> Hollow(double from, double to, double y) => to - from < 2 * Outline ? [] :
    [
        Draw.Bar(from, y - Half, to - from, 2 * Half),
        Draw.Bar(from + Outline, y - Half + Outline, to - from - (2 * Outline), (2 * Half) - (2 * Outline), Ink.White),
    ];

    internal static IEnumerable<Mark> UseBy(double x, double y) => [Draw.Diamond(x, y, 2.6, Ink.White), Draw.Diamond(x, y, 2.2)];

    internal static IEnumerable<Mark> Test(double x, double y, bool passed) => passed
        ? [Draw.Disc(x, y, TestRadius), Draw.Disc(x, y, TestRadius - 0.3, Ink.White), Draw.Line((x - 0.85, y + 0.05), (x - 0.25, y + 0.7), 0.2), Draw.Line((x - 0.25, y + 0.7), (x + 0.9, y - 0.75), 0.2)]
        : [Draw.Disc(x, y, TestRadius + 0.25, Ink.White), Draw.Disc(x, y, TestRadius), Draw.Line((x - 0.75, y - 0.75), (x + 0.75, y + 0.75), 0.25, Ink.White), Draw.Line((x - 0.75, y + 0.75), (x + 0.75, y - 0.75), 0.25, Ink.White)];

    /// <summary>An arrow to what lies before the drawing.</summary>
    private static IEnumerable<Mark> FromBefore(double x, double y) => [Draw.Polygon(Ink.Black, (x, y), (x + 2.2, y - Half - 0.6), (x + 2.2, y + Half + 0.6))];

    private IEnumerable<Mark> End(ShelfChartDays days, double y) => days.Failed || scale.IsBefore(DayScale.Day(days.UseBy)) ? []
        : scale.IsAfter(DayScale.Day(days.UseBy)) ? [Draw.Polygon(Ink.Black, (scale.X(days.UseBy), y), (scale.X(days.UseBy) - 2.2, y - Half - 0.6), (scale.X(days.UseBy) - 2.2, y + Half + 0.6))]
        : UseBy(scale.X(days.UseBy), y);
}
