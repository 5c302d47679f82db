using JarLabel.Bench.Supplies;
using JarLabel.Core;
using JarLabel.Store;
using UnitsNet;

namespace JarLabel.Bench.Notices;

/// <summary>What stands on each shelf altogether, jars and bottles, by the shelf's name.</summary>
public static class ShelfTotals
{
    /// <summary>Every shelf that something stands on.</summary>
    public static Result<IReadOnlyList<StandingOnShelf>> Of(LedgerView view)
    {
        ArgumentNullException.ThrowIfNull(view);
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
