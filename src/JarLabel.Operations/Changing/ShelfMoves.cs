namespace JarLabel.Operations.Changing;

/// <summary>What a change of shelf does to a jar's dates.</summary>
internal static class ShelfMoves
{
    /// <summary>How warm a shelf is; one that is no longer in the settings counts as 20 °C.</summary>
    internal static Temperature WarmthOf(Workbench bench, string shelf) => HistoryOf(bench, shelf).Now;

    /// <summary>How warm a shelf is and was; one that is no longer in the settings counts as 20 °C.</summary>
    internal static WarmthHistory HistoryOf(Workbench bench, string shelf) =>
        bench.Settings.Shelves.FirstOrDefault(s => s.Name == shelf)?.Warmth ?? new WarmthHistory(Warmth.Reference, []);

    /// <summary>The dates on the other shelf; null when they stay.</summary>
    internal static KeepingDates? Shortened(Workbench bench, Jar jar, Shelf to) =>
        jar.Dates.AfterMove(DateOnly.FromDateTime(bench.Now), WarmthOf(bench, jar.Shelf), to.Temperature, bench.Keeping);
}
