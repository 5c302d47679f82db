using JarLabel.Bench.Labels;
using JarLabel.Core;
using JarLabel.Layout;
using JarLabel.Layout.Marks;
using JarLabel.Render;
using JarLabel.Store.Files;

namespace JarLabel.Bench.Pictures;

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
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(file);
        var unprintable = Preflight.CheckType(Path.GetFileNameWithoutExtension(file), pages, new SkiaRuler());
        return unprintable.Count > 0
            ? Result<string>.Failed(unprintable)
            : LabelFiles.Bytes(file, pages, title, bench.Now).Then(bytes => bench.DryRun ? file : Write(file, bytes));
    }

    private static Result<string> Write(string file, byte[] bytes)
    {
        try
        {
            DurableFile.Replace(file, bytes);
            return file;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return BenchProblems.ChartNotWritten(file, fault.Message);
        }
    }
}
