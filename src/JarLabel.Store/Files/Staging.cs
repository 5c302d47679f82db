namespace JarLabel.Store.Files;

/// <summary>Files that belong to a recorded step. Each is written as a part beside its place and entered in <c>pending_files</c> within
/// the step's transaction; once that is kept, the parts are moved. After a kill the next writer finishes the moves that were entered,
/// and removes the parts that were not: a note in the staging folder leads to each.</summary>
internal sealed class Staging(ShopFolder folder, Database database)
{
    private readonly List<PendingFile> staged = [];
    private readonly List<string> notes = [];
    private readonly List<string> abandoned = [];
    private readonly FileGuard guard = new(folder);

    /// <summary>What could not be put in its place by the last <see cref="MoveStaged"/>.</summary>
    internal List<Problem> Unmoved { get; } = [];

    /// <summary>What of earlier steps <see cref="SettlePending"/> could still not put in its place.</summary>
    internal List<Problem> Waiting { get; } = [];

    /// <summary>Writes a file beside its place and enters it; throws a <see cref="LedgerFault"/> when it cannot be written.</summary>
    /// <param name="path">Where it belongs.</param>
    /// <param name="kind">What it is.</param>
    /// <param name="force">True to write over somebody else's file.</param>
    /// <param name="write">Writes its bytes.</param>
    /// <param name="isNew">True for the label of something new: if there is one already, it is on glass elsewhere and stays.</param>
    internal StagedFile Stage(string path, OwnKind kind, bool force, Action<Stream> write, bool isNew = false)
    {
        if (isNew && folder.Full(path) is var full && File.Exists(full) && !IsWritten(full))
        {
            throw new LedgerFault(StoreProblems.LabelOfUnknown(full));
        }

        var place = Look(path, kind, force);

        try
        {
            var part = BeginPart(place);
            var (hash, length) = WritePart(part, write);
            return Enter(place, part, hash, length);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            throw new LedgerFault(StoreProblems.FileNotWritten(place.Path, DiskCause.Why(place.Path, fault)));
        }
    }

    /// <summary>Looks whether a file could be staged; throws a <see cref="LedgerFault"/> when not.</summary>
    internal GuardedPlace Look(string path, OwnKind kind, bool force) =>
        guard.Look(folder.Full(path), kind, force, Recorded).TryGet(out var place, out var problems) ? place : throw new LedgerFault(problems[0]);

    /// <summary>Moves what was staged, after the transaction was kept.</summary>
    internal void MoveStaged()
    {
        Unmoved.Clear();
        var moved = new List<PendingFile>();
        foreach (var file in staged)
        {
            // A second file for the same place finds the first one there, and not what the guard saw.
            if (Move(moved.Exists(before => before.Place == file.Place) ? file with { Guarded = null } : file) is { } why)
            {
                Unmoved.Add(StoreProblems.FileNotMoved(file.Place, file.Part, why));
            }
            else
            {
                moved.Add(file);
            }
        }

        TryForget(moved);
        DropNotes();
        staged.Clear();
        abandoned.ForEach(DurableFile.DeleteQuietly);
        abandoned.Clear();
    }

    /// <summary>Lets go of what was staged without touching it, when nobody can say whether the transaction reached the disk. A later
    /// writer sees it, and finishes or removes it.</summary>
    internal void LeaveStaged()
    {
        notes.Clear();
        staged.Clear();
        abandoned.Clear();
    }

    /// <summary>Removes what was staged and not moved, after the transaction was dropped.</summary>
    internal void DropStaged()
    {
        foreach (var file in staged)
        {
            DurableFile.DeleteQuietly(file.Part);
        }

        DropNotes();
        LeaveStaged();
    }

    /// <summary>True when an earlier writer left moves unfinished.</summary>
    internal bool AnyPending() => database.Number("SELECT EXISTS (SELECT 1 FROM pending_files)") == 1;

    /// <summary>Finishes what earlier writers recorded and did not move; inside a write transaction only.</summary>
    internal void SettlePending()
    {
        Waiting.Clear();
        if (AnyPending())
        {
            Pending().ForEach(Settle);
        }
    }

    /// <summary>Marks what earlier writers left and did not record; inside a write transaction only. It is removed by
    /// <see cref="MoveStaged"/> when the transaction is kept, and not before: of a writer killed in the midst of its commit the log may
    /// hold a whole step that nobody has seen yet, and opening the ledger after a crash brings that step back, file and all. Only a
    /// commit after it, which takes its place in the log, makes sure that it never happened.</summary>
    internal void MarkAbandoned()
    {
        if (!Directory.Exists(folder.Staging))
        {
            return;
        }

        var waiting = Pending().Select(file => file.Part).ToHashSet(StringComparer.Ordinal);
        foreach (var found in Directory.EnumerateFiles(folder.Staging))
        {
            Mark(found, waiting);
        }
    }

    /// <summary>True when the ledger knows that it wrote a file there.</summary>
    private bool IsWritten(string place) => database.Number("SELECT EXISTS (SELECT 1 FROM files WHERE path = $1)", folder.Shortened(place)) == 1;

