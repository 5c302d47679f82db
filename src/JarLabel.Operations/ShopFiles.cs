namespace JarLabel.Operations;

/// <summary>The shop's own data files in one of its folders.</summary>
internal static class ShopFiles
{
    /// <summary>Every JSON file in the folder, by name; none when there is no such folder.</summary>
    internal static Result<IReadOnlyList<(string File, ReadOnlyMemory<byte> Bytes)>> In(string folder)
    {
        try
        {
            return Directory.Exists(folder)
                ? [.. Directory.EnumerateFiles(folder, "*.json").Order(StringComparer.Ordinal).Select(f => (f, (ReadOnlyMemory<byte>)DataFile.Read(f)))]
                : Array.Empty<(string, ReadOnlyMemory<byte>)>();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return OperationProblems.FolderUnreadable(folder, fault.Message);
        }
    }

    /// <summary>The shop's own sheets and designs.</summary>
    internal static Result<IReadOnlyList<LayoutFile>> Layouts(ShopFolder folder) =>
        In(Path.Combine(folder.Layouts, "sheets")).Then(sheets =>
            In(Path.Combine(folder.Layouts, "labels")).Then(labels =>
                Result<IReadOnlyList<LayoutFile>>.Of([.. sheets.Concat(labels).Select(f => new LayoutFile(f.File, f.Bytes.ToArray))])));
}
