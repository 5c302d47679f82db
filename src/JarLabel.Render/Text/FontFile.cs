using JarLabel.Layout.Marks;

namespace JarLabel.Render.Text;

/// <summary>The bytes of the family's three font files, embedded in this assembly. A font is never looked up by name: a machine
/// without it would silently draw another one.</summary>
internal static class FontFile
{
    internal static byte[] Read(Face face)
    {
        using var stream = Open(face);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static Stream Open(Face face) =>
        typeof(FontFile).Assembly.GetManifestResourceStream($"fonts/IBMPlexSansCondensed_{Weight(face)}.ttf")
        ?? throw new InvalidOperationException($"The font of {face} is not embedded.");

    private static string Weight(Face face) => face switch
    {
        Face.Regular => "400Regular",
        Face.SemiBold => "600SemiBold",
        Face.Bold => "700Bold",
        _ => throw new ArgumentOutOfRangeException(nameof(face), face, "Not a weight of the family."),
    };
}
