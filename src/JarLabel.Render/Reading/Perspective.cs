namespace JarLabel.Render.Reading;

/// <summary>From places on a flat code to places in a photo of it, by four places known in both.</summary>
internal readonly struct Perspective
{
    private readonly double xx, xy, x1, yx, yy, y1, wx, wy, w1;
    private readonly Vector2 origin;

    private Perspective(double xx, double xy, double x1, double yx, double yy, double y1, double wx, double wy, double w1, Vector2 origin = default) =>
        (this.xx, this.xy, this.x1, this.yx, this.yy, this.y1, this.wx, this.wy, this.w1, this.origin) = (xx, xy, x1, yx, yy, y1, wx, wy, w1, origin);

    /// <summary>Four places in the order of a way round, and where they are seen.</summary>
    internal static Perspective Of(ReadOnlySpan<Vector2> flat, ReadOnlySpan<Vector2> seen) =>
        FromSquare([Vector2.Zero, seen[1] - seen[0], seen[2] - seen[0], seen[3] - seen[0]]).After(FromSquare(flat).Back(), seen[0]);

    internal Vector2 At(float x, float y)
    {
        var depth = (wx * x) + (wy * y) + w1;
        return origin + new Vector2((float)(((xx * x) + (xy * y) + x1) / depth), (float)(((yx * x) + (yy * y) + y1) / depth));
    }

    // The square (0,0) (1,0) (1,1) (0,1).
    private static Perspective FromSquare(ReadOnlySpan<Vector2> to)
    {
        var (a, b, c, d) = (to[0], to[1], to[2], to[3]);
        double dx1 = b.X - c.X, dx2 = d.X - c.X, dx3 = (double)a.X - b.X + c.X - d.X;
        double dy1 = b.Y - c.Y, dy2 = d.Y - c.Y, dy3 = (double)a.Y - b.Y + c.Y - d.Y;
        var whole = (dx1 * dy2) - (dx2 * dy1);
        var wx = ((dx3 * dy2) - (dx2 * dy3)) / whole;
        var wy = ((dx1 * dy3) - (dx3 * dy1)) / whole;
        return new Perspective(b.X - a.X + (wx * b.X), d.X - a.X + (wy * d.X), a.X, b.Y - a.Y + (wx * b.Y), d.Y - a.Y + (wy * d.Y), a.Y, wx, wy, 1);
    }

    // The adjugate: the way back but for a factor, which falls out.
    private Perspective Back() => new(
        (yy * w1) - (y1 * wy), (x1 * wy) - (xy * w1), (xy * y1) - (x1 * yy),
        (y1 * wx) - (yx * w1), (xx * w1) - (x1 * wx), (x1 * yx) - (xx * y1),
        (yx * wy) - (yy * wx), (xy * wx) - (xx * wy), (xx * yy) - (xy * yx));

    private Perspective After(Perspective b, Vector2 from) => new(
        (xx * b.xx) + (xy * b.yx) + (x1 * b.wx), (xx * b.xy) + (xy * b.yy) + (x1 * b.wy), (xx * b.x1) + (xy * b.y1) + (x1 * b.w1),
        (yx * b.xx) + (yy * b.yx) + (y1 * b.wx), (yx * b.xy) + (yy * b.yy) + (y1 * b.wy), (yx * b.x1) + (yy * b.y1) + (y1 * b.w1),
        (wx * b.xx) + (wy * b.yx) + (w1 * b.wx), (wx * b.xy) + (wy * b.yy) + (w1 * b.wy), (wx * b.x1) + (wy * b.y1) + (w1 * b.w1),
        from);
}
