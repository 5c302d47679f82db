using System.Numerics;

namespace JarLabel.Render.Reading;

/// <summary>One of the three squares in the corners of a code, as it is seen in a photo.</summary>
/// <param name="Centre">Its middle, in the photo.</param>
/// <param name="Along">From one module to the next along one of its sides.</param>
/// <param name="Down">From one module to the next along the other.</param>
/// <param name="Misfit">How far its edges lie from those of a square so seen, modules.</param>
internal sealed record FinderPattern(Vector2 Centre, Vector2 Along, Vector2 Down, float Misfit)
{
    /// <summary>The side of a module, dots of the photo.</summary>
    internal float Module { get; } = MathF.Sqrt(MathF.Abs(Cross(Along, Down)));

    /// <summary>A place of the photo, counted in modules from the middle along both sides.</summary>
    internal Vector2 Modules(Vector2 place)
    {
        var (from, whole) = (place - Centre, Cross(Along, Down));
        return new Vector2(Cross(from, Down) / whole, Cross(Along, from) / whole);
    }

    internal static float Cross(Vector2 a, Vector2 b) => (a.X * b.Y) - (a.Y * b.X);
}
