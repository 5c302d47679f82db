namespace JarLabel.Store;

/// <summary>The shop's memory: an append-only ledger of events in one SQLite database. A step is recorded whole, files and all, or not
/// at all; what was recorded survives a kill and a power cut. One ledger object serves one thread at a time; any number of programs
/// can have the same ledger open.</summary>
public sealed class Ledger : IDisposable
{
    private readonly Database database;
    private readonly IJarReader reader;
    private readonly EventTable events;
    private readonly JarIndex jars;
    private readonly SheetBook sheets;
    private readonly Staging staging;
    private readonly GivenNumbers numbers;
    private bool commitTried;

    private Ledger(ShopFolder folder, LedgerMode mode, Database database, IJarReader reader)
    {
        Folder = folder;
        Mode = mode;
        this.database = database;
        this.reader = reader;
        events = new EventTable(database, folder.Ledger);
        jars = new JarIndex(database, events, reader, folder.Ledger);
        sheets = new SheetBook(database, events, folder.Ledger);
        staging = new Staging(folder, database);
        numbers = new GivenNumbers(folder);
    }

    /// <summary>The shop it belongs to.</summary>
    public ShopFolder Folder { get; }

    /// <summary>What it was opened for.</summary>
    public LedgerMode Mode { get; }

    /// <summary>Files of the last recorded step that could not be put in their places yet; they are when somebody next records.</summary>
    public IReadOnlyList<Problem> Unmoved => staging.Unmoved;

    /// <summary>Files of earlier steps that still could not.</summary>
    public IReadOnlyList<Problem> Waiting => staging.Waiting;

    /// <summary>Opens the shop's ledger. For writing, the shop and the ledger are made where there is none, and what a killed program
    /// left half done is finished.</summary>
    public static Result<Ledger> Open(ShopFolder folder, LedgerMode mode, IJarReader reader)
    {
        if (!LedgerOpener.Open(folder, mode).TryGet(out var database, out var problems))
        {
            return Result<Ledger>.Failed(problems);
        }

        return Ready(new Ledger(folder, mode, database, reader));
    }

    /// <summary>For a shop that has no ledger yet: an empty one in memory, to work steps out on. Nothing is made on any disk.</summary>
    public static Result<Ledger> OpenEmpty(ShopFolder folder, IJarReader reader) =>
        LedgerOpener.OpenEmpty(folder).Then(database => Ready(new Ledger(folder, LedgerMode.Write, database, reader)));

    private static Result<Ledger> Ready(Ledger ledger)
    {
        if (ledger.SetRight() is { Count: > 0 } faults)
        {
            ledger.Dispose();
            return Result<Ledger>.Failed(faults);
        }

        return ledger;
    }

    /// <summary>Looks something up that is always there to be found.</summary>
    public Result<T> Look<T>(Func<LedgerView, T> look)
        where T : notnull
    {
        return Read<T>(view => look(view));
    }

    /// <summary>Looks things up, all as of one moment.</summary>
    public Result<T> Read<T>(Func<LedgerView, Result<T>> look)
        where T : notnull
    {
        return Told(() =>
        {
            database.Execute("BEGIN");
            return look(new LedgerView(events, jars, sheets));
        });
    }

    /// <summary>Records one step. No other program can record meanwhile, so what the step reads is what is so when it is recorded.
    /// When it returns problems, or a file cannot be written, or the disk is full, nothing is recorded.</summary>
    public Result<T> Record<T>(Func<LedgerStep, Result<T>> work)
        where T : notnull
    {
        DemandWriting();
        IReadOnlyDictionary<SubjectKind, int>? given = null;
        try
        {
            var result = InOneTransaction(() => Work(work, step => given = step.Given));
            if (result.Ok)
            {
                numbers.Raise(given!);
                staging.MoveStaged();
            }
            else if (result.Problems.Any(problem => problem.Code == StoreProblems.LabelOfUnknownCode))
            {
                numbers.RaiseFromLabels();
            }

            return result;
        }
        finally
        {
            LetGo();
        }
    }

    /// <summary>Works a step out to the end, files and checks included, and then drops it: nothing is recorded and nothing written.</summary>
    public Result<T> Rehearse<T>(Func<LedgerStep, Result<T>> work)
        where T : notnull
    {
        try
        {
            return InOneTransaction(() => Work(work), keep: false);
        }
        finally
        {
            LetGo();
        }
    }

    /// <summary>Writes a whole copy of the ledger, as of one moment, while others may go on recording.</summary>
    /// <param name="file">The file to write.</param>
    /// <param name="force">True to write over a file that is no backup of this shop.</param>
    /// <param name="write">False only to look whether it could be written.</param>
    public Result<BackupReport> Backup(string file, bool force = false, bool write = true) => Told(() => new Backup(database, events, Folder).Write(file, force, write));

