namespace JarLabel.Store.Schema;

/// <summary>Opens the ledger's database: makes a new one, refuses what is not one, brings an older one up to date.</summary>
internal static class LedgerOpener
{
    private const int PageBytes = 4096;

    /// <summary>The open database, of the newest schema.</summary>
    /// <param name="folder">The shop.</param>
    /// <param name="mode">What it is opened for.</param>
    internal static Result<Database> Open(ShopFolder folder, LedgerMode mode)
    {
        var file = folder.LedgerFile;
        if (!File.Exists(file))
        {
            if (Missing(folder, mode) is { Count: > 0 } problems)
            {
                return Result<Database>.Failed(problems);
            }

            if (mode == LedgerMode.Read && !File.Exists(file))
            {
                return Empty();
            }
        }

        return IsCutOff(file) ? StoreProblems.Damaged(folder.Ledger, "the file is cut off") : OpenFile(folder, file, mode);
    }

    /// <summary>Where there is no ledger: makes one to record in; a problem where there was one, or none can be made.</summary>
    private static Faults Missing(ShopFolder folder, LedgerMode mode)
    {
        using var turn = RestoreTurn.WaitFor(folder);
        if (File.Exists(folder.LedgerFile))
        {
            return default;
        }

        if (Restore.LastSetAside(folder) is { } aside)
        {
            return new Faults([StoreProblems.RestoreBroken(folder.Ledger, aside)]);
        }

        if (WhatIsLeft(folder) is { } left)
        {
            return new Faults([StoreProblems.LedgerMissing(folder.Ledger, left)]);
        }

        if (mode == LedgerMode.Read)
        {
            return folder.IsNamed && !folder.Exists ? new Faults([StoreProblems.NoSuchShop(folder.Path)]) : default;
        }

        return folder.Create().TryGet(out _, out var problems) && LedgerMaker.Make(folder).TryGet(out _, out problems) ? default : problems;
    }

    /// <summary>Opens a copy that nobody else knows of yet, and brings it up to date.</summary>
    internal static Database OpenCopy(string part, string source)
    {
        var copy = Database.Open(part, SqliteOpenMode.ReadWrite);
        try
        {
            BringUpToDate(copy, source);
            return copy;
        }
        catch
        {
            copy.Dispose();
            throw;
        }
    }

    /// <summary>An empty database in memory, for a shop that has no ledger yet.</summary>
    internal static Result<Database> OpenEmpty(ShopFolder folder) =>
        WhatIsLeft(folder) is { } left ? StoreProblems.LedgerMissing(folder.Ledger, left) : Empty();

    /// <summary>Takes the steps the database lacks, each in one transaction.</summary>
    private static void BringUpToDate(Database database, string ledger)
    {
        while (SchemaOf(database) < Migrations.Newest)
        {
            if (!database.TryBeginWriting(Patience.ToWrite))
            {
                throw new LedgerFault(StoreProblems.Held(ledger, Patience.ToWrite));
            }

            TakeStep(database, SchemaOf(database));
            database.Commit();
        }
    }

    private static Database Empty()
    {
        var database = Database.Open(":memory:", SqliteOpenMode.Memory);
        BringUpToDate(database, ":memory:");
        return database;
    }

    /// <summary>A sign that there was a ledger here, or null. Its write-ahead log may hold events, and labels bear numbers.</summary>
    private static string? WhatIsLeft(ShopFolder folder)
    {
        if (new FileInfo(folder.Ledger).LinkTarget is { } target)
        {
            return $"the link \"ledger.db\" to {target}";
        }

        if (File.Exists(LeftLog.Of(folder.Ledger)))
        {
            return "its log \"ledger.db-wal\"";
        }

        return File.Exists(folder.Numbers)
            ? "the list of its last numbers \"numbers.txt\""
            : Directory.Exists(folder.Labels) && Directory.EnumerateFiles(folder.Labels).FirstOrDefault() is { } label
                ? $"the label \"{Path.GetFileName(label)}\""
                : null;
    }

    /// <summary>Without a log beside it the file is always whole pages. The database itself would take less than one for an empty
    /// database, and a page that lacks its end for one that ends in zeros.</summary>
    private static bool IsCutOff(string file)
    {
        var logged = File.Exists(LeftLog.Of(file));
        var length = new FileInfo(file).Length;
        return length < PageBytes || (!logged && length % PageBytes != 0);
    }

    /// <summary>Opens it; once more when meanwhile a backup came into its place, since the opened file is then the one that was moved aside.</summary>
    private static Result<Database> OpenFile(ShopFolder folder, string file, LedgerMode mode)
    {
        while (true)
        {
            var restores = RestoreTurn.Count(folder);
            var opened = OpenOnce(folder, file, mode);
            if (RestoreTurn.Count(folder) == restores)
            {
                return opened;
            }

            if (opened.TryGet(out var database, out _))
            {
                database.Dispose();
            }
        }
    }

