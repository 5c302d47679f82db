namespace JarLabel.Store.Exchange;

/// <summary>What stands in the ledger's place when a backup is to come there. As far as it can be opened it is held, so that no other program
/// works on it while it is moved.</summary>
internal sealed class StandingLedger : IDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);
    private readonly Database? held;

    private StandingLedger(Database? held, string file, string ledger, bool hasLog)
    {
        this.held = held;
        HasLog = hasLog;
        Exists = File.Exists(file);
        if (held is not null && LedgerOpener.RefusalOrDamage(held, ledger) is null)
        {
            Look(held, file, ledger);
        }
    }

    /// <summary>True when there is a file.</summary>
    internal bool Exists { get; }

    /// <summary>True when a log lay beside it.</summary>
    internal bool HasLog { get; }

    /// <summary>True when it is a whole ledger, and its log goes on from it.</summary>
    internal bool InOrder { get; private set; }

    /// <summary>Whose it is; null when it does not say.</summary>
    internal string? LedgerId { get; private set; }

    /// <summary>How many events it shows.</summary>
    internal long Events { get; private set; }

    /// <summary>The highest numbers it shows.</summary>
    internal IReadOnlyDictionary<SubjectKind, int> Numbers { get; private set; } = new Dictionary<SubjectKind, int>();

    /// <summary>Takes hold of it; a problem when another program does not let go of it.</summary>
    internal static Result<StandingLedger> Hold(string file, string ledger)
    {
        for (var tries = 0; ; tries++)
        {
            Database? database = null;
            var hasLog = File.Exists(LeftLog.Of(file));
            try
            {
                database = File.Exists(file) ? Database.OpenHeld(file, hasLog) : null;
                database?.Number("SELECT count(*) FROM sqlite_schema");
                return new StandingLedger(database, file, ledger, hasLog);
            }
            catch (SqliteException fault) when (fault.SqliteErrorCode is raw.SQLITE_BUSY or raw.SQLITE_LOCKED)
            {
                database?.Dispose();
                if (tries * Pause > Patience.ToWrite)
                {
                    return StoreProblems.Held(ledger, Patience.ToWrite);
                }

                Thread.Sleep(Pause);
            }
            catch (SqliteException)
            {
                database?.Dispose();
                return new StandingLedger(null, file, ledger, hasLog);
            }
        }
    }

    public void Dispose() => held?.Dispose();

    /// <summary>With the log of another ledger it is not looked at: that would count what never happened here.</summary>
    private void Look(Database both, string file, string ledger)
    {
        using var alone = Database.OpenAlone(file);
        if (LeftLog.Stands(file) && (LeftLog.IsDisowned(file) || !WholeLedger.Continues(both, alone, ledger)))
        {
            Look(new EventTable(alone, ledger));
            return;
        }

        Look(new EventTable(both, ledger));
        InOrder = WholeLedger.IsWhole(both, ledger);
    }

    private void Look(EventTable events)
    {
        try
        {
            LedgerId = events.LedgerId;
            Events = events.Count;
            Numbers = events.LastNumbers();
        }
        catch (Exception fault) when (fault is SqliteException || StoreFaults.FromDamage(fault))
        {
            // What it does not say, the labels and the list of numbers do.
        }
    }
}
