using System.Globalization;
using JarLabel.Core;
using JarLabel.Store.Checking;
using JarLabel.Store.Files;
using JarLabel.Store.Index;
using JarLabel.Store.Shops;
using Microsoft.Data.Sqlite;

namespace JarLabel.Store.Schema;

/// <summary>Makes a new ledger aside and moves it into place when it is whole, so that a ledger that is there is always a real one:
/// an empty or headless file is then damage, never a ledger in the making.</summary>
internal static class LedgerMaker
{
    /// <summary>Makes the ledger unless another program is quicker.</summary>
    internal static Result<string> Make(ShopFolder folder, int reader)
    {
        var aside = Path.Combine(folder.Staging, $"{Guid.NewGuid():N}.new");
        try
        {
            Directory.CreateDirectory(folder.Staging);
            Fill(aside, reader);
            File.Move(aside, folder.Ledger, overwrite: false);
            FolderSync.Flush(folder.Path);
            return folder.Ledger;
        }
        catch (Exception) when (File.Exists(folder.Ledger))
        {
            return folder.Ledger;
        }
        catch (Exception fault) when (StoreFaults.Told(fault, folder.Ledger) is { } problem)
        {
            return problem;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return StoreProblems.ShopReadOnly(folder.Path);
        }
        finally
        {
            File.Delete(aside);
        }
    }

    private static void Fill(string aside, int reader)
    {
        FillUnseen(aside, reader);
        using var made = File.OpenHandle(aside, FileMode.Open, FileAccess.ReadWrite);
        RandomAccess.FlushToDisk(made);
    }

    // Nobody sees the file before it is moved, so its steps need not wait for the disk or for others one by one: one flush at the end
    // does. It is left in write-ahead mode, as every ledger is.
    private static void FillUnseen(string aside, int reader)
    {
        using var database = Database.Open(aside, SqliteOpenMode.ReadWriteCreate);
        database.Run("PRAGMA synchronous = OFF; PRAGMA locking_mode = EXCLUSIVE; PRAGMA journal_mode = MEMORY; PRAGMA page_size = 4096; BEGIN");
        database.Run(string.Create(CultureInfo.InvariantCulture, $"PRAGMA application_id = {Migrations.ApplicationId}"));
        for (var from = 0; from < Migrations.Newest; from++)
        {
            LedgerDoor.TakeStep(database, from);
        }

        database.Execute("INSERT INTO about VALUES (1, $1)", Guid.NewGuid().ToString("N"));
        JarIndex.Stamp(database, reader, 0, EventChain.Start);
        database.Run("COMMIT; PRAGMA journal_mode = WAL");
    }
}
