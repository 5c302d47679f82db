using JarLabel.Core;
using JarLabel.Store;
using JarLabel.Store.Checking;
using JarLabel.Store.Exchange;

namespace JarLabel.Bench.Recording;

/// <summary>Looks after the ledger as a whole: copies of it, and whether it is sound.</summary>
public static class LedgerCare
{
    /// <summary>Writes all events as JSON Lines.</summary>
    public static Result<ExportReport> Export(Workbench bench, string file)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return LedgerDesk.With(bench.Folder, LedgerMode.Read, ledger => ledger.Export(file, bench.Force, write: !bench.DryRun));
    }

    /// <summary>Takes the events of an export: all that are new, or none and every problem with its line.</summary>
    public static Result<ImportReport> Import(Workbench bench, string file)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return LedgerDesk.ForWriting(bench, ledger => ledger.Import(file, keep: !bench.DryRun));
    }

    /// <summary>Writes a whole copy of the ledger while others may go on recording.</summary>
    public static Result<BackupReport> Backup(Workbench bench, string file)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return LedgerDesk.With(bench.Folder, LedgerMode.Read, ledger => ledger.Backup(file, bench.Force, write: !bench.DryRun));
    }

    /// <summary>Checks the whole shop; damage is a failure with all of it named.</summary>
    public static Result<VerifyReport> Verify(Workbench bench)
    {
        ArgumentNullException.ThrowIfNull(bench);
        return LedgerDesk.With(bench.Folder, LedgerMode.Read, ledger => ledger.Verify())
            .Then(report => report.Sound ? report : Result<VerifyReport>.Failed(report.Damage));
    }
}
