namespace JarLabel.Layout.Charts;

/// <summary>Where days lie along a drawing.</summary>
internal sealed class DayScale
{
    // So much of the past and of what is to come is shown at the most; a jar that reaches further runs off with an arrow.
    private const int MostBefore = 400, MostAfter = 400, LeastSpan = 120;
    private const int MostMonthMarks = 14;

    // Room for the last diamond.
    private const double EndRoom = 0.025;

    private readonly double left;
    private readonly double right;
    private readonly DateTime from;
    private readonly DateTime to;

    internal DayScale(double left, double right, DateTime now, IReadOnlyCollection<ShelfChartDays> jars)
    {
        (this.left, this.right) = (left, right);
        var first = jars.Select(j => j.Mixed).Append(now.AddDays(-LeastSpan / 4)).Min();
        var last = jars.Select(j => Day(j.UseBy)).Append(now.AddDays(LeastSpan)).Max();
        from = MonthOf(first < now.AddDays(-MostBefore) ? now.AddDays(-MostBefore) : first);
        var end = last > now.AddDays(MostAfter) ? now.AddDays(MostAfter) : last;
        to = end + ((end - from) * EndRoom);
    }

    internal static DateTime Day(DateOnly day) => day.ToDateTime(TimeOnly.MinValue);

    internal double X(DateTime moment) => left + ((right - left) * Math.Clamp((moment - from) / (to - from), 0, 1));

    internal double X(DateOnly day) => X(Day(day));

    /// <summary>True for what lies before the drawing begins.</summary>
    internal bool IsBefore(DateTime moment) => moment < from;

    /// <summary>True for what lies after its end.</summary>
    internal bool IsAfter(DateTime moment) => moment > to;

    /// <summary>The first days of months that get a line.</summary>
    internal IEnumerable<DateOnly> Months()
    {
        var months = ((to.Year - from.Year) * 12) + to.Month - from.Month + 1;
        var every = months <= MostMonthMarks ? 1 : months <= 2 * MostMonthMarks ? 2 : 3;
        for (var month = from; month <= to; month = month.AddMonths(1))
        {
            if ((month.Month - 1) % every == 0)
            {
                yield return DateOnly.FromDateTime(month);
            }
        }
    }

    private static DateTime MonthOf(DateTime moment) => new(moment.Year, moment.Month, 1);
}
