namespace JarLabel.Benchmarks.Labels;

/// <summary>The font files that JarLabel embeds, for the other contestants.</summary>
internal static class FontBytes
{
    internal static byte[] Of(Face face)
    {
        var weight = face switch { Face.Regular => "400Regular", Face.SemiBold => "600SemiBold", _ => "700Bold" };
        using var stream = typeof(PdfRenderer).Assembly.GetManifestResourceStream($"fonts/IBMPlexSansCondensed_{weight}.ttf")!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
