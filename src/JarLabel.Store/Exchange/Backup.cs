namespace JarLabel.Store.Exchange;

/// <summary>The whole shop in one file, taken while others work on it: the ledger as of one moment, and the shop's own files. Put in the
/// place of <c>ledger.db</c> it is a ledger again.</summary>
internal sealed class Backup(Database database, EventTable events, ShopFolder folder)
{
    private readonly string ledger = folder.Ledger;

    /// <summary>Writes the copy beside its place, reads it back, and moves it.</summary>
    /// <param name="target">The place.</param>
    /// <param name="force">True to write over a file that is no backup of this shop.</param>
    /// <param name="write">False only to look whether it could.</param>
    internal Result<BackupReport> Write(string target, bool force, bool write) =>
        Look(target, force).Then(place => write ? Write(place) : new BackupReport(place.Path, events.LedgerId, events.Count));

    private Result<GuardedPlace> Look(string target, bool force)
    {
        var place = Path.GetFullPath(target);
        if (place == ledger || Directory.Exists(place) || !Directory.Exists(Path.GetDirectoryName(place)))
        {
            return ExchangeProblems.NotAPlace(place);
        }

        return new FileGuard(folder).Look(place, OwnKind.None, force: true).Then<GuardedPlace>(guarded => Refusal(guarded, force) is { } problem ? problem : guarded);
    }

    private Result<BackupReport> Write(GuardedPlace place)
    {
        try
        {
            using var part = new PartFile(place.Real);
            return Write(part, place);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return ExchangeProblems.NotWritten(place.Path, DiskCause.Why(place.Path, fault));
        }
    }

    private Result<BackupReport> Write(PartFile part, GuardedPlace place)
    {
        try
        {
            database.Execute("VACUUM INTO $1", part.Path);
            using (var copy = Database.Open(part.Path, SqliteOpenMode.ReadWrite))
            {
                CarriedFiles.Put(copy, folder);
            }

            part.Stream.FlushToDisk();
            return Seen(part.Path).Then<BackupReport>(seen => place.Receive(part.Path) is { } problem ? problem : Kept(seen with { File = place.Path }));
        }
        catch (SqliteException fault) when (StoreFaults.Told(fault, ledger) is { Code: not "JL410" })
        {
            return ExchangeProblems.NotWritten(place.Path, DiskCause.Why(part.Path, fault));
        }
    }

    private static BackupReport Kept(BackupReport report)
    {
        KeptWork.Add($"the file \"{report.File}\"");
        return report;
    }

    /// <summary>Unasked, only a backup of the same shop is written over.</summary>
    private Problem? Refusal(GuardedPlace place, bool force) =>
        !force && place.Seen is { Length: > 0 } && (!Seen(place.Real).TryGet(out var seen, out _) || seen.LedgerId != events.LedgerId)
            ? ExchangeProblems.SomethingElse(place.Path)
            : null;

    /// <summary>What a copy holds, read from it.</summary>
    private static Result<BackupReport> Seen(string copy)
    {
        try
        {
            using var written = Database.Open(copy, SqliteOpenMode.ReadOnly);
            var held = new EventTable(written, copy);
            return written.Number("PRAGMA application_id") != Migrations.ApplicationId || !CarriedFiles.AreSound(written)
                ? StoreProblems.NotOurs(copy)
                : new BackupReport(copy, held.LedgerId, held.All().LongCount()) { Files = CarriedFiles.In(written) };
        }
        catch (Exception fault) when (StoreFaults.Told(fault, copy) is { } problem)
        {
            return problem;
        }
    }
}

/// <summary>A backup that was written and read back, every seal checked.</summary>
/// <param name="File">Where it is.</param>
/// <param name="LedgerId">Whose it is.</param>
/// <param name="Events">How many events it holds.</param>
public sealed record BackupReport(string File, string LedgerId, long Events)
{
    /// <summary>The shop's own files in it, by their paths in the shop folder; empty for one that is not written yet.</summary>
    public IReadOnlyList<string> Files { get; init; } = [];
}
