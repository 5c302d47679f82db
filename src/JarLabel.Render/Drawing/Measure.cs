namespace JarLabel.Render.Drawing;

/// <summary>Lengths of paper, type and dots. Marks are in millimetres; points and dots exist only inside Render.</summary>
internal static class Measure
{
    internal const double MillimetresPerInch = 25.4;
    internal const double PointsPerMillimetre = 72 / MillimetresPerInch;

    internal static double Millimetres(double points) => points / PointsPerMillimetre;
}
