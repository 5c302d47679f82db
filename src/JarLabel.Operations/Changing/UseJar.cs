namespace JarLabel.Operations.Changing;

/// <summary>Takes liquid out of a jar for a job.</summary>
public static class UseJar
{
    /// <summary>The jar with what is left in it, or why not.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="number">The jar.</param>
    /// <param name="amount">How much; null for all.</param>
    /// <param name="job">What it goes to.</param>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, Volume? amount, string? job) =>
        JarChange.Do(bench, number, null, jar => jar.Take(amount, "volume").Then<JarEvent>(taken => new Used(bench.Now, taken, job)));
}
