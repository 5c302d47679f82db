namespace JarLabel.Store;

/// <summary>Keeps a transaction's work and notes what was kept. When a disk fails after the last byte was handed to it, nobody can tell
/// whether it has the step; a write that it refuses is a step that is not kept.</summary>
internal sealed class StepKeeper(Database database, EventTable events, string ledger)
{
    /// <summary>What got events in one step is named one by one up to so many.</summary>
    private const int MostNamed = 12;

    internal void Keep()
    {
        KeptWork.Begin();
        try
        {
            database.Commit();
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode == raw.SQLITE_IOERR && fault.SqliteExtendedErrorCode != raw.SQLITE_IOERR_WRITE)
        {
            throw new LedgerFault(StoreProblems.CommitUnsure(ledger, DiskCause.Why(ledger, fault).TrimEnd('.')));
        }
        catch (SqliteException)
        {
            KeptWork.Dropped();
            throw;
        }

        KeptWork.Add(Named([.. events.Added.Distinct()]));
    }

    private static IEnumerable<string> Named(IReadOnlyCollection<Subject> all) => all.Count > MostNamed
        ? [string.Create(CultureInfo.InvariantCulture, $"events of {all.Count} jars, bags, bottles and sheets")]
        : all.Select(one => one.ToString());
}
