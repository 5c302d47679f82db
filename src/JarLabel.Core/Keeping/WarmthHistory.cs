namespace JarLabel.Core.Keeping;

/// <summary>How warm a place is, and was before.</summary>
/// <param name="Now">How warm it is.</param>
/// <param name="Earlier">How warm it was until the beginning of a day, the oldest first.</param>
public sealed record WarmthHistory(Temperature Now, IReadOnlyList<EarlierWarmth> Earlier)
{
    /// <summary>How warm it was on a day.</summary>
    public Temperature On(DateOnly day) => Earlier.Where(e => day < e.Until).Select(e => (Temperature?)e.Temperature).FirstOrDefault() ?? Now;

    /// <summary>How warm it was from a moment on, and from each moment on at which that changed.</summary>
    public IEnumerable<(DateTime From, Temperature Warmth)> Since(DateTime from) =>
    [
        (from, On(DateOnly.FromDateTime(from))),
        .. Earlier.Select(e => (From: e.Until.ToDateTime(TimeOnly.MinValue), Warmth: On(e.Until))).Where(e => e.From > from),
    ];

    /// <summary>How many days at 20 °C a stay there was worth.</summary>
    /// <param name="from">Its beginning.</param>
    /// <param name="to">Its end.</param>
    /// <param name="q10">How many times faster jars age when it is 10 °C warmer.</param>
    public double AgedDays(DateTime from, DateTime to, double q10)
    {
        var aged = 0.0;
        foreach (var change in Earlier.Where(e => e.Until.ToDateTime(TimeOnly.MinValue) > from))
        {
            var end = change.Until.ToDateTime(TimeOnly.MinValue) < to ? change.Until.ToDateTime(TimeOnly.MinValue) : to;
            aged += Days(from, end) / Warmth.Stretch(change.Temperature, q10);
            from = end > from ? end : from;
        }

        return aged + (Days(from, to) / Warmth.Stretch(Now, q10));
    }

    private static double Days(DateTime from, DateTime to) => Math.Max(0, (to - from).TotalDays);
}

/// <summary>How warm a place was before it was made warmer or cooler.</summary>
/// <param name="Until">The first day on which it was so no longer.</param>
/// <param name="Temperature">How warm it was.</param>
public sealed record EarlierWarmth(DateOnly Until, Temperature Temperature);
