namespace JarLabel.Operations.Changing;

/// <summary>Takes a jar off the shelf for good.</summary>
public static class DiscardJar
{
    /// <summary>The jar that is gone, or why not.</summary>
    public static Result<JarOutcome> Do(Workbench bench, JarNumber number, string? why) =>
        JarChange.Do(bench, number, null, _ => new Discarded(bench.Now, why));
}
