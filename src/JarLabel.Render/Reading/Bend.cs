using ZXing.Common;

namespace JarLabel.Render.Reading;

/// <summary>How the rows of a code round a jar are seen bent: the middle of a row lies so far from where it would lie on a flat label. A parabola is
/// close enough to what a cylinder shows.</summary>
/// <param name="Sideways">How far across the row, modules: a jar seen from above or below.</param>
/// <param name="Along">How far along the row, modules: a jar seen from the left or the right.</param>
/// <param name="Columns">True when the columns are bent instead of the rows: a label whose lines run up the jar.</param>
internal readonly record struct Bend(double Sideways, double Along, bool Columns)
{
    // Middles of the finder patterns and of the last alignment pattern lie so far from the edge (ISO/IEC 18004).
    private const double Finder = 3.5;
    private const double Alignment = 6.5;

    /// <summary>The bends to try, the slightest first.</summary>
    internal static Bend[] Likely { get; } =
    [
        .. from sideways in Steps(3, 0.4) from along in Steps(1.2, 0.4) from columns in (bool[])[false, true]
           where sideways != 0 || along != 0
           orderby Math.Abs(sideways) + Math.Abs(along)
           select new Bend(sideways, along, columns),
    ];

    /// <summary>The code's modules as they lie under that bend; null when it would reach out of the picture.</summary>
    internal BitMatrix? Sampled(BitMatrix dots, DetectorResult place)
    {
        var size = place.Bits.Width;
        var flat = Flat(place, size);
        var modules = new BitMatrix(size);
        for (var row = 0; row < size; row++)
        {
            var points = Row(row + 0.5, size);
            flat.transformPoints(points);
            for (var column = 0; column < size; column++)
            {
                var (x, y) = ((int)points[2 * column], (int)points[(2 * column) + 1]);
                if (x < 0 || y < 0 || x >= dots.Width || y >= dots.Height)
                    return null;
                modules[column, row] = dots[x, y];
            }
        }

        return modules;
    }

    private float[] Row(double down, int size)
    {
        var points = new float[2 * size];
        for (var column = 0; column < size; column++)
            (points[2 * column], points[(2 * column) + 1]) = Moved(column + 0.5, down, size);
        return points;
    }

    // From places on the label, were it flat, to dots: the finder patterns stay, the alignment pattern is moved by the bend.
    private PerspectiveTransform Flat(DetectorResult place, int size)
    {
        var (low, left, right) = (place.Points[0], place.Points[1], place.Points[2]);
        var far = (float)(size - Finder);
        var (near, inner) = ((float)Finder, size - Alignment);
        return place.Points.Length > 3
            ? PerspectiveTransform.quadrilateralToQuadrilateral(
                near, near, far, near, Moved(inner, inner, size).X, Moved(inner, inner, size).Y, near, far,
                left.X, left.Y, right.X, right.Y, place.Points[3].X, place.Points[3].Y, low.X, low.Y)
            : PerspectiveTransform.quadrilateralToQuadrilateral(
                near, near, far, near, far, far, near, far,
                left.X, left.Y, right.X, right.Y, right.X - left.X + low.X, right.Y - left.Y + low.Y, low.X, low.Y);
    }

    private (float X, float Y) Moved(double across, double down, int size)
    {
        var from = ((Columns ? down : across) - (size / 2.0)) / ((size / 2.0) - Finder);
        var share = 1 - (from * from);
        return Columns
            ? ((float)(across + (Sideways * share)), (float)(down + (Along * share)))
            : ((float)(across + (Along * share)), (float)(down + (Sideways * share)));
    }

    private static IEnumerable<double> Steps(double most, double step) =>
        Enumerable.Range((int)Math.Round(-most / step), (2 * (int)Math.Round(most / step)) + 1).Select(i => i * step);
}
