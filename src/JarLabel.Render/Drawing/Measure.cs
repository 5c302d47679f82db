namespace JarLabel.Render.Drawing;

/// <summary>Lengths of paper, type and dots. Marks are in millimetres; points, grains and dots exist only inside Render.
/// <para>The grain is the unit that is drawn in: 1/2000 point, 0.18 micrometres. Type of a whole number of half points then has advances
/// of whole grains, and whole numbers are exact in the single precision that Skia counts in. Its PDF back end writes a run of letters as
/// one string only while its own sum of advances meets the next position exactly; in millimetres it never does, and each letter is placed
/// by two numbers of nine digits.</para></summary>
internal static class Measure
{
    internal const double MillimetresPerInch = 25.4;
    internal const double PointsPerMillimetre = 72 / MillimetresPerInch;
    internal const int GrainsPerPoint = 2000;
    internal const double GrainsPerInch = 72 * GrainsPerPoint;
    internal const double GrainsPerMillimetre = PointsPerMillimetre * GrainsPerPoint;

    internal static double Millimetres(double points) => points / PointsPerMillimetre;

    /// <summary>The nearest whole grain.</summary>
    internal static float Grains(double millimetres) => (float)Math.Round(millimetres * GrainsPerMillimetre);
}
