namespace JarLabel.Operations.Changing;

/// <summary>Takes liquid out of a jar for a job.</summary>
public static class UseJar
{
    /// <summary>The jar with what is left in it, or why not.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="number">The jar.</param>
    /// <param name="amount">How much.</param>
    /// <param name="job">What it goes to.</param>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, TakenText amount, string? job) =>
        JarChange.Do(bench, number, null, jar => jar.Take(amount.Of(jar.Contents.Liquid), "volume").Then<JarEvent>(taken => new Used(bench.Now, taken, job)));
}
