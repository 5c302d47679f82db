namespace JarLabel.Store.Schema;

/// <summary>Before a ledger is opened beside which a log lies: does the log belong to it? SQLite would take any, and spoil the ledger with the
/// log of another one, such as that of the ledger in whose place a backup was put. The look changes no byte of either file.</summary>
internal static class LogCheck
{
    /// <summary>Looks, or gives the problem for which nothing is to be opened. One program looks after the other: a ledger that is being looked
    /// at would seem to be in use.</summary>
    internal static Result<LogVerdict> Of(string file, string ledger)
    {
        try
        {
            using var turn = PatientFile.Open(LeftLog.Of(file), FileMode.Open, FileAccess.Read, FileShare.None, Patience.ToReach);
            using var held = Database.OpenHeld(file);
            return held.CannotWrite ? LogVerdict.Still : Judge(held, file, ledger);
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode is raw.SQLITE_BUSY or raw.SQLITE_LOCKED)
        {
            return LogVerdict.Own;
        }
        catch (SqliteException fault) when (LedgerOpener.IsAboutWriting(fault))
        {
            return LogVerdict.Still;
        }
        catch (FileNotFoundException)
        {
            return LogVerdict.Own;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return StoreProblems.DiskFails(ledger, fault.Message);
        }
        catch (Exception fault) when (StoreFaults.Told(fault, ledger) is { } problem)
        {
            return problem;
        }
    }

    private static Result<LogVerdict> Judge(Database both, string file, string ledger)
    {
        Reach(both);
        var refused = LedgerOpener.RefusalOrDamage(both, ledger);
        if (!LeftLog.Stands(file) || refused?.Code == StoreProblems.NewerCode)
        {
            return refused is null || refused.Code == StoreProblems.DamagedCode ? LogVerdict.Own : refused;
        }

        using var alone = Database.OpenAlone(file);
        if (refused is null && !LeftLog.IsDisowned(file) && WholeLedger.IsWhole(both, ledger) && WholeLedger.Continues(both, alone, ledger))
        {
            return LogVerdict.Own;
        }

        if (WholeLedger.IsWhole(alone, ledger))
        {
            return StoreProblems.LogNotOurs(ledger, LeftLog.Of(file));
        }

        return refused is null || refused.Code == StoreProblems.DamagedCode ? LogVerdict.Damaged : refused;
    }

    /// <summary>Takes the lock and reads the log; what is damaged shows later.</summary>
    private static void Reach(Database both)
    {
        try
        {
            both.Number("SELECT count(*) FROM sqlite_schema");
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode is raw.SQLITE_CORRUPT or raw.SQLITE_NOTADB or raw.SQLITE_FORMAT)
        {
            // It has the lock all the same.
        }
    }
}
