using UnitsNet;

namespace JarLabel.Core.Keeping;

/// <summary>How warm a place is, and was before.</summary>
/// <param name="Now">How warm it is.</param>
/// <param name="Earlier">How warm it was until the beginning of a day, the oldest first.</param>
public sealed record WarmthHistory(Temperature Now, IReadOnlyList<EarlierWarmth> Earlier)
{
    /// <summary>How warm it was on a day.</summary>
    public Temperature On(DateOnly day) => Earlier.Where(e => day < e.Until).Select(e => (Temperature?)e.Temperature).FirstOrDefault() ?? Now;

    /// <summary>How many days at 20 °C a stay there was worth.</summary>
    public double AgedDays(DateTime from, DateTime to, KeepingSettings settings)
    {
        var aged = 0.0;
        foreach (var change in Earlier.Where(e => e.Until.ToDateTime(TimeOnly.MinValue) > from))
        {
            var end = change.Until.ToDateTime(TimeOnly.MinValue) < to ? change.Until.ToDateTime(TimeOnly.MinValue) : to;
            aged += Days(from, end) / Warmth.Stretch(change.Temperature, settings);
            from = end > from ? end : from;
        }

        return aged + (Days(from, to) / Warmth.Stretch(Now, settings));
    }

    private static double Days(DateTime from, DateTime to) => Math.Max(0, (to - from).TotalDays);
}
