using System.Globalization;
using JarLabel.Core;
using JarLabel.Store.Shops;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace JarLabel.Store.Schema;

/// <summary>Opens the ledger's database: makes a new one, refuses what is not one, brings an older one up to date.</summary>
internal static class LedgerDoor
{
    private const int PageBytes = 4096;

    /// <summary>The open database, of the newest schema.</summary>
    /// <param name="folder">The shop.</param>
    /// <param name="mode">What it is opened for.</param>
    internal static Result<Database> Open(ShopFolder folder, LedgerMode mode)
    {
        if (!File.Exists(folder.Ledger))
        {
            if (WhatIsLeft(folder) is { } left)
            {
                return StoreProblems.LedgerMissing(folder.Ledger, left);
            }

            if (mode == LedgerMode.Read)
            {
                return folder.IsNamed && !folder.Exists ? StoreProblems.NoSuchShop(folder.Path) : Empty();
            }

            if (!folder.Create().TryGet(out _, out var problems) || !LedgerMaker.Make(folder).TryGet(out _, out problems))
            {
                return Result<Database>.Failed(problems);
            }
        }

        return IsCutOff(folder.Ledger) ? StoreProblems.Damaged(folder.Ledger, "the file is cut off") : OpenFile(folder, mode);
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
        if (File.Exists(folder.Ledger + "-wal"))
        {
            return "its log \"ledger.db-wal\"";
        }

        return Directory.Exists(folder.Labels) && Directory.EnumerateFiles(folder.Labels).FirstOrDefault() is { } label
            ? $"the label \"{Path.GetFileName(label)}\""
            : null;
    }

    /// <summary>Without a log beside it the file is always whole pages. The database itself would take less than one for an empty
    /// database, and a page that lacks its end for one that ends in zeros.</summary>
    private static bool IsCutOff(string ledger)
    {
        var logged = File.Exists(ledger + "-wal");
        var length = new FileInfo(ledger).Length;
        return length < PageBytes || (!logged && length % PageBytes != 0);
    }

    private static Result<Database> OpenFile(ShopFolder folder, LedgerMode mode)
    {
        Database? database = null;
        try
        {
            database = mode == LedgerMode.Read ? OpenToRead(folder.Ledger) : Database.Open(folder.Ledger, SqliteOpenMode.ReadWrite);
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

    /// <summary>A database on a medium that cannot be written has no log beside it and nobody who writes it; it is read as it stands.</summary>
    private static Database OpenToRead(string ledger)
    {
        Database? database = null;
        try
        {
            database = Database.Open(ledger, SqliteOpenMode.ReadWrite);
            database.Number("SELECT count(*) FROM sqlite_schema");
            return database;
        }
        catch (SqliteException fault) when (IsAboutWriting(fault) && !File.Exists(ledger + "-wal"))
        {
            database?.Dispose();
            return Database.Open($"file:{Uri.EscapeDataString(ledger)}?immutable=1", SqliteOpenMode.ReadOnly);
        }
    }

    private static bool IsAboutWriting(SqliteException fault) =>
        fault.SqliteErrorCode is raw.SQLITE_CANTOPEN or raw.SQLITE_READONLY or raw.SQLITE_IOERR or raw.SQLITE_FULL;

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

    private static int SchemaOf(Database database) => (int)database.Number("PRAGMA user_version");
}
