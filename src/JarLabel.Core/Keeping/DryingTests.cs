namespace JarLabel.Core.Keeping;

/// <summary>What a jar's drying tests say of its lifetime.</summary>
/// <remarks>The first failure ends the life, some time after the last pass before it. A pass later than a failure, or on the same day,
/// contradicts it and counts for nothing: the careful reading.
/// <para>Drops dry slower as the jar nears its end. When that begins is not known; it is taken to be somewhere between half and nine tenths of the life, a judgement.
/// So drops that dry hard but slowly say that at least half of the life is over: it ends by twice that age. And drops that dry as fast as fresh ones say that
/// nine tenths are not over yet. Such a bound gives way to whatever a jar really did.</para>
/// <para>So a plain pass can only lengthen what is known, one like fresh lengthens it a little more, a slow one stands between pass and failure, a failure can only
/// shorten it, and the order in which tests were written down does not matter.</para></remarks>
public static class DryingTests
{
    /// <summary>Drops begin to dry slowly when this part of the life is over at the earliest,</summary>
    public const double SlowFrom = 0.5;

    /// <summary>and this part at the latest. Judgements.</summary>
    public const double SlowBy = 0.9;

    /// <summary>The jar's lifetime; null when no test says anything. Tests before the mixing say nothing.</summary>
    public static LifeObservation? Life(IEnumerable<DryingTest> tests)
    {
        var known = tests.Where(t => t.Age > 0).ToArray();
        double? ended = known.Where(t => !t.Passed).Select(t => (double?)t.Age).Min();
        DryingTest[] passes = [.. known.Where(t => t.Passed && !(t.Age >= ended))];
        var passed = passes.Select(t => t.Age).DefaultIfEmpty().Max();
        double? expected = passes.Where(t => t.Dried == Drying.Slow && t.Age / SlowFrom > passed).Select(t => (double?)(t.Age / SlowFrom)).Min();
        var until = ended < expected || expected is null ? ended : expected;
        var after = passes.Where(t => t.Dried == Drying.Fresh && !(t.Age / SlowBy >= until)).Select(t => t.Age / SlowBy).Append(passed).Max();
        return until is null && after == 0 ? null : new LifeObservation(after, until) { Expected = ended is null && until is not null };
    }

    /// <summary>True when a pass stands beside an earlier failure.</summary>
    public static bool Contradict(IEnumerable<DryingTest> tests)
    {
        var all = tests.ToArray();
        return all.Any(pass => pass.Passed && all.Any(fail => !fail.Passed && fail.Age <= pass.Age));
    }
}
