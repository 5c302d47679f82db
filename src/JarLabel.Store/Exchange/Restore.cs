namespace JarLabel.Store.Exchange;

/// <summary>Brings a backup back.</summary>
public static class Restore
{
    /// <summary>The ledger that a restore set aside last, where it ended before it put the other in place; null where none did.</summary>
    internal static string? LastSetAside(ShopFolder folder)
    {
        var beside = Path.GetDirectoryName(folder.LedgerFile)!;
        return Directory.Exists(beside) ? Directory.EnumerateFiles(beside, "ledger-*.db").MaxBy(File.GetLastWriteTimeUtc) : null;
    }

    /// <summary>Puts a copy of a backup in the ledger's place; what stands there is kept under another name.</summary>
    public static Result<RestoreReport> Do(ShopFolder folder, RestoreWish wish, IJarReader reader) =>
        new Restoring(folder, reader, wish).Run();
}

/// <summary>Puts a copy of a backup in the ledger's place. The backup is checked first and stays where it is; what stood here, with the log that
/// belongs to it, is kept under a name with the moment in it. A program that is killed meanwhile leaves the old ledger or none, never a
/// new one with the old one's log; the same command then goes on.</summary>
internal sealed class Restoring(ShopFolder folder, IJarReader reader, RestoreWish wish)
{
    private const string LogEnd = "-wal";
    private const string SharedEnd = "-shm";
    private readonly string file = folder.LedgerFile;
    private readonly List<string> aside = [];

    internal Result<RestoreReport> Run()
    {
        var source = LedgerAt(Path.GetFullPath(wish.File));
        try
        {
            if (!File.Exists(source))
            {
                return ExchangeProblems.NotReadable(source, "there is no such file.");
            }

            // A folder is not begun for a backup that cannot be put into it.
            return wish.DryRun ? Work(source, null)
                : Directory.Exists(folder.Path) || Work(source, null) is { Ok: true } ? folder.Create().Then(_ => InTurn(source))
                : Work(source, null);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return RestoreProblems.Stuck(folder.Ledger, DiskCause.Why(folder.Ledger, fault), aside);
        }
        catch (Exception fault) when (StoreFaults.Told(fault, source) is { } problem)
        {
            return problem;
        }
    }

    private Result<RestoreReport> InTurn(string source)
    {
        using var turn = RestoreTurn.Take(folder);
        return turn is null ? StoreProblems.Held(folder.Ledger, Patience.ToWrite) : Work(source, turn);
    }

    private Result<RestoreReport> Work(string source, FileStream? turn) => source == file ? DropLog(turn) : Put(source, turn);

    /// <summary>The backup was put in place by hand, beside the log of what stood there before: only that log is moved.</summary>
    private Result<RestoreReport> DropLog(FileStream? turn)
    {
        if (!StandingLedger.Hold(file, folder.Ledger).TryGet(out var standing, out var problems))
        {
            return Result<RestoreReport>.Failed(problems);
        }

        using (standing)
        {
            using var alone = Database.OpenAlone(file);
            if (!WholeLedger.IsWhole(alone, folder.Ledger))
            {
                return RestoreProblems.NotWhole(file);
            }

            var events = new EventTable(alone, folder.Ledger);
            if (standing.InOrder)
            {
                return RestoreProblems.NothingToDo(folder.Ledger, standing.Events);
            }

            MoveAside(turn, [LogEnd, SharedEnd]);
            return Report(file, events);
        }
    }

    private Result<RestoreReport> Put(string source, FileStream? turn)
    {
        using var backup = Open(source);
        if (!WholeLedger.IsWhole(backup, source) || !CarriedFiles.AreSound(backup))
        {
            return RestoreProblems.NotWhole(source);
        }

        using var part = turn is null ? null : new PartFile(file);
        return (part is null ? RestoredCopy.Faults(backup, source, reader, folder) : Copy(backup, part, source)) is { Count: > 0 } faults
            ? Result<RestoreReport>.Failed([RestoreProblems.NotWhole(source), .. faults])
            : Exchange(source, backup, part, turn);
    }

    /// <summary>Writing is done on the shop's disk, and what that refuses is told of the shop's ledger.</summary>
    private IReadOnlyList<Problem> Copy(Database backup, PartFile part, string source)
    {
        try
        {
            return RestoredCopy.Write(backup, part, source, reader, folder);
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode is raw.SQLITE_FULL or raw.SQLITE_IOERR)
        {
            throw new LedgerFault(DiskCause.Told(folder.Ledger, fault, part.Path));
        }
    }

    private Result<RestoreReport> Exchange(string source, Database backup, PartFile? part, FileStream? turn)
    {
        if (!StandingLedger.Hold(file, folder.Ledger).TryGet(out var standing, out var problems))
        {
            return Result<RestoreReport>.Failed(problems);
        }

        using (standing)
        {
            var events = new EventTable(backup, source);
            if (Refusal(standing, events, source) is { } problem)
            {
                return problem;
            }

            if (turn is not null)
            {
                var numbers = new GivenNumbers(folder);
                numbers.RaiseFromLabels();
                numbers.Raise(standing.Numbers);
            }

            var (brought, stayed) = CarriedFiles.Bring(backup, folder, write: turn is not null);
            MoveAside(turn, standing.HasLog ? ["", LogEnd, SharedEnd] : ["", SharedEnd]);
            if (turn is not null && part is not null)
            {
                File.Move(part.Path, file, overwrite: false);
                FolderSync.Flush(Path.GetDirectoryName(file)!);
                Count(turn);
            }

            return Report(source, events) with { Brought = brought, Stayed = stayed };
        }
    }

