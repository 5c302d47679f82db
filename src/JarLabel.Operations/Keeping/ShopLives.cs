namespace JarLabel.Operations.Keeping;

/// <summary>Reads what the shop's drying tests say of how long its jars keep. Only tested jars are read.</summary>
public static class ShopLives
{
    /// <summary>So many jars are read, those tested last: what a shop did long ago says little of the flakes of today.</summary>
    public const int MostJars = 500;

    /// <summary>What all tests together say.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="view">The ledger.</param>
    /// <param name="also">A jar that was tested in the step at work.</param>
    public static Result<LearnedLives> Of(Workbench bench, LedgerView view, JarNumber? also = null)
    {
        return Tested(bench, view, also).Then<LearnedLives>(jars => From(bench, jars));
    }

    /// <summary>What these jars say.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="jars">What <see cref="Tested"/> found.</param>
    public static LearnedLives From(Workbench bench, IReadOnlyList<(JarHistory History, TestedJar Tested)> jars) =>
        new(ByClass(bench, jars), bench.Catalog.Keeping, bench.Settings.Learning, bench.Keeping);

    /// <summary>Every tested jar whose tests count for its class.</summary>
    public static Result<IReadOnlyList<(JarHistory History, TestedJar Tested)>> Tested(Workbench bench, LedgerView view, JarNumber? also = null)
    {
        var numbers = view.TestedJars(MostJars).Concat(also is { } one ? [one.Value] : []).Distinct();
        return Results.All(numbers.Select(n => JarHistory.Of(JarNumber.From(n), view.EventsOf(Subject.Jar(n)))))
            .Then(all => Result<IReadOnlyList<(JarHistory, TestedJar)>>.Of(
                [.. all.Select(h => (h, Read(bench, h))).Where(t => t.Item2 is { Tests.Count: > 0 }).Select(t => (t.h, t.Item2!))]));
    }

    /// <summary>A jar's tests, as far as they count for its class.</summary>
    internal static TestedJar? Read(Workbench bench, JarHistory history) =>
        TestedJar.Of(history.Life, bench.Catalog, shelf => ShelfMoves.HistoryOf(bench, shelf), bench.Keeping);

    private static Dictionary<LifeClass, ClassTests> ByClass(Workbench bench, IReadOnlyList<(JarHistory History, TestedJar Tested)> jars) => jars
        .Select(j => j.Tested)
        .Where(j => DryingTests.Life(j.Tests) is not null)
        .GroupBy(j => j.Class)
        .ToDictionary(g => g.Key, g => ClassTests.Of([.. g], bench.Keeping));
}