    private string BeginPart(GuardedPlace place)
    {
        if (folder.Holds(place.Path))
        {
            Directory.CreateDirectory(Path.GetDirectoryName(place.Path)!);
        }

        var part = DurableFile.PartBeside(place.Target);
        WriteNote(part);
        return part;
    }

    /// <summary>The hash of the file that was last written to a place; null when none was.</summary>
    private byte[]? Recorded(string place) => database.List(
        "SELECT sha256 FROM files WHERE path = $1 ORDER BY id DESC LIMIT 1", row => (byte[])row.GetValue(0), folder.Shortened(place)).SingleOrDefault();

    private static (byte[] Hash, long Length) WritePart(string part, Action<Stream> write)
    {
        try
        {
            return DurableFile.WriteNew(part, write);
        }
        catch
        {
            DurableFile.DeleteQuietly(part);
            throw;
        }
    }

    private void WriteNote(string part)
    {
        Directory.CreateDirectory(folder.Staging);
        var note = Path.Combine(folder.Staging, Path.GetFileName(part).TrimStart('.') + ".note");
        notes.Add(note);
        File.WriteAllText(note, folder.Shortened(part), Encoding.UTF8);
    }

    private StagedFile Enter(GuardedPlace guarded, string part, byte[] hash, long length)
    {
        var (id, place) = (database.Number("SELECT coalesce(max(id), 0) + 1 FROM files"), guarded.Path);
        staged.Add(new PendingFile(id, place, part, hash) { Guarded = guarded });
        database.Execute(
            "INSERT INTO files VALUES ($1, $2, $3, $4, (SELECT coalesce(max(sequence), 0) FROM events))",
            id, folder.Shortened(place), hash, length);
        database.Execute("INSERT INTO pending_files VALUES ($1, $2)", id, folder.Shortened(part));
        return new StagedFile(folder.Shortened(place), Convert.ToHexStringLower(hash), length);
    }

    /// <summary>Puts a file in its place; why it could not, or null when it is there.</summary>
    private Message? Move(PendingFile file)
    {
        try
        {
            return Found(file).Then<GuardedPlace>(place => place.Receive(file.Part) is { } problem ? problem : place).TryGet(out _, out var problems) ? (Message?)null : problems[0].Text;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return Sentence(fault.Message);
        }
    }

    private static string Sentence(string said) => said.EndsWith('.') ? said : said + ".";

    /// <summary>The place as the guard saw it. Of a step that a killed writer left only this is known: the guard had let it through.</summary>
    private Result<GuardedPlace> Found(PendingFile file) => file.Guarded ?? guard.Look(file.Place, OwnKind.None, force: true);

    private List<PendingFile> Pending() => database.List(
        "SELECT file, path, part, sha256 FROM pending_files JOIN files ON id = file ORDER BY file",
        row => new PendingFile(row.GetInt64(0), folder.Full(row.GetString(1)), folder.Full(row.GetString(2)), (byte[])row.GetValue(3)));

    private void Settle(PendingFile file)
    {
        if (IsOutdone(file))
        {
            DurableFile.DeleteQuietly(file.Part);
            Forget(file);
        }
        else if (Move(file) is { } why)
        {
            Waiting.Add(StoreProblems.FileStillWaits(file.Place, file.Part, why));
        }
        else
        {
            Forget(file);
        }
    }

    /// <summary>True when the same place was written again since: the older part must not come over the newer file.</summary>
    private bool IsOutdone(PendingFile file) => database.Number(
        "SELECT EXISTS (SELECT 1 FROM files WHERE path = $1 AND id > $2)", folder.Shortened(file.Place), file.Id) == 1;

    /// <summary>Takes moved files off the list of those that wait. It need not reach the disk at once, nor succeed: a part that is gone
    /// counts as moved.</summary>
    private void TryForget(List<PendingFile> moved)
    {
        try
        {
            database.Execute("PRAGMA synchronous = NORMAL");
            if (moved.Count > 0 && database.TryBeginWriting(TimeSpan.FromMilliseconds(500)))
            {
                moved.ForEach(Forget);
                database.Commit();
            }
        }
        catch (SqliteException)
        {
            database.RollBack();
        }
        finally
        {
            database.Execute("PRAGMA synchronous = FULL");
        }
    }

    private void Forget(PendingFile file) => database.Execute("DELETE FROM pending_files WHERE file = $1", file.Id);

    private void Mark(string found, HashSet<string> waiting)
    {
        var part = found.EndsWith(".note", StringComparison.Ordinal) ? folder.Full(ReadQuietly(found)) : "";
        if (waiting.Contains(part))
        {
            return;
        }

        if (part.EndsWith(".part", StringComparison.Ordinal))
        {
            abandoned.Add(part);
        }

        abandoned.Add(found);
    }

    private void DropNotes()
    {
        notes.ForEach(DurableFile.DeleteQuietly);
        notes.Clear();
    }

    private static string ReadQuietly(string path)
    {
        try
        {
            return File.ReadAllText(path, Encoding.UTF8);
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return "";
        }
    }
}
