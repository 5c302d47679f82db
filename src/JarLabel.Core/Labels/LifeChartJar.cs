namespace JarLabel.Core.Labels;

/// <summary>A tested jar on the chart of its kind.</summary>
/// <param name="Number">The jar.</param>
/// <param name="Tests">Its tests, the earliest first.</param>
/// <param name="Life">What they say of its lifetime, days as at 20 °C.</param>
public sealed record LifeChartJar(JarNumber Number, IReadOnlyList<DryingTest> Tests, LifeObservation Life)
{
    /// <summary>The age of its last test, in months as at 20 °C.</summary>
    public double LastMonths => MonthsOf(Tests.Max(t => t.Age));

    /// <summary>Days in months.</summary>
    public static double MonthsOf(double days) => days / Months.AverageDays;

    /// <summary>The jar, unless its tests say nothing.</summary>
    public static LifeChartJar? Of(JarNumber number, IEnumerable<DryingTest> tests)
    {
        DryingTest[] known = [.. tests.Where(t => t.Age > 0).OrderBy(t => t.Age)];
        return DryingTests.Life(known) is { } life ? new(number, known, life) : null;
    }
}
