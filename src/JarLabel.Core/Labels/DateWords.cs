namespace JarLabel.Core.Labels;

/// <summary>Dates that nobody can misread: the month in letters and always the year.</summary>
public static class DateWords
{
    /// <summary><c>9 Mar 2026</c>.</summary>
    public static string Of(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary><c>9 Mar 2026, 14:30</c>.</summary>
    public static string Of(DateTime moment) => moment.ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);

    /// <summary><c>≈ 9 Nov 2026</c>: an estimate, and said to be one.</summary>
    public static string Estimate(DateOnly day) => "≈ " + Of(day);
}
