namespace JarLabel.Core.Keeping;

/// <summary>What a jar's drying tests say of its lifetime.</summary>
/// <remarks>The first failure ends the life, some time after the last pass before it. A pass later than a failure, or on the same day,
/// contradicts it and counts for nothing: the careful reading. So a pass can only lengthen what is known, and a failure only shorten it,
/// and the order in which tests were written down does not matter.</remarks>
public static class DryingTests
{
    /// <summary>The jar's lifetime; null when no test says anything. Tests before the mixing say nothing.</summary>
    public static LifeObservation? Life(IEnumerable<DryingTest> tests)
    {
        var known = tests.Where(t => t.Age > 0).ToArray();
        double? ended = known.Where(t => !t.Passed).Select(t => (double?)t.Age).Min();
        var passed = known.Where(t => t.Passed && !(t.Age >= ended)).Select(t => t.Age).DefaultIfEmpty().Max();
        return ended is null && passed == 0 ? null : new LifeObservation(passed, ended);
    }

    /// <summary>True when a pass stands beside an earlier failure.</summary>
    public static bool Contradict(IEnumerable<DryingTest> tests)
    {
        var all = tests.ToArray();
        return all.Any(pass => pass.Passed && all.Any(fail => !fail.Passed && fail.Age <= pass.Age));
    }
}
