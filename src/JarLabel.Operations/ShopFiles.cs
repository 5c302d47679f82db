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

    /// <summary>Files of the shop's layouts and catalog that lie where nothing reads them.</summary>
    internal static Result<IReadOnlyList<string>> Astray(ShopFolder folder)
    {
        try
        {
            return Result<IReadOnlyList<string>>.Of([.. Data(folder.Layouts).Where(file => !IsRead(folder.Layouts, file)), .. Data(folder.Catalog).Where(file => Path.GetDirectoryName(file) != folder.Catalog)]);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return OperationProblems.FolderUnreadable(folder.Layouts, fault.Message);
        }
    }

    private const string Sheets = "sheets", Labels = "labels";

    private static readonly EnumerationOptions Deep = new() { RecurseSubdirectories = true, MaxRecursionDepth = 4, AttributesToSkip = FileAttributes.ReparsePoint };

    /// <summary>Every data file in a folder and those in it, by name; none when there is no such folder.</summary>
    private static IEnumerable<string> Data(string folder) => Directory.Exists(folder)
        ? Directory.EnumerateFiles(folder, "*", Deep).Where(file => Path.GetExtension(file).Equals(".json", StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal)
        : [];

    private static bool IsRead(string layouts, string file) => Path.GetRelativePath(layouts, file).Split(Path.DirectorySeparatorChar) is [Sheets or Labels, _];

    /// <summary>The shop's own sheets and designs.</summary>
    internal static Result<IReadOnlyList<LayoutFile>> Layouts(ShopFolder folder) =>
        In(Path.Combine(folder.Layouts, Sheets)).Then(sheets =>
            In(Path.Combine(folder.Layouts, Labels)).Then(labels =>
                Result<IReadOnlyList<LayoutFile>>.Of([.. sheets.Concat(labels).Select(f => new LayoutFile(f.File, f.Bytes.ToArray))])));
}
