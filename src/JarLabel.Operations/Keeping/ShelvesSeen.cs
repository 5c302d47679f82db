namespace JarLabel.Operations.Keeping;

/// <summary>What a look at the shelves shows.</summary>
/// <param name="List">The jars asked for.</param>
/// <param name="Totals">What stands on every shelf altogether.</param>
/// <param name="Cautions">Storage limits that are passed, labels that are out of date.</param>
internal sealed record ShelvesSeen(ShelfList List, IReadOnlyList<StandingOnShelf> Totals, IReadOnlyList<Problem> Cautions)
{
    /// <summary>How many there are of which the jars listed are the first.</summary>
    internal required int Standing { get; init; }

    /// <summary>True when only jars were asked for that want to be tested or used soon.</summary>
    internal bool DueOnly { get; init; }

    /// <summary>The calendar that was written, if one was.</summary>
    internal string? Calendar { get; init; }

    /// <summary>The drawing that was written, if one was.</summary>
    internal string? Drawing { get; init; }

    /// <summary>Looks at a shelf, or at all.</summary>
    internal static Result<ShelvesSeen> Of(Workbench bench, string? shelf, bool due, int first)
    {
        if (!bench.Settings.Shelf(shelf).TryGet(out _, out var faults))
        {
            return faults;
        }

        return LedgerAccess.Read(bench, view => Of(bench, view, new ShelfQuery(shelf, Take: first), due ? DateOnly.FromDateTime(bench.Now) : null));
    }

    private static Result<ShelvesSeen> Of(Workbench bench, LedgerView view, ShelfQuery query, DateOnly? due)
    {
        if (!ShelfTotals.Of(view).TryGet(out var totals, out var faults))
        {
            return faults;
        }

        if (!ShelfList.Of(bench, view, query, due).TryGet(out var list, out faults))
        {
            return faults;
        }

        return new ShelvesSeen(list, totals, [.. view.HasEventsAfter(bench.Now) ? [OperationProblems.LaterList(bench.Now)] : (Problem[])[], .. ShelfCautions.Of(bench, view, query.Shelf), .. ShelfCautions.OfContainers(bench, view, query.Shelf, list.Jars), .. list.Cautions])
        {
            DueOnly = due is not null,
            Standing = due is null ? totals.Where(total => query.Shelf is null || total.Shelf == query.Shelf).Sum(total => total.Jars) : list.Standing,
        };
    }
}
