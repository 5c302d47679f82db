using System.Numerics;

namespace JarLabel.Render.Reading;

/// <summary>A code that was read.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Corners">Where it lies in the photo.</param>
internal sealed record FoundCode(string Text, Corners Corners)
{
    /// <summary>Its left upper corner as the picture is shown, not as the code lies.</summary>
    internal Vector2 TopLeft(Func<Vector2, Vector2> shown)
    {
        var (left, right, low) = (shown(Corners.Left.Centre), shown(Corners.Right.Centre), shown(Corners.Low.Centre));
        return Vector2.Min(Vector2.Min(left, right), Vector2.Min(low, right + low - left));
    }
}
