namespace JarLabel.Core.Keeping;

/// <summary>Estimates when a fresh batch is ready and how long it will dry hard.</summary>
public static class KeepingEstimate
{
    /// <summary>No published claim for dissolved shellac is longer, so no estimate is, however cool the shelf.</summary>
    public const double LongestMonths = 12;

    /// <summary>Ready, test-from and use-by of a batch.</summary>
    /// <param name="mixed">The moment of mixing.</param>
    /// <param name="kind">The grade's keeping class.</param>
    /// <param name="form">Flakes, buttons, seed or ground.</param>
    /// <param name="bench">Where it dissolves.</param>
    /// <param name="shelf">Where it is kept.</param>
    /// <param name="flakeDate">The flakes' own date, where known.</param>
    /// <param name="settings">The shop's settings.</param>
    /// <param name="learned">The months on that shelf that the shop's tests say; null for those of published claims.</param>
    /// <param name="cloudy">True when a pinch of the flakes dissolved cloudy.</param>
    public static KeepingDates Of(
        DateTime mixed,
        KeepingClass kind,
        LacForm form,
        Temperature bench,
        Temperature shelf,
        DateOnly? flakeDate,
        KeepingSettings settings,
        double? learned = null,
        bool cloudy = false)
    {
        var left = FlakeAge.LifeLeft(flakeDate, DateOnly.FromDateTime(mixed), kind, cloudy);
        var life = new LifeSpent(mixed, [(mixed, shelf)], warmth => learned ?? OfClaims(kind, warmth, settings), left);
        return new KeepingDates(Ready(mixed, form, bench, settings), life.TestFrom, life.UseBy);
    }

    /// <summary>The months in some warmth that published claims say.</summary>
    public static double OfClaims(KeepingClass kind, Temperature warmth, KeepingSettings settings) => (double)kind.MonthsAt20C * Warmth.Keeping(warmth, settings);

    /// <summary>When the shellac should be dissolved, to the next quarter of an hour.</summary>
    public static DateTime Ready(DateTime mixed, LacForm form, Temperature bench, KeepingSettings settings)
    {
        var quarters = Math.Ceiling((double)form.HoursAt20C * Warmth.Stretch(bench, settings.DissolvingQ10) * 4 - 1e-9);
        return mixed.AddMinutes(15 * quarters);
    }
}
