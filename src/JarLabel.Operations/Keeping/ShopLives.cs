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
        return Tested(bench, view, also).Then<LearnedLives>(tested => From(bench, tested));
    }

    /// <summary>What these batches say.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="tested">What <see cref="Tested"/> found.</param>
    public static LearnedLives From(Workbench bench, TestedBatches tested) =>
        new(ByClass(bench, tested.Batches), bench.Catalog.Keeping, bench.Settings.Learning, bench.Keeping);

    /// <summary>Every tested batch whose tests count for its class, with the tests of all jars that were filled from it, and the jars whose tests hold for them
    /// alone.</summary>
    public static Result<TestedBatches> Tested(Workbench bench, LedgerView view, JarNumber? also = null)
    {
        var numbers = view.TestedJars(MostJars).Concat(also is { } one ? [one.Value] : []).Distinct();
        var origins = JarDating.Origins(view);
        var doubts = JarsInDoubt.Of(bench, view, origins);
        return Results.All(numbers.Select(n => JarHistory.Of(JarNumber.From(n), view.EventsOf(Subject.Jar(n))))).Then<TestedBatches>(all =>
        {
            var read = all.Select(history => (History: history, Tested: Read(bench, origins, doubts, history))).ToArray();
            return new TestedBatches(
                [.. read.Where(jar => jar.Tested is not null).GroupBy(jar => (jar.Tested!.Mother, jar.Tested.Class)).Select(batch => (batch.Key.Mother, batch.Select(jar => jar.Tested!).Aggregate((so, more) => so.With(more))))],
                [.. read.Where(jar => jar.History.Life.Standing.Any(happened => happened is Tested) && (jar.Tested is null || IsAlone(jar.History, jar.Tested))).Select(jar => jar.History.Jar.Number).Order()]);
        });
    }

    /// <summary>True when some test of the jar holds for it alone.</summary>
    internal static bool IsAlone(Workbench bench, LedgerView view, JarHistory history)
    {
        var origins = JarDating.Origins(view);
        return IsAlone(history, Read(bench, origins, JarsInDoubt.Of(bench, view, origins), history));
    }

    private static bool IsAlone(JarHistory history, TestedJar? tested) => history.Life.Standing.OfType<Tested>().Count(test => !TestedJar.IsTooEarly(history.Life, test)) > (tested?.Tests.Count ?? 0);

    private static TestedJar? Read(Workbench bench, JarOrigins origins, JarsInDoubt doubts, JarHistory history) =>
        TestedJar.Of(history.Life, origins, bench.Catalog, shelf => ShelfMoves.HistoryOf(bench, shelf), bench.Keeping, doubts.IsFoundBad, Workbench.Slip(bench.Now));

    private static Dictionary<LifeClass, ClassTests> ByClass(Workbench bench, IReadOnlyList<(JarNumber Mother, TestedJar Tested)> batches) => batches
        .Select(batch => batch.Tested)
        .Where(batch => DryingTests.Life(batch.Tests) is not null)
        .GroupBy(batch => batch.Class)
        .ToDictionary(g => g.Key, g => ClassTests.Of([.. g], bench.Keeping));
}

/// <summary>What was tested.</summary>
/// <param name="Batches">By the jar each was mixed in.</param>
/// <param name="Alone">Jars with a test that counts for no batch: they hold several, got fresh flakes, or hold flakes that were going off.</param>
public sealed record TestedBatches(IReadOnlyList<(JarNumber Mother, TestedJar Tested)> Batches, IReadOnlyList<JarNumber> Alone);
