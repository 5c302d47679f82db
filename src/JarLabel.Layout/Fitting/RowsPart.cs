namespace JarLabel.Layout.Fitting;

/// <summary>Parts below each other, each as wide as there is room.</summary>
internal sealed class RowsPart(Fit fit, StackBox box, Part[] parts) : StackPart(fit, box, parts)
{
    protected override double NaturalWidth() => Present().Max(part => part.Wide()) + (2 * Pad);

    protected override double NaturalHeight(double width)
    {
        var (heights, gaps) = Heights(Present(), width - (2 * Pad));
        return heights.Sum() + gaps + (2 * Pad);
    }

    protected override void DrawInside(Area area, Ink ink, List<Mark> marks)
    {
        var parts = Present();
        var (heights, gaps) = Heights(parts, area.Width);
        var spare = Share(area.Height - heights.Sum() - gaps, parts, heights);
        var y = area.Piece(area.Width, area.Height - spare, Align.Start, Frame.Down).Y;
        foreach (var (part, height) in parts.Zip(heights))
        {
            part.Draw(new Area(area.X, y, area.Width, height).Piece(part.Frame.Width ?? area.Width, height, part.Frame.Across, Align.Start), ink, marks);
            y += height + Gap;
        }
    }

    private (double[] Heights, double Gaps) Heights(List<Part> parts, double width)
    {
        var heights = new double[parts.Count];
        for (var index = 0; index < heights.Length; index++)
            heights[index] = parts[index].High(width);
        return (heights, Gap * Math.Max(0, parts.Count - 1));
    }
}
