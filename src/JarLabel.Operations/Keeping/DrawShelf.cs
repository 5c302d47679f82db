namespace JarLabel.Operations.Keeping;

/// <summary>Draws the jars on the shelves along time: mixed, ready, to be tested, tested, use-by, today.</summary>
public static class DrawShelf
{
    /// <summary>Writes the drawing whole or not at all; on a dry run it is drawn and dropped.</summary>
    /// <param name="bench">The shop at this moment.</param>
    /// <param name="list">The jars.</param>
    /// <param name="shelf">The shelf they were asked for; null for all.</param>
    /// <param name="standing">How many there are of which these are the first.</param>
    /// <param name="due">True when only those are listed that are to be tested or past.</param>
    /// <param name="file">Full path of the file; its ending says what it becomes.</param>
    /// <param name="paper">The paper, upright; it is turned.</param>
    /// <returns>The file, or why not.</returns>
    public static Result<string> Do(Workbench bench, ShelfList list, string? shelf, long standing, bool due, string file, Paper paper)
    {
        return LedgerAccess.Read(bench, view => Results.All(list.Jars.Select(j => JarHistory.Of(JarNumber.From(j.Number), view.EventsOf(Subject.Jar(j.Number)))))).Then(histories =>
        {
            var rows = list.Jars.Zip(histories).Where(j => j.Second.Jar.OnShelf).Select(j => Row(bench, list, j.First, j.Second)).OrderBy(r => r.Days.UseBy).ToArray();
            var liquid = Volume.FromMilliliters(list.Jars.Sum(j => j.Liquid.Milliliters));
            var text = ShelfChartText.For(bench.Settings.Name, shelf, rows, standing, due, liquid, bench.Now, bench.Metric);
            return DrawnPages.Write(bench, ShelfChart.Of(text, paper, cropped: !file.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase), new SkiaRuler()), text.Title, file);
        });
    }

    private static ShelfChartRow Row(Workbench bench, ShelfList list, JarEntry entry, JarHistory history) => ShelfChartRow.Of(
        history.Jar with { Learned = list.Learned(entry), Doubts = list.Doubts(entry) },
        history.Life.Standing.OfType<Tested>().Select(t => new TestResult(DateOnly.FromDateTime(t.At), t.Passed) { Slow = t.HowDried == Core.Keeping.Drying.Slow }),
        bench.Catalog,
        bench.Now,
        bench.Metric,
        history.IsLabelled);
}
