using JarLabel.Core.Jars;

namespace JarLabel.Store.Index;

/// <summary>What the list of jars shows of a jar, as its events add up. Only an index: it can be rebuilt from the events.</summary>
/// <param name="Number">The jar's number.</param>
/// <param name="Revision">How often its contents changed.</param>
/// <param name="Shelf">The shelf it stands on.</param>
/// <param name="Flakes">The ids of its grades, the largest first, as <see cref="Joined"/> writes them.</param>
/// <param name="Alcohol">The ids of its solvents, likewise.</param>
/// <param name="Cut">The cut now; null when the jar is empty.</param>
/// <param name="Liquid">What is in the jar now, stored in millilitres.</param>
/// <param name="Mixed">The day it was first mixed.</param>
/// <param name="Ready">From when the flakes are dissolved.</param>
/// <param name="TestFrom">From this day on it is to be tested before use.</param>
/// <param name="UseBy">The estimated last day of use.</param>
/// <param name="Test">The latest test, when there was one.</param>
/// <param name="OnShelf">False once the jar is discarded or used up.</param>
public sealed record JarEntry(
    int Number,
    int Revision,
    string Shelf,
    string Flakes,
    string Alcohol,
    PoundCut? Cut,
    Volume Liquid,
    DateOnly Mixed,
    DateTime Ready,
    DateOnly TestFrom,
    DateOnly UseBy,
    TestResult? Test,
    bool OnShelf)
{
    private const string And = " + ";

    /// <summary>Several ids as one text.</summary>
    public static string Joined(IEnumerable<string> ids) => string.Join(And, ids.Distinct());

    /// <summary>Each of several ids.</summary>
    internal static IReadOnlyList<string> Each(string joined) => joined.Split(And);

    /// <summary>The ids of its grades, the largest first.</summary>
    public IReadOnlyList<string> Grades => Each(Flakes);

    /// <summary>The ids of its solvents, the largest first.</summary>
    public IReadOnlyList<string> Solvents => Each(Alcohol);

    /// <summary>The day its latest test failed; null where there was none, or it passed.</summary>
    public DateOnly? FailedOn => Test is { Passed: false } failed ? failed.Day : null;

    /// <summary>True when both say the same, whatever unit their liquid was worked out in.</summary>
    internal bool Shows(JarEntry other) => Plain(this) == Plain(other);

    private static JarEntry Plain(JarEntry jar) => jar with { Liquid = Volume.FromMilliliters(jar.Liquid.Milliliters) };
}
