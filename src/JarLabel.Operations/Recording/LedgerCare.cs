using JarLabel.Store.Checking;
using JarLabel.Store.Exchange;

namespace JarLabel.Operations.Recording;

/// <summary>Looks after the ledger as a whole: copies of it, and whether it is sound.</summary>
public static class LedgerCare
{
    /// <summary>Writes all events as JSON Lines.</summary>
    public static Result<ExportReport> Export(Workbench bench, string file) =>
        LedgerAccess.With(bench.Folder, LedgerMode.Read, ledger => ledger.Export(file, bench.Force, write: !bench.DryRun));

    /// <summary>Takes the events of an export: all that are new, or none and every problem with its line.</summary>
    public static Result<(ImportReport Report, IReadOnlyList<Problem> Cautions)> Import(Workbench bench, string file)
    {
        if (!LedgerAccess.ForWriting(bench, ledger => ledger.Import(file, keep: !bench.DryRun)).TryGet(out var report, out var faults))
        {
            return faults;
        }

        return bench.DryRun ? (report, []) : LedgerAccess.Read<(ImportReport, IReadOnlyList<Problem>)>(bench, view => (report, Unlisted(bench, view)));
    }

    /// <summary>An export holds what happened, not the shop's cans, grades and shelves: jars of what this shop does not list answer for the worst, and how warm they stood is not known.</summary>
    private static IReadOnlyList<Problem> Unlisted(Workbench bench, LedgerView view)
    {
        var (names, shelves) = (new SortedSet<string>(StringComparer.Ordinal), new SortedSet<string>(StringComparer.Ordinal));
        foreach (var jar in view.Standing())
        {
            names.UnionWith(jar.Grades.Where(grade => bench.Catalog.Grades.Find(grade) is null));
            names.UnionWith(jar.Solvents.Where(solvent => bench.Catalog.Solvents.Find(solvent) is null));
            if (!ShelfMoves.IsKnown(bench, jar.Shelf))
            {
                shelves.Add(jar.Shelf);
            }
        }

        return [.. names.Count == 0 ? [] : (Problem[])[OperationProblems.NotListedHere([.. names])], .. shelves.Count == 0 ? [] : (Problem[])[OperationProblems.ShelfUnknown([.. shelves])]];
    }

    /// <summary>Writes the whole shop into one file while others may go on recording.</summary>
    public static Result<BackupReport> Backup(Workbench bench, string file) =>
        LedgerAccess.With(bench.Folder, LedgerMode.Read, ledger => ledger.Backup(file, bench.Force, write: !bench.DryRun));

    /// <summary>Puts a copy of a backup in the ledger's place and keeps what stands there under another name.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="file">The backup; the ledger itself, where only a log that is not its own is to be moved away.</param>
    /// <param name="force">True to put it in the place of a ledger that is in order, too.</param>
    /// <param name="into">The shop folder it comes into; null for the shop that is open.</param>
    public static Result<RestoreReport> Restore(Workbench bench, string file, bool force, string? into = null) =>
        (into is null ? bench.Folder : ShopFolder.At(into)).Then(folder => Store.Exchange.Restore.Do(folder, new RestoreWish(file, bench.Now, force, bench.DryRun), JarReader.Instance));

    /// <summary>Checks the whole shop; damage is a failure with all of it named.</summary>
    public static Result<VerifyReport> Verify(Workbench bench)
    {
        return LedgerAccess.With(bench.Folder, LedgerMode.Read, ledger => ledger.Verify())
            .Then(report => report.Sound ? report : Result<VerifyReport>.Failed(report.Damage));
    }
}
