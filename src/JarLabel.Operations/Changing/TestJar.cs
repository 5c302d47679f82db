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
            : null)).Then(outcome => bench.DryRun || outcome.History.Jar.FailedOn is null ? outcome : WithKin(bench, outcome));
    }

    /// <summary>With the jars that hold liquid of the same batch: that is to be known while one stands at the shelf.</summary>
    private static Result<JarOutcome> WithKin(Workbench bench, JarOutcome outcome) => LedgerAccess.Read<JarOutcome>(bench, view =>
    {
        var kin = JarsInDoubt.Of(bench, view, JarDating.Origins(view)).All()
            .SelectMany(jar => jar.Value.FailedKin.Where(failed => failed.Jar == outcome.History.Jar.Number).Select(failed => (Jar: JarNumber.From(jar.Key), Failed: failed))).ToArray();
        return kin.Length == 0 ? outcome : outcome with { Cautions = [.. outcome.Cautions, kin[0].Failed.Caution([.. kin.Select(one => one.Jar).Order()])] };
    });
}
