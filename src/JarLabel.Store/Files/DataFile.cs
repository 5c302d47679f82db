namespace JarLabel.Store.Files;

/// <summary>Reads a data file whole, as <see cref="StrictJson"/> wants it: of one that is longer than it takes, or without end, only so much that it
/// sees so.</summary>
public static class DataFile
{
    /// <summary>The file's bytes; throws what a disk throws.</summary>
    public static byte[] Read(string path)
    {
        using var file = InputFile.Open(path);
        var bytes = new byte[file.CanSeek && file.Length is > 0 and <= StrictJson.MostBytes ? (int)file.Length : StrictJson.MostBytes + 1];
        return bytes[..file.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false)];
    }
}
