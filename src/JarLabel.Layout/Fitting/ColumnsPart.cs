namespace JarLabel.Layout.Fitting;

/// <summary>Parts side by side, each as wide as it needs or is told; growing ones share the rest.</summary>
internal sealed class ColumnsPart(Fit fit, StackBox box, Part[] parts) : StackPart(fit, box, parts)
{
    protected override double NaturalWidth()
    {
        var parts = Present();
        return parts.Sum(part => part.Wide()) + Gaps(parts) + (2 * Pad);
    }

    protected override double NaturalHeight(double width)
    {
        var parts = Present();
        var (widths, _) = Widths(parts, width - (2 * Pad));
        var highest = 0.0;
        for (var index = 0; index < widths.Length; index++)
            highest = Math.Max(highest, parts[index].High(widths[index]));
        return highest + (2 * Pad);
    }

    protected override void DrawInside(Area area, Ink ink, List<Mark> marks)
    {
        var parts = Present();
        var (widths, spare) = Widths(parts, area.Width);
        var x = area.Piece(area.Width - spare, area.Height, Frame.Across, Align.Start).X;
        foreach (var (part, width) in parts.Zip(widths))
        {
            var height = part.Frame.Height ?? area.Height;
            part.Draw(new Area(x, area.Y, width, area.Height).Piece(width, height, Align.Start, part.Frame.Down), ink, marks);
            x += width + Gap;
        }
    }

    private double Gaps(List<Part> parts) => Gap * Math.Max(0, parts.Count - 1);

    private (double[] Widths, double Spare) Widths(List<Part> parts, double width)
    {
        var widths = new double[parts.Count];
        for (var index = 0; index < widths.Length; index++)
            widths[index] = parts[index].Frame is { Grow: > 0, Width: null } ? 0 : parts[index].Wide();
        var needs = widths.Sum() + Gaps(parts);
        Fit.NeedWidth(this, () => string.Join(" + ", Texts.Take(3)), needs, width);
        return (widths, Share(width - needs, parts, widths));
    }
}
