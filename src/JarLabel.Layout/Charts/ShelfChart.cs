namespace JarLabel.Layout.Charts;

/// <summary>The jars on the shelves along time, on paper turned on its side, to be pinned up. All pages have one scale.</summary>
public static class ShelfChart
{
    // White on both sides of the lines of life.
    private const double Apart = 3;
    private const double BottomMargin = 2;
    private const double LeastRow = 9.4, MostRow = 18;

    /// <summary>The pages, at least one.</summary>
    /// <param name="text">Its words and days.</param>
    /// <param name="paper">The paper, upright; it is turned.</param>
    /// <param name="cropped">True to end the page under the drawing, for a picture that is not printed.</param>
    /// <param name="ruler">Measures text.</param>
    public static IReadOnlyList<Page> Of(ShelfChartText text, Paper paper, bool cropped, ITextRuler ruler)
    {
        var side = paper.OnItsSide;
        var room = side.Height - ShelfChartPage.PlotTop - ShelfChartFoot.Room - BottomMargin;
        var pages = Math.Max(1, (int)Math.Ceiling(text.Rows.Count / Math.Floor(room / LeastRow)));
        var rows = Math.Max(1, (int)Math.Ceiling((double)text.Rows.Count / pages));
        var pitch = Math.Min(room / rows, MostRow);
        var scale = new DayScale(ShelfChartPage.WordsEnd + Apart, side.Width - ShelfChartPage.Margin - ShelfChartPage.DatesWidth - Apart, text.Now, [.. text.Rows.Select(r => r.Days)]);
        return
        [
            .. Enumerable.Range(0, pages).Select(page =>
                new ShelfChartPage(text, scale, side, cropped, pitch, new ChartType(ruler)).Of([.. text.Rows.Skip(page * rows).Take(rows)], ShelfChartText.PageOf(page + 1, pages))),
        ];
    }
}
