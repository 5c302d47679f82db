namespace JarLabel.Core.Catalog;

/// <summary>A data file in hand.</summary>
/// <param name="Path">Its name as the user knows it; it starts every problem's place.</param>
/// <param name="Bytes">What is in it.</param>
internal sealed record CatalogFile(string Path, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>The name without folders, by which it is known what the file is about.</summary>
    internal string Name => Path[(Path.LastIndexOfAny(['/', '\\']) + 1)..];
}
