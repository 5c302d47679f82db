namespace JarLabel.Core.Keeping;

/// <summary>A batch, read for what the drying tests of the jars that hold it say of its class.</summary>
/// <param name="Class">The class.</param>
/// <param name="Mother">The jar it was mixed in.</param>
/// <param name="Tests">The tests that stand, ages in days as at 20 °C by the middle pace of ageing.</param>
public sealed record TestedJar(LifeClass Class, JarNumber Mother, IReadOnlyList<DryingTest> Tests)
{
    private IReadOnlyList<DryingTest>[] AtPaces { get; init; } = [];

    /// <summary>The tests with their ages brought to 20 °C by one of the paces.</summary>
    internal IReadOnlyList<DryingTest> At(int pace) => AtPaces.Length == 0 ? Tests : AtPaces[pace];

    /// <summary>The same batch with the tests of one jar more that was filled from it: what was poured off is as old as what it came from.</summary>
    public TestedJar With(TestedJar other) => this with
    {
        Tests = [.. Tests, .. other.Tests],
        AtPaces = [.. Enumerable.Range(0, Math.Max(AtPaces.Length, other.AtPaces.Length)).Select(pace => (IReadOnlyList<DryingTest>)[.. At(pace), .. other.At(pace)])],
    };

    /// <summary>Reads a jar's own tests. They count for the one batch that is in it, which may have been mixed in another jar that it was poured from; null where
    /// none does. A test says nothing of a class once fresh flakes were added or several batches poured together, for nobody knows which of them it
    /// speaks of.</summary>
    /// <remarks>Age is counted from the mixing on every shelf it stood on. Old flakes are not counted out: they can only make what is
    /// learned more careful. Flakes that were going off are: their jars are given half the life of others, so that what they teach would be taken off twice.</remarks>
    /// <param name="life">The jar's life.</param>
    /// <param name="origins">Where what is in it comes from.</param>
    /// <param name="catalog">Grades.</param>
    /// <param name="shelf">How warm a shelf is and was.</param>
    /// <param name="settings">How warmth acts.</param>
    /// <param name="bad">Tells whether a batch is of flakes that were found to be going off.</param>
    /// <param name="until">Tests that are dated later must be slips and count for nothing.</param>
    public static TestedJar? Of(JarLife life, JarOrigins origins, ShopCatalog catalog, Func<string, WarmthHistory> shelf, KeepingSettings settings, Func<KeptBatch, bool> bad, DateTime? until = null)
    {
        JarEvent[] plain = [.. life.Standing.Reverse().TakeWhile(e => e is not Thickened)];
        Tested[] tests = [.. plain.OfType<Tested>().Where(test => !IsTooEarly(life, test) && !(test.At > until))];
        if (tests.Length == 0 || origins.Of(life.Jar.Number, plain) is not [var batch] || batch.Flakes.Cloudy || bad(batch) || ClassOf(batch.Flakes, life.Jar.Held, catalog) is not { } known)
        {
            return null;
        }

        IReadOnlyList<DryingTest>[] paces = [.. settings.Paces.Select(pace => (DryingTest[])[.. tests.Select(t => new DryingTest(batch.Age(t.At, shelf, pace.Q10), t.HowDried))])];
        return new TestedJar(known, batch.Mother, paces[settings.MiddlePace]) { AtPaces = paces };
    }

    /// <summary>True for a test from before the flakes should be dissolved: it says nothing of how long the jar keeps.</summary>
    public static bool IsTooEarly(JarLife life, Tested test) => life.Standing is [.., IBeginning begun] && test.At < begun.Dates.Ready;

    /// <summary>The class of these flakes in the one alcohol there is; null where there are several, or the grade is no longer in the catalog.</summary>
    private static LifeClass? ClassOf(ResinPart flakes, Contents contents, ShopCatalog catalog) =>
        catalog.Grades.Find(flakes.Grade)?.Keeping is { } kind && contents.Solvents is [{ } solvent] && catalog.Keeping.Find(kind) is not null ? new LifeClass(kind, solvent.Solvent) : null;
}

/// <summary>One drying test of a jar.</summary>
/// <param name="Age">The jar's age then, in days as at 20 °C.</param>
/// <param name="Dried">How the drops dried.</param>
public readonly record struct DryingTest(double Age, Drying Dried)
{
    /// <summary>A test of which only is known whether the drops dried hard.</summary>
    public DryingTest(double age, bool passed)
        : this(age, passed ? Drying.Hard : Drying.Soft)
    {
    }

    /// <summary>True when the drops dried hard.</summary>
    public bool Passed => Dried != Drying.Soft;
}
