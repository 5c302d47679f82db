using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Keeping;
using JarLabel.Store;
using JarLabel.Store.Index;

namespace JarLabel.Bench.Keeping;

/// <summary>Jars of the shelves as listed, soonest use-by on record first.</summary>
/// <param name="Jars">The jars.</param>
/// <param name="Moved">By number, the dates that the shop's drying tests say now where those on record are clearly others.</param>
public sealed record ShelfList(IReadOnlyList<JarEntry> Jars, IReadOnlyDictionary<int, KeepingDates> Moved)
{
    /// <summary>Lists jars.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="view">The ledger.</param>
    /// <param name="query">Which jars, and how many at most.</param>
    /// <param name="due">Only those that on this day are to be tested or past their use-by, by the more careful dates; null for all.</param>
    public static Result<ShelfList> Of(Workbench bench, LedgerView view, ShelfQuery query, DateOnly? due)
    {
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(query);
        var all = view.Shelf(query);
        return ShelfDates.Of(bench, view, all).Then<ShelfList>(moved => due is not { } day
            ? new ShelfList(all, moved)
            : new ShelfList(Due(view.Shelf(query with { Due = day }), all, moved, bench.Now), moved));
    }

    /// <summary>The dates that the tests say now; null where they are those on record.</summary>
    public KeepingDates? Learned(JarEntry jar)
    {
        ArgumentNullException.ThrowIfNull(jar);
        return Moved.GetValueOrDefault(jar.Number);
    }

    /// <summary>How a listed jar stands, by the more careful dates.</summary>
    public static JarState StateOf(JarEntry jar, KeepingDates? learned, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(jar);
        var dates = new KeepingDates(jar.Ready, jar.TestFrom, jar.UseBy);
        return (learned is null ? dates : dates.Shortest(learned)).StateAt(now, jar.Tested is { } day ? new TestResult(day, jar.TestPassed == true) : null);
    }

    private static IReadOnlyList<JarEntry> Due(IReadOnlyList<JarEntry> onRecord, IReadOnlyList<JarEntry> all, IReadOnlyDictionary<int, KeepingDates> moved, DateTime now) =>
        [.. onRecord.Concat(all.Where(j => moved.ContainsKey(j.Number) && StateOf(j, moved[j.Number], now) is (JarState.Test or JarState.Past))).DistinctBy(j => j.Number).OrderBy(j => j.UseBy).ThenBy(j => j.Number)];
}
