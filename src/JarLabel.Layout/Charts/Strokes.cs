namespace JarLabel.Layout.Charts;

/// <summary>The few shapes that charts are drawn with, as filled outlines. All measures in mm.</summary>
/// <param name="box">The part of the drawing they belong to.</param>
internal readonly struct Strokes(string box)
{
    /// <summary>A straight stroke with square ends, so that strokes in a row close up.</summary>
    internal PathMark Line((double X, double Y) from, (double X, double Y) to, double half, Ink ink = Ink.Black)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Max(1e-9, Math.Sqrt((dx * dx) + (dy * dy)));
        var (ux, uy) = (dx / length * half, dy / length * half);
        return Path(string.Create(CultureInfo.InvariantCulture,
            $"M{from.X - ux - uy:0.###} {from.Y - uy + ux:0.###}L{to.X + ux - uy:0.###} {to.Y + uy + ux:0.###}L{to.X + ux + uy:0.###} {to.Y + uy - ux:0.###}L{from.X - ux + uy:0.###} {from.Y - uy - ux:0.###}Z"), ink);
    }

    /// <summary>A corner to corner outline, filled.</summary>
    internal PathMark Polygon(Ink ink, params ReadOnlySpan<(double X, double Y)> corners)
    {
        var data = new System.Text.StringBuilder();
        for (var i = 0; i < corners.Length; i++)
        {
            data.Append(CultureInfo.InvariantCulture, $"{(i == 0 ? 'M' : 'L')}{corners[i].X:0.###} {corners[i].Y:0.###}");
        }

        return Path(data.Append('Z').ToString(), ink);
    }

    /// <summary>A filled disc.</summary>
    internal PathMark Disc(double x, double y, double radius, Ink ink = Ink.Black) => Path(Circle(x, y, radius), ink);

    /// <summary>A ring that reaches to <paramref name="radius"/>.</summary>
    internal PathMark Ring(double x, double y, double radius, double thick, Ink ink = Ink.Black) => Path(Circle(x, y, radius) + Circle(x, y, radius - thick), ink);

    /// <summary>The right half of a disc.</summary>
    internal PathMark HalfDisc(double x, double y, double radius, Ink ink = Ink.Black) =>
        Path(string.Create(CultureInfo.InvariantCulture, $"M{x:0.###} {y - radius:0.###}A{radius:0.###} {radius:0.###} 0 0 1 {x:0.###} {y + radius:0.###}Z"), ink);

    /// <summary>A square on its corner.</summary>
    internal PathMark Diamond(double x, double y, double half, Ink ink = Ink.Black) => Polygon(ink, (x, y - half), (x + half, y), (x, y + half), (x - half, y));

    internal BarMark Bar(double x, double y, double width, double height, Ink ink = Ink.Black) => new(box, x, y, width, height, ink);

    private PathMark Path(string data, Ink ink) => new(box, 0, 0, 1, data, ink);

    private static string Circle(double x, double y, double r) => string.Create(
        CultureInfo.InvariantCulture, $"M{x - r:0.###} {y:0.###}A{r:0.###} {r:0.###} 0 1 1 {x + r:0.###} {y:0.###}A{r:0.###} {r:0.###} 0 1 1 {x - r:0.###} {y:0.###}Z");
}
