namespace JarLabel.Operations.Changing;

/// <summary>Records how a few drops dried on glass.</summary>
public static class TestJar
{
    /// <summary>The longest drying that is taken for one: a day.</summary>
    public const int LongestMinutes = 1440;

    /// <summary>The tested jar, or why not, where only is known whether the drops dried hard.</summary>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, bool passed, int? dryMinutes) =>
        Do(bench, number, passed ? Drying.Hard : Drying.Soft, dryMinutes, new DropReadings());

    /// <summary>The tested jar, or why not.</summary>
    /// <param name="bench">The shop at this moment.</param>
    /// <param name="number">The jar.</param>
    /// <param name="dried">How the drops dried.</param>
    /// <param name="dryMinutes">How long that took, where somebody looked at the clock.</param>
    /// <param name="readings">What else was read.</param>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, Drying dried, int? dryMinutes, DropReadings readings)
    {
        return readings.Test(bench.Now, dried, dryMinutes).Then(test => JarChange.Do(bench, number, null, _ => test with { At = bench.Now }, jar => bench.Dated && bench.Now < jar.MixedAt
            ? OperationProblems.TestBeforeMixing(number, jar.MixedAt, bench.Now)
            : null));
    }
}
