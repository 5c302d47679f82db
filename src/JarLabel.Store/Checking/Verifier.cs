namespace JarLabel.Store.Checking;

/// <summary>Checks the whole shop within one reading transaction: the database's own structure, the guards, every event's seal, the
/// numbers, every jar's fold against the lists; then every written file. One damage does not stop the search for others.</summary>
internal sealed class Verifier(Database database, EventTable events, JarIndex jars, IJarReader reader, ShopFolder folder)
{
    private readonly GivenNumbers numbers = new(folder);
    private readonly List<Problem> damage = [];
    private readonly List<Problem> notices = [];
    private long eventsRead;
    private int jarsFolded;

    internal VerifyReport Run()
    {
        Each(Structure);
        Each(Guards);
        Each(Seals);
        Each(jars.DemandWholeEnd);
        Each(Numbers);
        Each(Folds);
        Each(Totals);
        Each(Counts);
        Each(() => damage.AddRange(new SheetBook(database, events, folder.Ledger).Differing().Select(VerifyProblems.SheetDiffers)));
        return Report;
    }

    /// <summary>The written files too, outside the transaction of the rest: while they are read, others write new ones.</summary>
    internal VerifyReport WithFiles()
    {
        var files = new WrittenFiles(database, folder);
        Each(files.Check);
        damage.AddRange(files.Changed);
        notices.AddRange(files.Gone);
        return Report with { Files = files.Sound };
    }

    private VerifyReport Report => new(eventsRead, jarsFolded, 0, [.. damage.Distinct()], notices);

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

    /// <summary>Every number from 1 on has events. One that has none, in a ledger whose every seal fits, was never in it: it was given out before an
    /// older backup was put in its place.</summary>
    private void Numbers()
    {
        foreach (var kind in SubjectWords.OnGlass)
        {
            var last = 0;
            foreach (var number in events.Numbers(kind))
            {
                LeftOut(kind, last + 1, number - 1);
                last = number;
            }

            if (numbers.Last(kind) is var ever && ever > last)
            {
                notices.Add(StoreProblems.NumbersMissing(kind, last + 1, ever));
            }
        }
    }

    private void LeftOut(SubjectKind kind, int first, int last)
    {
        if (first <= last)
        {
            (damage.Count > 0 ? damage : notices).Add(damage.Count > 0 ? VerifyProblems.NumberUnused(kind, first, last) : VerifyProblems.NumberLeftOut(kind, first, last));
        }
    }

    private void Counts() => damage.AddRange(events.Miscounted().Select(of => StoreProblems.EventsOfMissing(folder.Ledger, of)));

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
}