    /// <summary>Writes all events as JSON Lines.</summary>
    /// <param name="file">The file to write.</param>
    /// <param name="force">True to write over a file that is no export.</param>
    /// <param name="write">False only to look whether it could be written.</param>
    public Result<ExportReport> Export(string file, bool force = false, bool write = true) => Read(_ => new Exporter(events, Folder).Write(file, force, write));

    /// <summary>Takes the events of an export: all that are new, or none and every problem with its line.</summary>
    /// <param name="file">The export.</param>
    /// <param name="keep">False to work it out to the end and then drop it.</param>
    public Result<ImportReport> Import(string file, bool keep = true)
    {
        DemandWriting();
        try
        {
            using var stream = InputFile.Open(file);
            var result = InOneTransaction(() => new Importer(database, events, reader, file).Take(stream, sheets, jars), keep);
            if (result.Ok && keep)
            {
                numbers.Raise(events.LastNumbers());
            }

            return result;
        }
        catch (Exception fault) when (StoreFaults.FromDisk(fault))
        {
            return ExchangeProblems.NotReadable(file, fault.Message);
        }
    }

    /// <summary>Checks everything: structure, guards, seals, numbers, list of jars, written files. Changes nothing.</summary>
    public Result<VerifyReport> Verify()
    {
        var verifier = new Verifier(database, events, jars, reader, Folder);
        return Read<VerifyReport>(_ => verifier.Run()).Then(_ => Told<VerifyReport>(() => verifier.WithFiles()));
    }

    /// <summary>Makes the list of jars again from the events.</summary>
    public Result<long> Rebuild() => InOneTransaction(RebuildIndex);

    /// <inheritdoc/>
    public void Dispose() => database.Dispose();

    private Result<T> Work<T>(Func<LedgerStep, Result<T>> work, Action<LedgerStep>? done = null)
        where T : notnull
    {
        staging.SettlePending();
        staging.MarkAbandoned();
        var step = new LedgerStep(events, jars, sheets, staging, numbers);
        var result = work(step);
        done?.Invoke(step);
        return result.Ok && jars.Update(step.TouchedJars) is { Count: > 0 } problems ? Result<T>.Failed(problems) : result;
    }

    private Result<T> InOneTransaction<T>(Func<Result<T>> work, bool keep = true)
        where T : notnull => Told(() =>
    {
        if (!database.TryBeginWriting(Patience.ToWrite))
        {
            return StoreProblems.Held(Folder.Ledger, Patience.ToWrite);
        }

        commitTried = false;
        events.Forget();
        var result = work();
        if (result.Ok && keep)
        {
            commitTried = true;
            new StepKeeper(database, events, Folder.Ledger).Keep();
        }

        return result;
    });

    /// <summary>Does something with the database; what the world did wrong comes out as a problem, and no transaction stays open.</summary>
    private Result<T> Told<T>(Func<Result<T>> work)
        where T : notnull
    {
        try
        {
            return work();
        }
        catch (Exception fault) when (StoreFaults.Told(fault, Folder.Ledger) is { } problem)
        {
            return problem;
        }
        finally
        {
            database.RollBack();
        }
    }

    /// <summary>After opening: an index made by another version is made anew, and interrupted moves are finished.</summary>
    private IReadOnlyList<Problem> SetRight()
    {
        try
        {
            if (jars.IsStale() && InOneTransaction(RebuildIndex) is { Ok: false } failed)
            {
                return Mode == LedgerMode.Read && failed.Problems.Any(p => p.Code == "JL403") ? [StoreProblems.CannotUpdate(Folder.Ledger)] : failed.Problems;
            }

            if (Mode == LedgerMode.Read)
            {
                return [];
            }

            jars.DemandWholeEnd();
            return staging.AnyPending() ? InOneTransaction(Settle).Problems : [];
        }
        catch (Exception fault) when (StoreFaults.Told(fault, Folder.Ledger) is { } problem)
        {
            return [problem];
        }
    }

    private void LetGo()
    {
        if (commitTried)
        {
            staging.LeaveStaged();
        }
        else
        {
            staging.DropStaged();
        }
    }

    private void DemandWriting()
    {
        if (Mode != LedgerMode.Write)
        {
            throw new InvalidOperationException("The ledger was opened to read.");
        }
    }

    private Result<long> Settle()
    {
        staging.SettlePending();
        return events.Count;
    }

    private Result<long> RebuildIndex()
    {
        sheets.Rebuild();
        return jars.Rebuild() is { Count: > 0 } problems ? Result<long>.Failed(problems) : events.Count;
    }
}

/// <summary>What a ledger is opened for.</summary>
public enum LedgerMode
{
    /// <summary>To look things up: creates nothing, holds no write lock, works in a read-only folder.</summary>
    Read,

    /// <summary>To record: creates the shop folder and the ledger where there is none.</summary>
    Write,
}
