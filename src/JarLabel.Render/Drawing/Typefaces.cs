namespace JarLabel.Render.Drawing;

/// <summary>The embedded faces as Skia holds them, one each for the life of the process.</summary>
internal static class Typefaces
{
    private static readonly Lazy<SKTypeface>[] Faces =
        Array.ConvertAll(Enum.GetValues<Face>(), face => new Lazy<SKTypeface>(() => Load(face)));

    internal static SKTypeface For(Face face) => Faces[(int)face].Value;

    /// <summary>A font that Skia neither hints nor snaps to whole units: letters drift when drawing in millimetres otherwise.</summary>
    internal static SKFont Font(SKTypeface face, float size) => new(face, size)
    {
        Subpixel = true,
        LinearMetrics = true,
        Hinting = SKFontHinting.None,
        Edging = SKFontEdging.Antialias,
    };

    private static SKTypeface Load(Face face)
    {
        var file = FontFile.Of(face);
        using var data = SKData.Create(file.Address, file.Length);
        return SKTypeface.FromData(data);
    }
}
