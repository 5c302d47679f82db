using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Changing;

/// <summary>Takes a jar off the shelf for good.</summary>
public static class DiscardJar
{
    /// <summary>The jar that is gone, or why not.</summary>
    public static Result<BenchOutcome> Do(Workbench bench, JarNumber number, string? why)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return JarChange.Do(bench, number, null, _ => new Discarded(bench.Now, why));
    }
}
