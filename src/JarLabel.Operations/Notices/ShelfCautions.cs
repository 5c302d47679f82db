namespace JarLabel.Operations.Notices;

/// <summary>The storage limits that a shelf passes as a whole, as cautions: they hold in workplaces, and the local fire code comes first.</summary>
public static class ShelfCautions
{
    /// <summary>No shellac of any cut in any alcohol weighs more than this a litre, so that a small shelf need not be looked at jar by jar.</summary>
    private const double MostKilogramsPerLiter = 1.2;

    /// <summary>For one shelf, or for every shelf when it is null.</summary>
    public static IReadOnlyList<Problem> Of(Workbench bench, LedgerView view, string? shelf)
    {
        var bottles = Bottles(view);
        return
        [
            .. view.ShelfTotals().Select(total => total.Shelf).Union(bottles.Select(bottle => bottle.Shelf))
                .Where(name => shelf is null || name == shelf)
                .Where(name => MayPass(bench, Liquid(view, bottles, name)))
                .SelectMany(name => Of(bench, name, new ShelfStock([.. StockOf(bench, view.ShelfLiquids(name)), .. StockOf(bench, bottles, name)]))),
        ];
    }

    /// <summary>Of the jars listed and the bottles there, those that are too large for what they are made of. A jar is looked at when it holds as much as no glass may.</summary>
    internal static IEnumerable<Problem> OfContainers(Workbench bench, LedgerView view, string? shelf, IEnumerable<JarEntry> jars) => StorageCautions.OfAll(
        bench,
        jars.Where(jar => MayBeTooLarge(bench, jar.Liquid)).Select(jar => JarHistory.Of(JarNumber.From(jar.Number), view.EventsOf(Subject.Jar(jar.Number))).TryGet(out var history, out _) ? history.Jar : null).OfType<Jar>(),
        Bottles(view).Where(bottle => (shelf is null || bottle.Shelf == shelf) && MayBeTooLarge(bench, bottle.Bought)));

    private static bool MayBeTooLarge(Workbench bench, Volume liquid) =>
        bench.Catalog.Storage.Rows.Any(limit => limit.OnlyUnder == bench.Rules && limit.Scope == StorageScope.Container && liquid.Liters > (double)(limit.Liters ?? decimal.MaxValue));

    /// <summary>For a shelf whose stock is known.</summary>
    internal static IEnumerable<Problem> Of(Workbench bench, string shelf, ShelfStock stock) =>
        stock.PassedOutsideCabinet(bench.Rules, bench.Catalog).Select(limit => OperationProblems.ShelfOverLimit(shelf, limit));

    /// <summary>For the shelf that a jar was just put on; the ledger's list does not have it yet.</summary>
    internal static IEnumerable<Problem> With(Workbench bench, LedgerView view, JarOutcome outcome) =>
        With(bench, view, outcome.History.Jar.Shelf, [outcome.History.Jar]);

    /// <summary>For the shelf that several jars were just put on; the ledger's list does not have them yet.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="view">The ledger.</param>
    /// <param name="shelf">The shelf.</param>
    /// <param name="changed">The jars as they are now, in place of what the ledger's list says of them; those that stand elsewhere do not count.</param>
    internal static IEnumerable<Problem> With(Workbench bench, LedgerView view, string shelf, IReadOnlyList<Jar> changed)
    {
        var bottles = Bottles(view);
        Jar[] added = [.. changed.Where(jar => jar.OnShelf && jar.Shelf == shelf)];
        if (!MayPass(bench, added.Aggregate(Liquid(view, bottles, shelf), (sum, jar) => sum + jar.Contents.Liquid)))
        {
            return [];
        }

        var others = view.ShelfLiquids(shelf, changed.Select(jar => jar.Number.Value));
        return Of(bench, shelf, new ShelfStock([.. StockOf(bench, others), .. StockOf(bench, bottles, shelf), .. added.Select(jar => ShelfContents.Liquid(bench, jar))]));
    }