    private Problem? Refusal(StandingLedger standing, EventTable backup, string source)
    {
        if (wish.Force)
        {
            return null;
        }

        return standing.LedgerId is { } id && standing.Events > 0 && id != backup.LedgerId
            ? RestoreProblems.OtherShop(source, folder.Ledger)
            : standing.InOrder && standing.Events > 0 ? RestoreProblems.InOrder(folder.Ledger, standing.Events) : null;
    }

    /// <summary>The ledger first: while it is gone and its log still here, nobody can take the one without the other.</summary>
    private void MoveAside(FileStream? turn, IReadOnlyList<string> ends)
    {
        var kept = FreeName();
        if (turn is not null)
        {
            Count(turn);
        }

        foreach (var end in ends)
        {
            if (File.Exists(file + end))
            {
                if (turn is not null)
                {
                    File.Move(file + end, kept + end, overwrite: false);
                    FolderSync.Flush(Path.GetDirectoryName(file)!);
                }

                aside.Add(kept + end);
            }
        }

        if (turn is not null && !ends.Contains(LogEnd))
        {
            File.Delete(file + LogEnd); // the empty one that SQLite made to hold the ledger
        }
    }

    /// <summary>ledger-2026-03-09-143000.db, with a number where there is one already.</summary>
    private string FreeName()
    {
        var name = Path.Combine(Path.GetDirectoryName(file)!, $"ledger-{wish.Now.ToString("yyyy-MM-dd-HHmmss", CultureInfo.InvariantCulture)}");
        for (var more = 1; ; more++)
        {
            var free = more == 1 ? name + ".db" : string.Create(CultureInfo.InvariantCulture, $"{name}-{more}.db");
            if (!File.Exists(free) && !File.Exists(free + "-wal") && !File.Exists(free + "-shm"))
            {
                return free;
            }
        }
    }

    /// <summary>Tells programs that are just opening the ledger that it is another file now.</summary>
    private static void Count(FileStream turn)
    {
        turn.Seek(0, SeekOrigin.End);
        turn.WriteByte((byte)'.');
        turn.Flush();
    }

    private RestoreReport Report(string source, EventTable events)
    {
        var numbers = new GivenNumbers(folder);
        var missing = from kind in SubjectWords.OnGlass
                      let here = events.Highest(kind)
                      let ever = numbers.Last(kind)
                      where ever > here
                      select StoreProblems.NumbersMissing(kind, here + 1, ever);
        return new RestoreReport(source, folder.Ledger, events.LedgerId, events.Count, aside, [.. missing]);
    }

    /// <summary>The backup with its own log, if somebody left one beside it that belongs to it.</summary>
    private static Database Open(string source)
    {
        if (LeftLog.Stands(source) && !LeftLog.IsDisowned(source))
        {
            var both = Database.OpenBytes(LeftLog.Merged(source));
            if (WholeLedger.IsWhole(both, source))
            {
                return both;
            }

            both.Dispose();
        }

        return Database.OpenAlone(source);
    }

    private static string LedgerAt(string path) => new FileInfo(path) is { LinkTarget: not null } link ? link.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? path : path;
}

/// <summary>Why a backup cannot be put in the ledger's place.</summary>
internal static class RestoreProblems
{
    internal static Problem NotWhole(string backup) =>
        new("JL457", Message.Of($"This is not a whole ledger, so it was not put in place, and nothing was changed. Try another backup, such as {new Remedy("restore", new InputName("file", "ledger-backup.db"))}."), backup);

    internal static Problem InOrder(string ledger, long events) =>
        new("JL458", Message.Of($"The ledger that stands here is in order and holds {events} events, so it was left in its place. With {new InputName("force")} the backup takes its place, and it is kept under another name."), ledger);

    internal static Problem NothingToDo(string ledger, long events) =>
        new("JL458", string.Create(CultureInfo.InvariantCulture, $"This is the ledger itself, with {events} events, and it is in order; there is nothing to put right."), ledger);

    internal static Problem OtherShop(string backup, string ledger) =>
        new("JL424", Message.Of($"This backup is of another shop than the ledger {ledger}, which gave out the same numbers to other jars. Restore it into a folder of its own, named with {new InputName("shop")}, or say {new InputName("force")}."), backup);

    internal static Problem Stuck(string ledger, string why, IReadOnlyList<string> aside) =>
        new("JL459", $"The backup could not be put in place: {why}{(aside.Count == 0 ? " Nothing was changed." : $" What stood here is kept as {string.Join(", ", aside)}.")} Mend that, then give the same command again.", ledger);
}

/// <summary>A backup that was checked and stands in the ledger's place.</summary>
/// <param name="File">The backup.</param>
/// <param name="Ledger">The ledger it is now.</param>
/// <param name="LedgerId">Whose it is.</param>
/// <param name="Events">How many events it holds.</param>
/// <param name="Aside">What stood there before, under the names it is kept by.</param>
/// <param name="Cautions">Numbers that were given out and that the backup does not know of.</param>
public sealed record RestoreReport(string File, string Ledger, string LedgerId, long Events, IReadOnlyList<string> Aside, IReadOnlyList<Problem> Cautions)
{
    /// <summary>The shop's own files that came back with it, by their paths in the shop folder.</summary>
    public IReadOnlyList<string> Brought { get; init; } = [];

    /// <summary>Those that stand here otherwise than in the backup, and stayed as they are.</summary>
    public IReadOnlyList<string> Stayed { get; init; } = [];
}

/// <summary>Which backup is to come into the ledger's place.</summary>
/// <param name="File">The backup.</param>
/// <param name="Now">The moment, for the name of what is moved aside.</param>
/// <param name="Force">True to put it in the place of a ledger that is in order, too.</param>
/// <param name="DryRun">True to check all and move nothing.</param>
public sealed record RestoreWish(string File, DateTime Now, bool Force = false, bool DryRun = false);
