using JarLabel.Core;
using JarLabel.Store.Files;
using JarLabel.Store.Index;
using JarLabel.Store.Schema;
using JarLabel.Store.Shops;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace JarLabel.Store.Checking;

/// <summary>Checks the whole shop within one reading transaction: the database's own structure, the guards, every event's seal, the
/// numbers, every jar's fold against the list, and every written file. One damage does not stop the search for others.</summary>
internal sealed class Verifier(Database database, EventTable events, JarIndex jars, IJarReader reader, ShopFolder folder)
{
    private readonly List<Problem> damage = [];
    private readonly List<Problem> notices = [];
    private long eventsRead;
    private int jarsFolded;
    private int filesSound;

    internal VerifyReport Run()
    {
        Each(Structure);
        Each(Guards);
        Each(Seals);
        Each(jars.DemandWholeEnd);
        Each(Numbers);
        Each(Folds);
        Each(Totals);
        Each(WrittenFiles);
        return new VerifyReport(eventsRead, jarsFolded, filesSound, [.. damage.Distinct()], notices);
    }

    private void Each(Action check)
    {
        try
        {
            check();
        }
        catch (Exception fault) when (StoreFaults.Told(fault, folder.Ledger) is { } problem)
        {
            damage.Add(problem);
        }
        catch (SqliteException fault) when (fault.SqliteErrorCode == raw.SQLITE_ERROR)
        {
            damage.Add(VerifyProblems.Database(folder.Ledger, fault.Message));
        }
    }

    private void Structure() => damage.AddRange(database
        .List("PRAGMA integrity_check(20)", row => row.GetString(0))
        .Where(line => line != "ok")
        .Select(line => VerifyProblems.Database(folder.Ledger, line)));

    private void Guards()
    {
        var standing = database.List("SELECT sql FROM sqlite_schema WHERE type = 'trigger'", row => row.GetString(0)).ToHashSet(StringComparer.Ordinal);
        damage.AddRange(Migrations.Guards
            .Where(guard => !standing.Contains(guard.Value))
            .Select(guard => VerifyProblems.GuardGone(folder.Ledger, guard.Key)));
    }

    private void Seals()
    {
        var before = EventChain.Start;
        foreach (var link in events.Links())
        {
            eventsRead++;
            if (link.Row.Sequence != eventsRead || !EventChain.Next(before, link.Row).AsSpan().SequenceEqual(link.Seal))
            {
                damage.Add(StoreProblems.EventDamaged(folder.Ledger, link.Row.Sequence));
                eventsRead = link.Row.Sequence;
            }

            damage.AddRange(reader.Faults(link.Row));
            before = link.Seal;
        }
    }

    private void Numbers()
    {
        var given = events.Numbers(SubjectKind.Jar);
        damage.AddRange(Enumerable.Range(1, events.LastNumber(SubjectKind.Jar)).Except(given).Take(20).Select(VerifyProblems.NumberUnused));
    }

    private void Folds()
    {
        var listed = jars.All().ToDictionary(entry => entry.Number);
        foreach (var jar in events.Numbers(SubjectKind.Jar))
        {
            Each(() => Fold(jar, listed));
        }

        damage.AddRange(listed.Keys.Select(VerifyProblems.IndexHasMore));
    }

    private void Fold(int jar, Dictionary<int, JarEntry> listed)
    {
        listed.Remove(jar, out var shown);
        if (!reader.Fold(jars.SomeEventsOf(jar)).TryGet(out var folded, out var problems))
        {
            damage.AddRange(problems);
        }
        else if (shown is null || !shown.Shows(folded))
        {
            damage.Add(VerifyProblems.IndexDiffers(jar));
        }

        jarsFolded++;
    }

    private void Totals() => damage.AddRange(database.List(
        $"""
        SELECT DISTINCT shelf FROM (
          SELECT * FROM shelf_liquids UNION ALL SELECT shelf, solvent, hundredths, -jars, -microliters FROM ({JarIndex.Liquid} WHERE on_shelf = 1)
        ) GROUP BY shelf, solvent, hundredths HAVING sum(jars) <> 0 OR sum(microliters) <> 0
        """,
        row => VerifyProblems.TotalsDiffer(row.GetString(0))));

    private void WrittenFiles()
    {
        const string latest = "SELECT path, sha256 FROM files f WHERE id = (SELECT max(id) FROM files WHERE path = f.path) AND id NOT IN (SELECT file FROM pending_files)";
        foreach (var (path, hash) in database.List(latest, row => (row.GetString(0), (byte[])row.GetValue(1))))
        {
            Each(() => WrittenFile(folder.Full(path), hash));
        }
    }

    private void WrittenFile(string path, byte[] hash)
    {
        if (!File.Exists(path))
        {
            notices.Add(VerifyProblems.FileGone(path));
        }
        else if (DurableFile.Hash(path).AsSpan().SequenceEqual(hash))
        {
            filesSound++;
        }
        else
        {
            damage.Add(VerifyProblems.FileChanged(path));
        }
    }
}
