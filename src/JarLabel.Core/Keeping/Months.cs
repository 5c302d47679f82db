namespace JarLabel.Core.Keeping;

/// <summary>Months that need not be whole: whole ones by the calendar, the rest in days.</summary>
internal static class Months
{
    /// <summary>Days of a month on average, 365.2425 / 12.</summary>
    internal const double AverageDays = 30.436875;

    // What floating-point sums may be off by, far less than a second.
    private const double Least = 1e-9;

    /// <summary>Whole months by the calendar, the rest in days, rounded down. More months are never a sooner day.</summary>
    internal static DateOnly After(DateOnly day, double months)
    {
        var whole = (int)Math.Floor(months + Least);
        var (after, next) = (day.AddMonths(whole).AddDays((int)Math.Floor((Math.Max(0, months - whole) + Least) * AverageDays)), day.AddMonths(whole + 1));
        return after < next ? after : next;
    }

    /// <summary>How many months lie between two moments, 0 where the second is not later; the way back from <see cref="After"/>.</summary>
    internal static double Between(DateTime from, DateTime to)
    {
        if (to <= from)
        {
            return 0;
        }

        var whole = ((to.Year - from.Year) * 12) + to.Month - from.Month;
        whole -= from.AddMonths(whole) > to ? 1 : 0;
        return whole + Math.Min(1, (to - from.AddMonths(whole)).TotalDays / AverageDays);
    }
}
