namespace JarLabel.Layout.Fitting;

/// <summary>The outermost rows of a round label: bands of fixed height, each as wide as the circle is there.</summary>
internal sealed class BandsPart(Fit fit, StackBox box, Part[] parts) : StackPart(fit, box, parts)
{
    private double diameter;

    protected override double NaturalWidth() => diameter;

    protected override double NaturalHeight(double width)
    {
        diameter = width;
        var height = 0.0;
        foreach (var (part, band) in Bands(new Area(0, 0, width, width)))
        {
            part.High(band.Width);
            height = band.Bottom;
        }

        return height;
    }

    protected override void DrawInside(Area area, Ink ink, List<Mark> marks)
    {
        foreach (var (part, band) in Bands(area))
            part.Draw(band, ink, marks);
    }

    private IEnumerable<(Part Part, Area Band)> Bands(Area circle)
    {
        var parts = Present();
        var heights = parts.Sum(part => part.Frame.Height ?? 0) + (Gap * Math.Max(0, parts.Count - 1));
        var y = Math.Max(0, (circle.Height - heights) / 2);
        foreach (var part in parts)
        {
            var height = part.Frame.Height ?? 0;
            var width = Chord(circle.Width / 2, y, y + height);
            yield return (part, new Area(circle.X + ((circle.Width - width) / 2), circle.Y + y, width, height));
            y += height + Gap;
        }
    }

    // The narrower of the chords at the band's two edges.
    private static double Chord(double radius, double top, double bottom)
    {
        var away = Math.Max(Math.Abs(radius - top), Math.Abs(radius - bottom));
        return away >= radius ? 0 : 2 * Math.Sqrt((radius * radius) - (away * away));
    }
}
