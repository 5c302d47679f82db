using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Hazards;
using JarLabel.Core.Keeping;
using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;
using JarLabel.Store;
using JarLabel.Store.Index;
using UnitsNet;

namespace JarLabel.Bench.Notices;

/// <summary>The storage limits that a shelf passes as a whole, as cautions: they hold in workplaces, and the local fire code comes first.</summary>
public static class ShelfCautions
{
    /// <summary>No shellac of any cut in any alcohol weighs more than this a litre, so that a small shelf need not be looked at jar by jar.</summary>
    private const double MostKilogramsPerLiter = 1.2;

    /// <summary>For one shelf, or for every shelf when it is null.</summary>
    public static IReadOnlyList<Problem> Of(Workbench bench, LedgerView view, string? shelf)
    {
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(view);
        return
        [
            .. view.ShelfTotals()
                .Where(total => (shelf is null || total.Shelf == shelf) && MayPass(bench, total.Liquid))
                .SelectMany(total => Of(bench, total.Shelf, new ShelfStock(StockOf(bench, ShelfContents.Entries(view, total.Shelf))))),
        ];
    }

    /// <summary>For a shelf whose stock is known.</summary>
    internal static IEnumerable<Problem> Of(Workbench bench, string shelf, ShelfStock stock) =>
        stock.PassedOutsideCabinet(bench.Rules, bench.Catalog).Select(limit => BenchProblems.ShelfOverLimit(shelf, limit));

    /// <summary>For the shelf that a jar was just put on; the ledger's list does not have it yet.</summary>
    internal static IEnumerable<Problem> With(Workbench bench, LedgerView view, BenchOutcome outcome)
    {
        var jar = outcome.History.Jar;
        var before = view.ShelfTotals().FirstOrDefault(total => total.Shelf == jar.Shelf)?.Liquid ?? Volume.Zero;
        if (!MayPass(bench, before + jar.Contents.Liquid))
        {
            return [];
        }

        var others = ShelfContents.Entries(view, jar.Shelf).Where(entry => entry.Number != jar.Number.Value);
        return Of(bench, jar.Shelf, new ShelfStock([.. StockOf(bench, others), ShelfContents.Liquid(bench, jar)]));
    }

    private static bool MayPass(Workbench bench, Volume liquid) => bench.Catalog.Storage.Rows
        .Where(limit => limit.OnlyUnder == bench.Rules && limit.Scope == StorageScope.OutsideCabinet)
        .Any(limit => liquid.Liters > (double)(limit.Liters ?? decimal.MaxValue) || liquid.Liters * MostKilogramsPerLiter > (double)(limit.Kilograms ?? decimal.MaxValue));

    /// <summary>By what the list of jars says; a blend counts as its largest solvent.</summary>
    private static StockedLiquid[] StockOf(Workbench bench, IEnumerable<JarEntry> entries)
    {
        var known = new Dictionary<(string, PoundCut?), HazardAssessment>();
        return [.. entries.Where(entry => entry.Cut is not null).Select(entry => Liquid(bench, entry, entry.Cut!.Value, known))];
    }

    private static StockedLiquid Liquid(Workbench bench, JarEntry entry, PoundCut cut, Dictionary<(string, PoundCut?), HazardAssessment> known)
    {
        var solvent = bench.Catalog.Solvents.Find(entry.Solvent)!;
        var poured = Shellac.PouredIn(entry.Liquid, cut);
        var (flakes, weight) = (cut.FlakesFor(poured), poured * solvent.DensityAt(Warmth.Reference));
        if (!known.TryGetValue((entry.Solvent, cut), out var hazards))
        {
            known[(entry.Solvent, cut)] = hazards = MixtureClassifier.Classify(
                JarComposition.Possible([(solvent, weight)], flakes, bench.Catalog), bench.Rules, bench.Catalog);
        }

        return new StockedLiquid(hazards, entry.Liquid, flakes + weight);
    }
}
