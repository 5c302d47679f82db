using JarLabel.Bench.Recording;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Keeping;

/// <summary>What to say of a drying test that stands against another one.</summary>
internal static class TestCautions
{
    internal static IReadOnlyList<Problem> Of(JarHistory history, JarEvent happened) =>
        happened is Tested { Passed: true } pass && history.Life.Standing.OfType<Tested>().Any(t => !t.Passed && t.At.Date <= pass.At.Date)
            ? [BenchProblems.PassAfterFailure(history.Jar.Number)]
            : [];
}
