using JarLabel.Core.Jars;

namespace JarLabel.Core.Labels;

/// <summary>The days of a jar's life, as they are drawn.</summary>
/// <param name="Mixed">When it was mixed.</param>
/// <param name="Ready">When the flakes should be dissolved.</param>
/// <param name="TestFrom">From this day a drop is tried before use.</param>
/// <param name="UseBy">Expected to dry hard until this day.</param>
/// <param name="Tests">Its tests, the oldest first.</param>
public sealed record ShelfChartDays(DateTime Mixed, DateTime Ready, DateOnly TestFrom, DateOnly UseBy, IReadOnlyList<TestResult> Tests)
{
    /// <summary>The day it stopped drying hard as far as is known: the last test, where that failed; else the use-by.</summary>
    public DateOnly Ends => Tests is [.., { Passed: false } last] && last.Day < UseBy ? last.Day : UseBy;
}
