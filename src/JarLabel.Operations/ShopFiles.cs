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
            return Result<IReadOnlyList<string>>.Of(
            [
                .. Directory.Exists(folder.Layouts)
                    ? Directory.EnumerateFiles(folder.Layouts, "*", Deep).Where(file => IsData(file) && Path.GetRelativePath(folder.Layouts, file).Split(Path.DirectorySeparatorChar) is not [Sheets or Labels, _]).Order(StringComparer.Ordinal)
                    : Enumerable.Empty<string>(),
                .. Directory.Exists(folder.Catalog)
                    ? Directory.EnumerateFiles(folder.Catalog, "*", Deep).Where(file => IsData(file) && Path.GetDirectoryName(file) != folder.Catalog).Order(StringComparer.Ordinal)
                    : Enumerable.Empty<string>(),
            ]);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return OperationProblems.FolderUnreadable(folder.Layouts, fault.Message);
        }
    }

    private const string Sheets = "sheets", Labels = "labels";

    private static readonly EnumerationOptions Deep = new() { RecurseSubdirectories = true, MaxRecursionDepth = 4, AttributesToSkip = FileAttributes.ReparsePoint };

    private static bool IsData(string file) => Path.GetExtension(file).Equals(".json", StringComparison.OrdinalIgnoreCase);

    /// <summary>The shop's own sheets and designs.</summary>
    internal static Result<IReadOnlyList<LayoutFile>> Layouts(ShopFolder folder) =>
        In(Path.Combine(folder.Layouts, Sheets)).Then(sheets =>
            In(Path.Combine(folder.Layouts, Labels)).Then(labels =>
                Result<IReadOnlyList<LayoutFile>>.Of([.. sheets.Concat(labels).Select(f => new LayoutFile(f.File, f.Bytes.ToArray))])));
}