    /// <summary>Damage to a bottle's record is told by whoever asks for the bottle; here what can be read counts.</summary>
    private static IReadOnlyList<Bottle> Bottles(LedgerView view) => SupplyBook.Bottles(view).TryGet(out var bottles, out _) ? bottles : [];

    private static Volume Liquid(LedgerView view, IReadOnlyList<Bottle> bottles, string shelf) => Volume.FromMilliliters(
        (view.ShelfTotals().FirstOrDefault(total => total.Shelf == shelf)?.Liquid.Milliliters ?? 0) + bottles.Where(bottle => bottle.Shelf == shelf).Sum(bottle => bottle.Left.Milliliters));

    private static IEnumerable<StockedLiquid> StockOf(Workbench bench, IEnumerable<Bottle> bottles, string shelf) =>
        bottles.Where(bottle => bottle.Shelf == shelf).Select(bottle => SupplyWords.Liquid(bench, bottle));

    private static bool MayPass(Workbench bench, Volume liquid) => bench.Catalog.Storage.Rows
        .Where(limit => limit.OnlyUnder == bench.Rules && limit.Scope == StorageScope.OutsideCabinet)
        .Any(limit => liquid.Liters > (double)(limit.Liters ?? decimal.MaxValue) || liquid.Liters * MostKilogramsPerLiter > (double)(limit.Kilograms ?? decimal.MaxValue));

    /// <summary>By what the list of jars says; a blend counts as if all of it were the most easily lit of its alcohols.</summary>
    private static IEnumerable<StockedLiquid> StockOf(Workbench bench, IEnumerable<ShelfLiquid> liquids) =>
        liquids.Select(liquid => liquid.Solvents.Select(solvent => Stocked(bench, liquid, bench.Catalog.SolventOf(solvent))).MinBy(stocked => stocked.Hazards.FlammableCategory ?? int.MaxValue)!);

    private static StockedLiquid Stocked(Workbench bench, ShelfLiquid liquid, Solvent solvent)
    {
        var poured = Shellac.PouredIn(liquid.Liquid, liquid.Cut);
        var (flakes, weight) = (liquid.Cut.FlakesFor(poured), poured * solvent.DensityAt(Warmth.Reference));
        var hazards = MixtureClassifier.Classify(JarComposition.Possible([(solvent, weight)], flakes, bench.Catalog), bench.Rules, bench.Catalog);
        return new StockedLiquid(hazards, liquid.Liquid, flakes + weight);
    }
}

/// <summary>What stands on each shelf altogether, jars and bottles, by the shelf's name.</summary>
public static class ShelfTotals
{
    /// <summary>Every shelf that something stands on.</summary>
    public static Result<IReadOnlyList<StandingOnShelf>> Of(LedgerView view)
    {
        return SupplyBook.Bottles(view).Then(bottles =>
        {
            var jars = view.ShelfTotals().ToDictionary(total => total.Shelf, StringComparer.Ordinal);
            return Result<IReadOnlyList<StandingOnShelf>>.Of(
            [
                .. jars.Keys.Union(bottles.Select(bottle => bottle.Shelf), StringComparer.Ordinal).Order(StringComparer.Ordinal).Select(shelf =>
                {
                    var (standing, there) = (jars.GetValueOrDefault(shelf), bottles.Where(bottle => bottle.Shelf == shelf).ToArray());
                    return new StandingOnShelf(
                        shelf, standing?.Jars ?? 0, standing?.Liquid ?? Volume.Zero, there.Length, Volume.FromMilliliters(there.Sum(bottle => bottle.Left.Milliliters)));
                }),
            ]);
        });
    }
}

/// <summary>What stands on one shelf altogether.</summary>
/// <param name="Shelf">The shelf.</param>
/// <param name="Jars">How many jars.</param>
/// <param name="Liquid">Shellac in them.</param>
/// <param name="Bottles">How many bottles of alcohol.</param>
/// <param name="Alcohol">Alcohol in them.</param>
public sealed record StandingOnShelf(string Shelf, int Jars, Volume Liquid, int Bottles, Volume Alcohol);
