namespace JarLabel.Store.Checking;

/// <summary>Whether a database is a whole ledger: its own structure, every seal, the end it should have, and its lists. Quicker than a check
/// of the whole shop, and of any version that this program knows.</summary>
internal static class WholeLedger
{
    /// <summary>The first version that keeps a list of jars, and the first that counts all events.</summary>
    private const int WithJars = 2;
    private const int WithLives = 5;

    internal static bool IsWhole(Database database, string ledger)
    {
        try
        {
            return LedgerOpener.RefusalOrDamage(database, ledger) is null
                && database.List("PRAGMA integrity_check(1)", row => row.GetString(0)) is ["ok"]
                && EndOf(database, ledger) == database.Number("SELECT count(*) FROM events NOT INDEXED")
                && database.Number("SELECT count(*) = coalesce(max(id), 0) FROM files") == 1
                && ListsFit(database, ledger);
        }
        catch (Exception fault) when (fault is LedgerFault or SqliteException || StoreFaults.FromDamage(fault))
        {
            return false;
        }
    }

    /// <summary>True when the one goes on from where the other ends, or the other cannot be read: a program that was killed while it
    /// carried the log into the file leaves the file half old and half new.</summary>
    internal static bool Continues(Database longer, Database shorter, string ledger)
    {
        try
        {
            var (end, start) = (new EventTable(longer, ledger), new EventTable(shorter, ledger));
            var count = start.Count;
            return count == 0 || (start.LedgerId == end.LedgerId && end.SealOf(count).AsSpan().SequenceEqual(start.Head));
        }
        catch (Exception fault) when (fault is LedgerFault or SqliteException || StoreFaults.FromDamage(fault))
        {
            return true;
        }
    }

    private static long EndOf(Database database, string ledger) => new EventTable(database, ledger).All().Select(link => link.Row.Sequence).LastOrDefault();

    private static bool ListsFit(Database database, string ledger)
    {
        var version = LedgerOpener.SchemaOf(database);
        if (version < WithJars)
        {
            return true;
        }

        var events = new EventTable(database, ledger);
        return database.List("SELECT events, chain FROM index_state", row => (row.GetInt64(0), (byte[])row.GetValue(1))).All(end => end.Item1 == events.Count && end.Item2.AsSpan().SequenceEqual(events.Head))
            && (version < WithLives || (events.Miscounted().Count == 0 && JarsFit(database)));
    }

    private static bool JarsFit(Database database) => database.Number(
        "SELECT count(*) FROM lives l LEFT JOIN jars j ON j.number = l.number WHERE l.subject = 'jar' AND j.events IS NOT l.events") == 0;
}
