namespace JarLabel.Store;

/// <summary>Which exceptions are the world's fault, and the problem each becomes. All others are ours and go on.</summary>
internal static class StoreFaults
{
    /// <summary>The problem behind an exception from the ledger's database, or null when the exception is our own fault.</summary>
    internal static Problem? Told(Exception fault, string ledger) => fault switch
    {
        LedgerFault known => known.Problem,
        SqliteException sqlite => OfDatabase(sqlite, ledger),
        _ => null,
    };

    /// <summary>True for what a disk or an operating system may refuse.</summary>
    internal static bool FromDisk(Exception fault) => fault is IOException or UnauthorizedAccessException;

    /// <summary>True when a stored value cannot be what was stored: another type, out of range, not a date.</summary>
    internal static bool FromDamage(Exception fault) =>
        fault is InvalidCastException or InvalidOperationException or FormatException or OverflowException or KeyNotFoundException or ArgumentException;

    private static Problem? OfDatabase(SqliteException fault, string ledger) => fault.SqliteErrorCode switch
    {
        raw.SQLITE_BUSY or raw.SQLITE_LOCKED or raw.SQLITE_PROTOCOL => StoreProblems.Held(ledger, Patience.ToReach),
        raw.SQLITE_FULL or raw.SQLITE_IOERR => DiskCause.Told(ledger, fault),
        raw.SQLITE_CORRUPT or raw.SQLITE_NOTADB or raw.SQLITE_FORMAT => StoreProblems.Damaged(ledger, fault.Message),
        raw.SQLITE_READONLY => StoreProblems.ShopReadOnly(Path.GetDirectoryName(ledger)!),
        raw.SQLITE_CANTOPEN or raw.SQLITE_PERM or raw.SQLITE_AUTH => StoreProblems.ShopNotReachable(ledger, fault.Message + "."),
        raw.SQLITE_ERROR when fault.Message.Contains("no such ", StringComparison.Ordinal) => StoreProblems.Damaged(ledger, fault.Message),
        _ => null,
    };
}
