namespace JarLabel.Core;

/// <summary>A data file that travels inside the program.</summary>
internal static class EmbeddedFile
{
    /// <summary>The bytes of one of our own files, such as <c>catalog/grades.json</c>.</summary>
    internal static ReadOnlyMemory<byte> Read(string name)
    {
        using var stream = typeof(EmbeddedFile).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The program was built without its file {name}.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
