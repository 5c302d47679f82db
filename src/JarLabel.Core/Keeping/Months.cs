namespace JarLabel.Core.Keeping;

/// <summary>Adds months that need not be whole.</summary>
internal static class Months
{
    /// <summary>Days of a month on average, 365.2425 / 12.</summary>
    internal const double AverageDays = 30.436875;

    /// <summary>Whole months by the calendar, the rest in days, rounded down.</summary>
    internal static DateOnly After(DateOnly day, double months)
    {
        var whole = (int)Math.Floor(months + 1e-9);
        return day.AddMonths(whole).AddDays((int)Math.Floor(Math.Max(0, months - whole) * AverageDays));
    }
}
