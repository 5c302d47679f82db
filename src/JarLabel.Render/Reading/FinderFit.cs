namespace JarLabel.Render.Reading;

/// <summary>Looks from the middle of what may be a finder pattern all round: where the three edges lie tells whether it is one, and how it is turned,
/// pulled and seen from aside.</summary>
internal static class FinderFit
{
    private const int Rays = 32;
    private const int Enough = 22;
    private const int Starts = 6;
    private const int Rounds = 5;
    private const float MostMisfit = 0.25f;

    /// <summary>Edges lie 1.5, 2.5 and 3.5 modules from the middle (ISO/IEC 18004): the mean of 1/1.5, 1/2.5 and 1/3.5.</summary>
    private const float ShiftShare = 0.4508f;

    private static readonly Vector2[] Ways = [.. Enumerable.Range(0, Rays).Select(i => new Vector2(MathF.Cos(2 * MathF.PI * i / Rays), MathF.Sin(2 * MathF.PI * i / Rays)))];

    /// <summary>The pattern there; null when it is none.</summary>
    /// <param name="view">What is looked at.</param>
    /// <param name="dots">The same in black and white.</param>
    /// <param name="centre">Where in the view the middle seems to be.</param>
    /// <param name="module">How large a module seems to be, dots of the view.</param>
    internal static FinderPattern? At(PhotoView view, BlackDots dots, Vector2 centre, float module)
    {
        var limit = dots.Mean((int)centre.X, (int)centre.Y);
        Span<Vector2> rim = stackalloc Vector2[Rays];
        var count = 0;
        for (var i = 0; i < Rays; i++)
        {
            if (Rim(view.Grey, centre, Ways[i], module, limit) is { } far)
                rim[count++] = Ways[i] * far;
            else if (i - count >= Rays - Enough)
                return null;
        }

        return Fitted(view, centre, rim[..count]);
    }

    // How far from the middle a square of two modules' side would have its rim, by all three edges.
    private static float? Rim(GreyPicture grey, Vector2 centre, Vector2 way, float module, float limit)
    {
        var (step, reach) = (Math.Max(0.5f, module / 5), module * 9);
        Span<float> edges = stackalloc float[3];
        var (found, last) = (0, grey.At(centre.X, centre.Y));
        for (var far = step; far < reach; far += step)
        {
            var light = grey.At(centre.X + (way.X * far), centre.Y + (way.Y * far));
            if (light < limit == (found == 1))
            {
                edges[found++] = far - (step * Math.Clamp((light - limit) / (light - last), 0, 1));
                if (found == 3)
                    return Even(edges) ? ((edges[0] / 1.5f) + (edges[1] / 2.5f) + (edges[2] / 3.5f)) / 3 : null;
            }

            last = light;
        }

        return null;
    }

    private static bool Even(ReadOnlySpan<float> edges) =>
        edges[1] > 1.2f * edges[0] && edges[1] < 2.5f * edges[0] && edges[2] > 1.1f * edges[1] && edges[2] < 2 * edges[1];

    private static FinderPattern? Fitted(PhotoView view, Vector2 centre, ReadOnlySpan<Vector2> rim)
    {
        var mean = 0f;
        foreach (var place in rim)
            mean += place.Length() / rim.Length;
        (Side A, Side B, float Misfit) best = (default, default, MostMisfit);
        for (var start = 0; start < Starts; start++)
        {
            var (sin, cos) = MathF.SinCos(MathF.PI / 2 * start / Starts);
            var (a, b) = (new Side(new Vector2(cos, sin) / mean, 0), new Side(new Vector2(-sin, cos) / mean, 0));
            for (var round = 0; round < Rounds; round++)
                (a, b) = (Side.Through(rim, a, b), Side.Through(rim, b, a));
            if (Misfit(rim, a, b) is var misfit && misfit < best.Misfit)
                best = (a, b, misfit);
        }

        return best.Misfit < MostMisfit ? Pattern(view, centre, best.A, best.B, best.Misfit) : null;
    }

    private static float Misfit(ReadOnlySpan<Vector2> rim, Side a, Side b)
    {
        var sum = 0f;
        foreach (var place in rim)
        {
            var off = Math.Max(Math.Abs(a.Of(place)), Math.Abs(b.Of(place))) - 1;
            sum += off * off;
        }

        return MathF.Sqrt(sum / rim.Length);
    }

    // The sides say how far a place lies in modules; turned round, where a module leads.
    private static FinderPattern? Pattern(PhotoView view, Vector2 centre, Side a, Side b, float misfit)
    {
        var whole = FinderPattern.Cross(a.Rise, b.Rise);
        if (Math.Abs(whole) < 0.3f * a.Rise.Length() * b.Rise.Length())
            return null;
        var (along, down) = (new Vector2(b.Rise.Y, -b.Rise.X) / whole, new Vector2(-a.Rise.Y, a.Rise.X) / whole);
        var shift = ((along * a.Shift) + (down * b.Shift)) / ShiftShare;
        var ratio = along.Length() / down.Length();
        return ratio is > 0.25f and < 4 && shift.Length() < 2 * (along.Length() + down.Length())
            ? new FinderPattern(view.InPhoto(centre + shift), along * view.Scale, down * view.Scale, misfit)
            : null;
    }

    /// <summary>Two opposite sides of a square of two modules' side: a place lies on them where <see cref="Of"/> is 1 or -1.</summary>
    private readonly record struct Side(Vector2 Rise, float Shift)
    {
        internal float Of(Vector2 place) => Vector2.Dot(Rise, place) - Shift;

        /// <summary>The sides that come nearest to the places that lie on these rather than on the others: least squares of three unknowns.</summary>
        internal static Side Through(ReadOnlySpan<Vector2> rim, Side these, Side others)
        {
            float xx = 0, xy = 0, yy = 0, x = 0, y = 0, n = 0, xs = 0, ys = 0, s = 0;
            foreach (var place in rim)
            {
                var off = these.Of(place);
                if (Math.Abs(off) < Math.Abs(others.Of(place)))
                    continue;
                var side = MathF.Sign(off);
                (xx, xy, yy) = (xx + (place.X * place.X), xy + (place.X * place.Y), yy + (place.Y * place.Y));
                (x, y, n) = (x + place.X, y + place.Y, n + 1);
                (xs, ys, s) = (xs + (side * place.X), ys + (side * place.Y), s + side);
            }

            if (n < 4)
                return these;
            // With the shift taken out, two unknowns are left.
            var (a, b, c) = (xx - (x * x / n), xy - (x * y / n), yy - (y * y / n));
            var (p, q) = (xs - (x * s / n), ys - (y * s / n));
            var whole = (a * c) - (b * b);
            if (whole < 1e-6f * a * c)
                return these;
            var rise = new Vector2(((p * c) - (q * b)) / whole, ((q * a) - (p * b)) / whole);
            return new Side(rise, ((rise.X * x) + (rise.Y * y) - s) / n);
        }
    }
}
