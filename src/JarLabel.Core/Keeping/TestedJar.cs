namespace JarLabel.Core.Keeping;

/// <summary>A jar's life, read for what its drying tests say of its class.</summary>
/// <param name="Class">The class.</param>
/// <param name="Tests">The tests that stand, ages in days as at 20 °C by the middle pace of ageing.</param>
public sealed record TestedJar(LifeClass Class, IReadOnlyList<DryingTest> Tests)
{
    private IReadOnlyList<DryingTest>[] AtPaces { get; init; } = [];

    /// <summary>The tests with their ages brought to 20 °C by one of the paces.</summary>
    internal IReadOnlyList<DryingTest> At(int pace) => AtPaces.Length == 0 ? Tests : AtPaces[pace];

    /// <summary>Reads a jar; null when its tests speak for that jar alone: it was poured together or off from others, got fresh flakes, or
    /// holds flakes or solvents of several classes.</summary>
    /// <remarks>Age is counted from the mixing on every shelf it stood on. Old flakes are not counted out: they can only make what is
    /// learned more careful.</remarks>
    /// <param name="life">The jar's life.</param>
    /// <param name="catalog">Grades.</param>
    /// <param name="shelf">How warm a shelf is and was.</param>
    /// <param name="settings">How warmth acts.</param>
    public static TestedJar? Of(JarLife life, ShopCatalog catalog, Func<string, WarmthHistory> shelf, KeepingSettings settings)
    {
        if (life.Standing is not [.., Mixed mixed] || life.Standing.OfType<Thickened>().Any() || ClassOf(life.Jar.Held, catalog) is not { } known)
        {
            return null;
        }

        IReadOnlyList<DryingTest>[] paces = [.. settings.Paces.Select(pace => (DryingTest[])[.. Dated(life, mixed, shelf, pace.Q10)])];
        return new TestedJar(known, paces[settings.MiddlePace]) { AtPaces = paces };
    }

    /// <summary>The one class of a liquid; null where there are several, or its grade is no longer in the catalog.</summary>
    public static LifeClass? ClassOf(Contents contents, ShopCatalog catalog)
    {
        var kinds = contents.Resins.Select(r => catalog.Grades.Find(r.Grade)?.Keeping).Distinct().ToArray();
        return kinds is [{ } kind] && contents.Solvents is [{ } solvent] && catalog.Keeping.Find(kind) is not null ? new LifeClass(kind, solvent.Solvent) : null;
    }

    private static IEnumerable<DryingTest> Dated(JarLife life, Mixed mixed, Func<string, WarmthHistory> shelf, double q10)
    {
        var moves = life.Standing.OfType<Moved>().OrderBy(m => m.At).ToArray();
        return life.Standing.OfType<Tested>().Select(t => new DryingTest(Age(mixed, moves, t.At, shelf, q10), t.HowDried));
    }

    private static double Age(Mixed mixed, IReadOnlyList<Moved> moves, DateTime at, Func<string, WarmthHistory> shelf, double q10)
    {
        var (aged, since, where) = (0.0, mixed.At, mixed.Shelf);
        foreach (var move in moves.TakeWhile(m => m.At < at))
        {
            aged += shelf(where).AgedDays(since, move.At, q10);
            (since, where) = (move.At, move.Shelf);
        }

        return aged + shelf(where).AgedDays(since, at, q10);
    }
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
