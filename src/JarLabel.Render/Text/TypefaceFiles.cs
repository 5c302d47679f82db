namespace JarLabel.Render.Text;

/// <summary>The labels' typeface as files, for pages that speak the labels' language.</summary>
public static class TypefaceFiles
{
    /// <summary>The weights there are, as a stylesheet names them.</summary>
    public static IReadOnlyList<string> Weights { get; } = ["400", "600", "700"];

    /// <summary>The TrueType file of a weight; null for one that there is not.</summary>
    public static byte[]? Read(string weight)
    {
        var room = typeof(TypefaceFiles).Assembly;
        return Weights.Contains(weight) && room.GetManifestResourceNames().FirstOrDefault(name => name.Contains($"_{weight}", StringComparison.Ordinal)) is { } file ? EmbeddedFile.Read(room, file) : null;
    }
}
