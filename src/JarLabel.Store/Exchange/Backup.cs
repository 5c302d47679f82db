using JarLabel.Core;
using JarLabel.Store.Files;
using JarLabel.Store.Schema;
using Microsoft.Data.Sqlite;

namespace JarLabel.Store.Exchange;

/// <summary>A whole copy of the ledger in one file, taken while others work on it: the ledger as of one moment. Put in the place of
/// <c>ledger.db</c> it is a ledger again.</summary>
internal sealed class Backup(Database database, EventTable events, string ledger)
{
    /// <summary>Writes the copy beside its place, reads it back, and moves it.</summary>
    internal Result<BackupReport> Write(string target)
    {
        var place = Path.GetFullPath(target);
        if (Refusal(place) is { } problem)
        {
            return problem;
        }

        var part = DurableFile.PartBeside(place);
        try
        {
            database.Execute("VACUUM INTO $1", part);
            return Flush(part, Seen(part)).Then<BackupReport>(seen => Moved(part, place, seen));
        }
        catch (SqliteException fault) when (StoreFaults.Told(fault, ledger) is { Code: not "JL410" })
        {
            return ExchangeProblems.NotWritten(place, fault.Message);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return ExchangeProblems.NotWritten(place, fault.Message);
        }
        finally
        {
            File.Delete(part);
        }
    }

    /// <summary>Only a backup of the same shop is written over.</summary>
    private Problem? Refusal(string place)
    {
        if (place == ledger || Directory.Exists(place) || !Directory.Exists(Path.GetDirectoryName(place)))
        {
            return ExchangeProblems.NotAPlace(place);
        }

        return File.Exists(place) && (!Seen(place).TryGet(out var seen, out _) || seen.LedgerId != events.LedgerId)
            ? ExchangeProblems.SomethingElse(place)
            : null;
    }

    /// <summary>What a copy holds, read from it.</summary>
    private static Result<BackupReport> Seen(string copy)
    {
        try
        {
            using var written = Database.Open(copy, SqliteOpenMode.ReadOnly);
            var held = new EventTable(written, copy);
            return written.Number("PRAGMA application_id") == Migrations.ApplicationId
                ? new BackupReport(copy, held.LedgerId, held.All().LongCount())
                : StoreProblems.NotOurs(copy);
        }
        catch (Exception fault) when (StoreFaults.Told(fault, copy) is { } problem)
        {
            return problem;
        }
    }

    private static Result<BackupReport> Flush(string part, Result<BackupReport> seen)
    {
        using var stream = new FileStream(part, FileMode.Open, FileAccess.ReadWrite);
        stream.Flush(flushToDisk: true);
        return seen;
    }

    private static BackupReport Moved(string part, string place, BackupReport seen)
    {
        DurableFile.MoveInto(part, place);
        return seen with { File = place };
    }
}
