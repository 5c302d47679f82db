namespace JarLabel.Store.Files;

/// <summary>Where a path really leads: every link in it followed, of its folders and of the file itself.</summary>
internal static class LinkPath
{
    private const int MostLinks = 40;

    /// <summary>The full path without a link in it. What is not there yet may be part of it.</summary>
    internal static string Of(string path) => Of(Path.GetFullPath(path), MostLinks);

    private static string Of(string full, int left)
    {
        if (Path.GetDirectoryName(full) is not { } folder)
        {
            return full;
        }

        var at = Path.Combine(Of(folder, left), Path.GetFileName(full));
        if (new FileInfo(at).LinkTarget is not { } target)
        {
            return at;
        }

        return left > 0 ? Of(Path.GetFullPath(target, Path.GetDirectoryName(at)!), left - 1) : throw new IOException($"\"{at}\" is a link that leads in a circle.");
    }
}
