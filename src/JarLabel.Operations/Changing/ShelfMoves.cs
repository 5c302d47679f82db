namespace JarLabel.Operations.Changing;

/// <summary>What a change of shelf does to a jar's dates.</summary>
internal static class ShelfMoves
{
    /// <summary>How warm a shelf is; one that is no longer in the settings counts as 20 °C.</summary>
    internal static Temperature WarmthOf(Workbench bench, string shelf) => HistoryOf(bench, shelf).Now;

    /// <summary>How warm a shelf is and was; one that is no longer in the settings counts as 20 °C.</summary>
    internal static WarmthHistory HistoryOf(Workbench bench, string shelf) =>
        bench.Settings.Shelves.FirstOrDefault(s => s.Name == shelf)?.Warmth ?? new WarmthHistory(Warmth.Reference, []);

    /// <summary>True for a shelf of the settings.</summary>
    internal static bool IsKnown(Workbench bench, string shelf) => bench.Settings.Shelves.Any(known => known.Name == shelf);

    /// <summary>The dates of a jar once it stands on another shelf, by all of its history; those on record where that changes nothing, or where they would
    /// come later for flakes that were found bad.</summary>
    internal static Result<KeepingDates> DatesOn(Workbench bench, LedgerView view, JarHistory history, Shelf to)
    {
        var jar = history.Jar;
        return jar.Shelf == to.Name ? jar.Dates : ShopLives.Of(bench, view, jar.Number).Then(lives => history.With(new Moved(bench.Now, to.Name)).Then<KeepingDates>(moved =>
        {
            var dating = new JarDating(bench, view, lives);
            var dates = !IsKnown(bench, jar.Shelf) ? dating.Of(moved.Life)?.Shortest(jar.Dates) ?? jar.Dates : Changed(dating.Of(history.Life), dating.Of(moved.Life)) ?? jar.Dates;
            return dating.Doubts.Of(history).Any && dates.UseBy > jar.Dates.UseBy ? jar.Dates : dates;
        }));
    }

    /// <summary>The dates after something, where it changes them.</summary>
    internal static KeepingDates? Changed(KeepingDates? before, KeepingDates? after) =>
        before is null || after is null || (before.TestFrom, before.UseBy) == (after.TestFrom, after.UseBy) ? null : after;
}
