namespace JarLabel.Operations.Pictures;

/// <summary>Drawings that belong to no jar, so that the ledger knows nothing of them.</summary>
public static class DrawnPages
{
    /// <summary>Writes a drawing whole or not at all; on a dry run it is drawn and dropped.</summary>
    /// <param name="bench">The shop at this moment.</param>
    /// <param name="pages">What was drawn, at least one page; a picture holds one.</param>
    /// <param name="title">The title inside a PDF.</param>
    /// <param name="file">Full path of the file; its ending says what it becomes.</param>
    /// <returns>The file, or why not.</returns>
    public static Result<string> Write(Workbench bench, IReadOnlyList<Page> pages, string title, string file)
    {
        var unprintable = Preflight.CheckType(Path.GetFileNameWithoutExtension(file), pages, new SkiaRuler());
        return unprintable.Count > 0
            ? Result<string>.Failed(unprintable)
            : LabelFiles.Bytes(file, pages, title, bench.Now).Then(bytes => new FileGuard(bench.Folder).Look(file, bytes, bench.Force).Then(place => bench.DryRun ? file : Write(place, bytes)));
    }

    private static Result<string> Write(GuardedPlace place, byte[] bytes)
    {
        try
        {
            return DurableFile.Write(place, stream => stream.Write(bytes)) is { } problem ? problem : place.Path;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return OperationProblems.ChartNotWritten(place.Path, fault.Message);
        }
    }
}
