namespace JarLabel.Operations.Samples;

/// <summary>Where each design stands on the contact sheet: in rows, the lowest on top; what is left beside the last row takes the row before it
/// as a column.</summary>
internal static class ContactPlan
{
    /// <summary>The room below a label for its name, mm.</summary>
    internal const double Caption = 6;

    private const double Width = 390;
    private const double Across = 6;
    private const double Down = 6;

    /// <summary>The places in mm from the top left, and how much room they take together.</summary>
    internal static (IReadOnlyList<(Design Design, double X, double Y)> Shown, double Width, double Height) Of(IReadOnlyList<Design> designs)
    {
        var rows = Rows(designs);
        var shown = new List<(Design, double X, double Y)>();
        var y = 0.0;
        for (var at = 0; at < rows.Count; at++)
        {
            var beside = at == rows.Count - 2 && Wide(rows[at + 1]) + Across + rows[at].Max(design => design.Width) <= Width;
            var row = beside ? rows[at + 1] : rows[at];
            shown.AddRange(row.Select((design, place) => (design, row.Take(place).Sum(before => before.Width + Across), y)));
            var high = High(row);
            if (beside)
            {
                Design[] column = [.. rows[at].OrderByDescending(design => design.Height)];
                shown.AddRange(column.Select((design, place) => (design, Wide(row) + Across, y + column.Take(place).Sum(before => before.Height + Caption + Down))));
                high = Math.Max(high, column.Sum(design => design.Height + Caption + Down) - Down);
                at++;
            }

            y += high + Down;
        }

        return (shown, Math.Max(Width, rows.Max(Wide)), y - Down);
    }

    private static List<List<Design>> Rows(IReadOnlyList<Design> designs)
    {
        var rows = new List<List<Design>>();
        foreach (var design in designs.OrderBy(design => design.Height).ThenBy(design => design.Width))
        {
            if (rows.Count == 0 || Wide(rows[^1]) + Across + design.Width > Width)
            {
                rows.Add([]);
            }

            rows[^1].Add(design);
        }

        return rows;
    }

    private static double Wide(IReadOnlyList<Design> row) => row.Sum(design => design.Width + Across) - Across;

    private static double High(IReadOnlyList<Design> row) => row.Max(design => design.Height) + Caption;
}
