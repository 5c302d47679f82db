namespace JarLabel.Store.Files;

/// <summary>Why a disk refused to write: it is full, or the system lets no file grow so large. The database tells neither for sure, so the disk
/// and the limit are asked.</summary>
internal static partial class DiskCause
{
    /// <summary>The database and its log grow by less than this at once.</summary>
    private const long Step = 64 * 1024;

    /// <summary>RLIMIT_FSIZE, of the same number on Linux and macOS.</summary>
    private const int FileSize = 1;

    /// <summary>ENOSPC of Unix systems, ERROR_DISK_FULL of Windows.</summary>
    private const int NoSpace = 28, NoSpaceOfWindows = unchecked((int)0x80070070);

    /// <summary>The problem when the ledger could not be written.</summary>
    /// <param name="ledger">The ledger.</param>
    /// <param name="fault">What the database or the disk said.</param>
    /// <param name="part">The file that was being written; null for the ledger itself.</param>
    internal static Problem Told(string ledger, Exception fault, string? part = null) =>
        HasLimit(fault, part ?? ledger) is { } limit ? StoreProblems.FileLimit(ledger, limit)
        : IsFull(fault, ledger) ? StoreProblems.DiskFull(ledger)
        : StoreProblems.DiskFails(ledger, fault.Message);

    /// <summary>The same in words, for a file that is no ledger.</summary>
    internal static string Why(string part, Exception fault) =>
        HasLimit(fault, part) is not null ? FileProblems.TooLarge
        : IsFull(fault, part) ? FileProblems.DiskFull
        : fault.Message;

    /// <summary>The limit that stood in the way; null for none.</summary>
    private static long? HasLimit(Exception fault, string path) =>
        (fault is SqliteException sqlite && IsAboutWriting(sqlite)) || fault.Message == FileProblems.TooLarge ? LimitFor(path) : null;

    private static bool IsFull(Exception fault, string path) => fault switch
    {
        SqliteException { SqliteErrorCode: raw.SQLITE_FULL } => true,
        SqliteException sqlite => IsAboutWriting(sqlite) && HasNoRoom(path),
        _ => fault is IOException { HResult: NoSpace or NoSpaceOfWindows },
    };

    private static bool IsAboutWriting(SqliteException fault) => fault.SqliteErrorCode is raw.SQLITE_FULL or raw.SQLITE_IOERR
        && fault.SqliteExtendedErrorCode is not raw.SQLITE_IOERR_READ and not raw.SQLITE_IOERR_SHORT_READ;

    private static bool HasNoRoom(string path)
    {
        try
        {
            return new DriveInfo(Path.GetDirectoryName(path)!).AvailableFreeSpace < Step;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault) || fault is ArgumentException)
        {
            return false;
        }
    }

    /// <summary>The limit that a file, or what lies beside it, has come up to; null where there is none.</summary>
    private static long? LimitFor(string path) =>
        Limit() is { } limit && ((string[])["", "-wal", "-shm"]).Max(end => new FileInfo(path + end) is { Exists: true } file ? file.Length : 0) + Step > limit ? limit : null;

    private static long? Limit()
    {
        if (!OperatingSystem.IsLinux() && !OperatingSystem.IsMacOS())
        {
            return null;
        }

        Span<ulong> told = stackalloc ulong[2];
        return Ask(FileSize, told) == 0 && told[0] < long.MaxValue ? (long)told[0] : null;
    }

    [LibraryImport("libc", EntryPoint = "getrlimit")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Ask(int resource, Span<ulong> told);
}
