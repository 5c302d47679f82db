using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Changing;

/// <summary>Records how a few drops dried on glass.</summary>
public static class TestJar
{
    /// <summary>The tested jar, or why not.</summary>
    public static Result<BenchOutcome> Do(Workbench bench, JarNumber number, bool passed, int? dryMinutes)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return JarChange.Do(bench, number, null, _ => new Tested(bench.Now, passed, dryMinutes), jar => bench.Dated && bench.Now < jar.MixedAt
            ? BenchProblems.TestBeforeMixing(number, jar.MixedAt, bench.Now)
            : null);
    }
}
