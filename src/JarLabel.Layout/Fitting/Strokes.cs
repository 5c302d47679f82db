namespace JarLabel.Layout.Fitting;

/// <summary>Weights that a one-bit printer can draw. A stroke comes out as whole dots; one of clearly less than two comes out, here and there,
/// as a single one, and a single one may be lost.</summary>
internal static class Strokes
{
    private const double LeastDots = 1.9;
    /// <summary>The weight itself, or a heavier one where its uprights would come out as single dots.</summary>
    /// <param name="face">The weight that the design wants.</param>
    /// <param name="points">The smallest size it may be set in.</param>
    /// <param name="dpi">Dots per inch of the printer.</param>
    internal static Face Sure(Face face, double points, int dpi)
    {
        while (face < Face.Bold && ExifOrientation(face) * points * TypePoint.Millimetres * dpi / 25.4 < LeastDots)
            face++;
        return face;
    }

    /// <summary>Thickness of the uprights of a capital H over the type size, as its outline in the shipped file has it.</summary>
    internal static double ExifOrientation(Face face) => face switch
    {
        Face.Regular => 0.080,
        Face.SemiBold => 0.125,
        _ => 0.143,
    };
}
