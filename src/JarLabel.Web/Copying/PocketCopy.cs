using JarLabel.Store.Files;

namespace JarLabel.Web.Copying;

/// <summary>Writes the jars' pages as files that need no server: for a stick, or for any place that the codes on the labels lead to.</summary>
public static class PocketCopy
{
    /// <summary>Shows that a folder is a copy, which may be written over.</summary>
    private const string Mark = "jarlabel-copy.txt";

    /// <summary>Writes the copy; or says why not.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="folder">A new or empty folder, or one with an earlier copy.</param>
    public static Result<CopyReport> Write(Workbench bench, string folder)
    {
        var guard = new FileGuard(bench.Folder);
        return guard.LookAtFolder(folder).Then(full =>
        {
            try
            {
                return InUse(full) ? WebProblems.FolderInUse(full) : Pages(bench).Then(pages => Keep(bench, guard, full, pages));
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                return WebProblems.CopyNotWritten(full, fault.Message);
            }
        });
    }

    private static bool InUse(string folder) =>
        File.Exists(folder) || (Directory.Exists(folder) && Directory.EnumerateFileSystemEntries(folder).Any() && !File.Exists(Path.Combine(folder, Mark)));

    private static Result<List<(string File, string Html)>> Pages(Workbench bench)
    {
        var pages = new List<(string, string)>();
        if (!LedgerAccess.Read(bench, view => Result<IReadOnlyList<int>>.Of(view.Numbers(SubjectKind.Jar))).TryGet(out var jars, out var problems))
        {
            return Result<List<(string, string)>>.Failed(problems);
        }

        foreach (var number in jars)
        {
            if (!Jar(bench, JarNumber.From(number), pages).TryGet(out _, out problems))
            {
                return Result<List<(string, string)>>.Failed(problems);
            }
        }

        return Shelf(bench).Then(list =>
        {
            pages.Add(("index.html", ShelfPage.Still(bench, list)));
            return Result<List<(string, string)>>.Of(pages);
        });
    }

    /// <summary>A page under the jar's number and one under each revision that a label may speak of.</summary>
    private static Result<int> Jar(Workbench bench, JarNumber jar, List<(string, string)> pages)
    {
        var revisions = 0;
        for (var revision = 0; revision <= revisions; revision++)
        {
            var name = revision == 0 ? $"{jar}" : string.Create(CultureInfo.InvariantCulture, $"{jar}.{revision}");
            if (!Reading.Find(bench, name).TryGet(out var found, out var problems))
            {
                return Result<int>.Failed(problems);
            }

            revisions = found.Jar.History.Jar.Revision;
            pages.Add(($"J/{name}/index.html", JarPage.Of(bench, found, Frame.Still("../../index.html"), still: true, Frame.StillHead)));
        }

        return revisions;
    }

    private static Result<ShelfList> Shelf(Workbench bench) => LedgerAccess.Read(bench, view =>
    {
        JarEntry[] jars = [.. view.Standing()];
        return ShelfKnowledge.Of(bench, view, jars).Then<ShelfList>(known => new ShelfList(jars, known) { OldLabels = view.OldLabels(jars.Select(jar => jar.Number)) });
    });

    private static Result<CopyReport> Keep(Workbench bench, FileGuard guard, string folder, List<(string File, string Html)> pages)
    {
        foreach (var (file, html) in pages.Prepend((Mark, $"A copy of the pages of jars as of {bench.Now:yyyy-MM-dd HH:mm}. \"jarlabel publish\" writes it anew.\n")))
        {
            if (Keep(bench, guard, Path.Combine(folder, file), html) is { } problem)
            {
                return problem;
            }
        }

        return new CopyReport(folder, pages.Count, pages.Sum(page => (long)Encoding.UTF8.GetByteCount(page.Html)));
    }

    /// <summary>Writes one page, or looks whether it could; a page that stands there from an earlier copy is written over.</summary>
    private static Problem? Keep(Workbench bench, FileGuard guard, string file, string html)
    {
        if (!guard.Look(file, OwnKind.Web, bench.Force).TryGet(out var place, out var problems))
        {
            return problems[0];
        }

        if (bench.DryRun)
        {
            return null;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        return DurableFile.Write(place, stream => stream.Write(Encoding.UTF8.GetBytes(html)));
    }
}

/// <summary>What was written.</summary>
/// <param name="Folder">Where, in full.</param>
/// <param name="Pages">How many pages.</param>
/// <param name="Bytes">Their size.</param>
public sealed record CopyReport(string Folder, int Pages, long Bytes);
