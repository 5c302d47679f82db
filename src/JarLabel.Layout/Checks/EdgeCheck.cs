namespace JarLabel.Layout.Checks;

/// <summary>Finds marks beyond the safe part of the label, labels beyond the sheet, and lines too thin to print.</summary>
internal static class EdgeCheck
{
    /// <summary>Thinnest line that prints surely, mm.</summary>
    private const double Thinnest = 0.25;

    // Far below what a printer can place.
    private const double Closeness = 0.01;

    internal static IEnumerable<Problem> Problems(PlacedLabel label, double paperWidth, double paperHeight, ITextRuler ruler)
    {
        var area = label.Area;
        if (Beyond(area, paperWidth, paperHeight, label.Design.Inset) is > 0.02 and var leaves)
            yield return LayoutProblems.LabelOutsideSheet(label.Design.Id, leaves);
        foreach (var mark in label.Marks)
        {
            var where = $"{label.Design.Id}/{mark.Box}";
            var extent = mark is QrMark code ? Extent.OfQuietZone(code) : Extent.Of(mark, ruler);
            var beyond = Beyond(extent, area, label.Design.Inset);
            if (beyond > Closeness + HalfDot(mark, area))
                yield return LayoutProblems.OutsideInset(where, beyond);
            if (mark is BarMark bar && Math.Min(bar.Width, bar.Height) < Thinnest)
                yield return LayoutProblems.Hairline(where, Math.Min(bar.Width, bar.Height));
        }
    }

    // Dimensions rounded from inches are forgiven. Where the paper is as large as the label, as on a roll, the paper's edge is the label's
    // own: a calibrated place may hang over it as far as nothing is printed.
    private static double Beyond(LabelArea area, double paperWidth, double paperHeight, double inset)
    {
        var (across, down) = (Math.Abs(area.Width - paperWidth) < 0.05 ? inset : 0, Math.Abs(area.Height - paperHeight) < 0.05 ? inset : 0);
        return Math.Max(
            Math.Max(-area.X, area.X + area.Width - paperWidth) - across,
            Math.Max(-area.Y, area.Y + area.Height - paperHeight) - down);
    }

    // A code is moved onto whole printer dots, up to half a dot away; so is every bar where the printer has no greys.
    private static double HalfDot(Mark mark, LabelArea area) => mark is QrMark || (mark is BarMark && area.BlackOnly) ? 12.7 / area.Dpi : 0;

    private static double Beyond(Extent extent, LabelArea area, double inset) => area.Shape == LabelShape.Round
        ? BeyondCircle(extent, area, inset)
        : Math.Max(
            Math.Max(area.X + inset - extent.Left, extent.Right - (area.X + area.Width - inset)),
            Math.Max(area.Y + inset - extent.Top, extent.Bottom - (area.Y + area.Height - inset)));

    private static double BeyondCircle(Extent extent, LabelArea area, double inset)
    {
        var x = area.X + (area.Width / 2);
        var y = area.Y + (area.Height / 2);
        var farX = Math.Max(Math.Abs(extent.Left - x), Math.Abs(extent.Right - x));
        var farY = Math.Max(Math.Abs(extent.Top - y), Math.Abs(extent.Bottom - y));
        return Math.Sqrt((farX * farX) + (farY * farY)) - ((area.Width / 2) - inset);
    }
}