    private static Result<Database> OpenOnce(ShopFolder folder, string file, LedgerMode mode)
    {
        var still = false;
        if (File.Exists(LeftLog.Of(file)))
        {
            if (!LogCheck.Of(file, folder.Ledger).TryGet(out var found, out var problems))
            {
                return Result<Database>.Failed(problems);
            }

            if (mode == LedgerMode.Write && found == LogVerdict.Damaged)
            {
                return StoreProblems.Damaged(folder.Ledger, "its events, its lists and the log beside it do not fit together");
            }

            still = mode == LedgerMode.Read && found != LogVerdict.Own;
        }

        return OpenFile(folder, file, mode, still);
    }

    private static Result<Database> OpenFile(ShopFolder folder, string file, LedgerMode mode, bool still)
    {
        Database? database = null;
        try
        {
            database = mode == LedgerMode.Write ? Database.Open(file, SqliteOpenMode.ReadWrite) : still ? OpenStill(file, folder.Ledger) : OpenToRead(file, folder.Ledger);
            if (mode == LedgerMode.Write && database.CannotWrite)
            {
                throw new LedgerFault(StoreProblems.ShopReadOnly(folder.Path));
            }

            MakeReady(database, folder.Ledger, mode);
            return database;
        }
        catch (Exception fault) when (StoreFaults.Told(fault, folder.Ledger) is { } problem)
        {
            database?.Dispose();
            return problem;
        }
    }

    private static void MakeReady(Database database, string ledger, LedgerMode mode)
    {
        if (Refusal(database, ledger) is { } problem)
        {
            throw new LedgerFault(problem);
        }

        if (mode == LedgerMode.Write)
        {
            MakeSafe(database);
        }

        BringUpToDate(database, ledger);
    }

    /// <summary>SQLite keeps a list of the log beside the ledger, even to read. On a full disk, or a medium that cannot be written, there is
    /// no room for it, and nobody who writes the ledger; then it is read as it stands.</summary>
    private static Database OpenToRead(string file, string ledger)
    {
        Database? database = null;
        try
        {
            database = Database.Open(file, SqliteOpenMode.ReadWrite);
            database.Number("SELECT count(*) FROM sqlite_schema");
            return database;
        }
        catch (SqliteException fault) when (IsAboutWriting(fault))
        {
            database?.Dispose();
            return OpenStill(file, ledger);
        }
    }

    /// <summary>The ledger as it stands, with what its log holds, if there is one. Nothing is written and nothing locked.</summary>
    private static Database OpenStill(string file, string ledger)
    {
        try
        {
            return LeftLog.Stands(file) ? Database.OpenBytes(LeftLog.Merged(file)) : Database.OpenAlone(file);
        }
        catch (Exception fault) when (fault is OverflowException or OutOfMemoryException)
        {
            throw new LedgerFault(StoreProblems.TooLargeToHold(ledger));
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            throw new LedgerFault(StoreProblems.DiskFails(ledger, fault.Message));
        }
    }

    /// <summary>True when a fault comes from a place where nothing can be written.</summary>
    internal static bool IsAboutWriting(SqliteException fault) =>
        fault.SqliteErrorCode is raw.SQLITE_CANTOPEN or raw.SQLITE_READONLY or raw.SQLITE_IOERR or raw.SQLITE_FULL;

    /// <summary>Why a database is not to be opened, what is damaged included; null when nothing speaks against it.</summary>
    internal static Problem? RefusalOrDamage(Database database, string ledger)
    {
        try
        {
            return Refusal(database, ledger);
        }
        catch (Exception fault) when (StoreFaults.Told(fault, ledger) is { } problem)
        {
            return problem;
        }
    }

    private static Problem? Refusal(Database database, string ledger)
    {
        if (database.Number("PRAGMA application_id") != Migrations.ApplicationId)
        {
            return StoreProblems.NotOurs(ledger);
        }

        var schema = SchemaOf(database);
        return schema > Migrations.Newest ? StoreProblems.Newer(ledger, schema, Migrations.Newest) : null;
    }

    /// <summary>Every commit waits until the disk has it: an accepted event survives a power cut.</summary>
    private static void MakeSafe(Database database)
    {
        database.Execute("PRAGMA journal_mode = WAL");
        database.Execute("PRAGMA synchronous = FULL");
        database.Execute("PRAGMA fullfsync = ON");
        database.Execute("PRAGMA foreign_keys = ON");
    }

    /// <summary>Takes the step from one version to the next, inside the caller's transaction.</summary>
    private static void TakeStep(Database database, int from)
    {
        if (from >= Migrations.Newest)
        {
            return;
        }

        database.Run(Migrations.Steps[from]);
        database.Run(string.Create(CultureInfo.InvariantCulture, $"PRAGMA user_version = {from + 1}"));
    }

    /// <summary>The version of a ledger.</summary>
    internal static int SchemaOf(Database database) => (int)database.Number("PRAGMA user_version");
}
