using JarLabel.Core.Jars;

namespace JarLabel.Store.Index;

/// <summary>The table <c>jars</c>: one row a jar, kept in the same transaction as its events, so that the shelf list need not read
/// them.</summary>
internal sealed class JarIndex(Database database, EventTable events, IJarReader reader, string ledger)
{
    private const string Day = "yyyy-MM-dd";
    private const string Minute = "yyyy-MM-ddTHH:mm";
    private const string Columns =
        "SELECT number, revision, shelf, grade, solvent, cut, milliliters, mixed, ready, test_from, use_by, tested, test_passed, on_shelf FROM jars ";

    /// <summary>A jar's kind and amount as the table <c>shelf_liquids</c> keeps them.</summary>
    internal const string Liquid =
        "SELECT shelf, solvent, coalesce(CAST(cut * 100 + 0.001 AS INTEGER), -1) AS hundredths, 1 AS jars, CAST(round(milliliters * 1000) AS INTEGER) AS microliters FROM jars ";

    /// <summary>What the list shows of a jar; throws when it shows nothing of one that has events.</summary>
    internal JarEntry? Find(int number) => database.List(Columns + "WHERE number = $1", Entry, number).SingleOrDefault()
        ?? (database.Number("SELECT EXISTS (SELECT 1 FROM lives WHERE subject = 'jar' AND number = $1)", number) == 0 ? null : throw new LedgerFault(StoreProblems.IndexDamaged(ledger)));

    /// <summary>A jar's events. The list knows how many there are, so that one the database no longer finds is missed.</summary>
    internal IReadOnlyList<EventRow> EventsOf(int jar)
    {
        var rows = events.Of(Subject.Jar(jar));
        return rows.Count >= database.Number("SELECT events FROM jars WHERE number = $1", jar) ? rows : throw Missing(jar);
    }

    /// <summary>The events of a jar that has some.</summary>
    internal IReadOnlyList<EventRow> SomeEventsOf(int jar) =>
        EventsOf(jar) is { Count: > 0 } rows ? rows : throw Missing(jar);

    internal IEnumerable<JarEntry> All() => database.Stream(Columns + "ORDER BY number", Entry);

    internal IReadOnlyList<JarEntry> Page(ShelfQuery query)
    {
        if (query.After is null)
        {
            DemandWholeShelf(query.Shelf);
        }

        var where = "WHERE on_shelf = 1 AND (use_by, number) > ($1, $2)"
            + (query.Shelf is null ? "" : " AND shelf = $4")
            + (query.Due is null ? "" : query.Shelf is null ? DueOn("$4") : DueOn("$5"));
        var values = new List<object?> { query.After is { } mark ? Text(mark.UseBy) : "", query.After?.Number ?? 0, query.Take };
        values.AddRange(new object?[] { query.Shelf, query.Due is { } due ? Text(due) : null }.Where(v => v is not null));
        return database.List(Columns + where + " ORDER BY use_by, number LIMIT $3", Entry, [.. values]);
    }

    internal IReadOnlyList<int> Tested(int most) => database.List(
        "SELECT number FROM jars WHERE tested IS NOT NULL ORDER BY tested DESC, number DESC LIMIT $1", row => row.GetInt32(0), most);

    internal IReadOnlyList<int> Failed() => database.List("SELECT number FROM jars WHERE tested IS NOT NULL AND test_passed = 0", row => row.GetInt32(0));

    internal HashSet<int> OldLabels(IEnumerable<int> numbers) =>
    [
        .. database.List(
            "SELECT number FROM jars WHERE number IN (SELECT value FROM json_each($1)) AND revision > (SELECT revision FROM events WHERE subject = 'jar' AND events.number = jars.number AND kind = 'Labelled' AND json_extract(body, '$.design') <> 'card' ORDER BY sequence DESC LIMIT 1)",
            row => row.GetInt32(0),
            $"[{string.Join(',', numbers)}]"),
    ];

    internal IReadOnlyList<int> Labelled() => database.List(
        "SELECT number FROM jars WHERE on_shelf = 1 AND EXISTS (SELECT 1 FROM events WHERE subject = 'jar' AND events.number = jars.number AND kind = 'Labelled' AND json_extract(body, '$.design') <> 'card') ORDER BY number",
        row => row.GetInt32(0));

    internal IReadOnlyList<ShelfTotal> Totals() => database.List(
        "SELECT shelf, sum(jars), sum(microliters) FROM shelf_liquids GROUP BY shelf HAVING sum(jars) > 0 ORDER BY shelf",
        row => new ShelfTotal(row.GetString(0), row.GetInt32(1), Volume.FromMilliliters(row.GetInt64(2) / 1000.0)));

    /// <summary>What stands on one shelf by kind of liquid, empty jars left out. The signs keep SQLite from going through the whole shelf
    /// for the few jars that do not count.</summary>
    internal IReadOnlyList<ShelfLiquid> Liquids(string shelf, IEnumerable<int> without) => database.List(
        $"""
        SELECT solvent, hundredths, sum(microliters) FROM (
          SELECT * FROM shelf_liquids WHERE shelf = $1
          UNION ALL SELECT shelf, solvent, hundredths, -jars, -microliters FROM ({Liquid} WHERE number IN (SELECT value FROM json_each($2)) AND +on_shelf = 1 AND +shelf = $1)
        ) GROUP BY solvent, hundredths HAVING sum(jars) > 0 AND hundredths >= 0
        """,
        row => new ShelfLiquid(JarEntry.Each(row.GetString(0)), PoundCut.FromPoundsPerUsGallon(row.GetInt32(1) / 100.0), Volume.FromMilliliters(row.GetInt64(2) / 1000.0)),
        shelf,
        $"[{string.Join(',', without)}]");

    /// <summary>Folds the jars' events again and keeps what comes out, with the ledger's length and seal it holds for.</summary>
    internal IReadOnlyList<Problem> Update(IEnumerable<int> jars)
    {
        foreach (var jar in jars)
        {
            var rows = SomeEventsOf(jar);
            if (!reader.Fold(rows).TryGet(out var entry, out var problems))
            {
                return problems;
            }

            Put(entry, rows.Count);
        }

        database.Execute(
            "INSERT INTO index_state VALUES (1, $1, $2, $3) ON CONFLICT (id) DO UPDATE SET reader = $1, events = $2, chain = $3", reader.Version, events.Count, events.Head);
        return [];
    }

    /// <summary>Makes the whole index again from the events.</summary>
    internal IReadOnlyList<Problem> Rebuild()
    {
        database.Execute("DELETE FROM jars");
        database.Execute("DELETE FROM shelf_liquids");
        return Update(events.Numbers(SubjectKind.Jar));
    }

    /// <summary>True when the index was made by another reader or was never made.</summary>
    internal bool IsStale() => database.Number(
        "SELECT EXISTS (SELECT 1 FROM index_state WHERE reader = $1)", reader.Version) == 0;

    /// <summary>Throws when the ledger is not as long, or does not end, as when it was last recorded in. One statement, so that what
    /// another program records meanwhile is in both sides or in neither.</summary>
    internal void DemandWholeEnd()
    {
        const string both = "SELECT s.events, s.chain, coalesce(e.sequence, 0), e.chain FROM index_state s LEFT JOIN (SELECT sequence, chain FROM events ORDER BY sequence DESC LIMIT 1) e";
        foreach (var (indexed, found, same) in database.List(both, row => (row.GetInt64(0), row.GetInt64(2), SameSeal(row))))
        {
            if (found != indexed)
            {
                throw new LedgerFault(StoreProblems.EventsMissing(ledger, indexed, found));
            }

            if (!same)
            {
                throw new LedgerFault(StoreProblems.EventDamaged(ledger, found));
            }
        }
    }

    private LedgerFault Missing(int jar) => new(StoreProblems.EventsOfMissing(ledger, Subject.Jar(jar).ToString()));

    /// <summary>Throws when the list shows another number of jars on the shelves than stand there: an index that lost some would else show a
    /// shelf that is empty.</summary>
    private void DemandWholeShelf(string? shelf)
    {
        var both = shelf is null
            ? database.Number("SELECT (SELECT count(*) FROM jars WHERE on_shelf = 1) = (SELECT coalesce(sum(jars), 0) FROM shelf_liquids)")
            : database.Number("SELECT (SELECT count(*) FROM jars WHERE on_shelf = 1 AND shelf = $1) = (SELECT coalesce(sum(jars), 0) FROM shelf_liquids WHERE shelf = $1)", shelf);
        if (both != 1)
        {
            throw new LedgerFault(StoreProblems.IndexDamaged(ledger));
        }
    }

    private static bool SameSeal(SqliteDataReader row) =>
        ((byte[])row.GetValue(1)).AsSpan().SequenceEqual(row.IsDBNull(3) ? EventChain.Start : (byte[])row.GetValue(3));

    private void Put(JarEntry jar, int happened)
    {
        database.Execute("DELETE FROM jars WHERE number = $1", jar.Number);
        database.Execute(
            "INSERT INTO jars VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15)",
            jar.Number, jar.Revision, happened, jar.Shelf, jar.Flakes, jar.Alcohol, jar.Cut?.PoundsPerUsGallon, jar.Liquid.Milliliters, Text(jar.Mixed),
            jar.Ready.ToString(Minute, CultureInfo.InvariantCulture), Text(jar.TestFrom), Text(jar.UseBy),
            jar.Test is { } test ? Text(test.Day) : null, jar.Test is null ? null : Passed(jar.Test), jar.OnShelf);
    }

    private JarEntry Entry(SqliteDataReader row)
    {
        try
        {
            return new JarEntry(
                row.GetInt32(0), row.GetInt32(1), row.GetString(2), row.GetString(3), row.GetString(4),
                row.IsDBNull(5) ? null : PoundCut.FromPoundsPerUsGallon(row.GetDouble(5)), Volume.FromMilliliters(row.GetDouble(6)),
                ToDay(row.GetString(7)), DateTime.ParseExact(row.GetString(8), Minute, CultureInfo.InvariantCulture),
                ToDay(row.GetString(9)), ToDay(row.GetString(10)),
                Test(row), row.GetBoolean(13));
        }
        catch (Exception fault) when (StoreFaults.FromDamage(fault))
        {
            throw new LedgerFault(StoreProblems.IndexDamaged(ledger));
        }
    }

    /// <summary>The column <c>test_passed</c>: 0 failed, 1 passed, 2 passed slowly.</summary>
    private static int Passed(TestResult test) => !test.Passed ? 0 : test.Slow ? 2 : 1;

    private static TestResult? Test(SqliteDataReader row) =>
        row.IsDBNull(11) ? null : new TestResult(ToDay(row.GetString(11)), row.GetInt32(12) > 0) { Slow = row.GetInt32(12) == 2 };

    private static string DueOn(string day) => string.Create(CultureInfo.InvariantCulture, $" AND (use_by <= {day} OR test_passed = 0 OR (test_from <= {day} AND coalesce(tested, '') < date({day}, '-{TestResult.HoldsDays} days')))");

    private static string Text(DateOnly day) => day.ToString(Day, CultureInfo.InvariantCulture);

    private static DateOnly ToDay(string text) => DateOnly.ParseExact(text, Day, CultureInfo.InvariantCulture);
}

/// <summary>What the ledger does not know itself: how to read an event, and what a jar's events add up to.</summary>
public interface IJarReader
{
    /// <summary>Raised whenever the same events would give another entry; a ledger indexed by another version is indexed anew when
    /// it is opened.</summary>
    int Version { get; }

    /// <summary>Everything that is wrong with one event taken alone; empty when it can be read.</summary>
    IReadOnlyList<Problem> Faults(EventRow row);

    /// <summary>Everything for which one event, taken alone, could not have been recorded here, what cannot be read included: what comes from
    /// elsewhere is held against the rules of what is typed.</summary>
    IReadOnlyList<Problem> Refusals(EventRow row) => Faults(row);

    /// <summary>Everything that is wrong with the life of a bag or bottle, its events in order.</summary>
    IReadOnlyList<Problem> LifeFaults(IReadOnlyList<EventRow> events) => [];

    /// <summary>The jar that the events, all of one jar and in order, add up to.</summary>
    Result<JarEntry> Fold(IReadOnlyList<EventRow> events);
}

/// <summary>What stands on one shelf of one kind of liquid.</summary>
/// <param name="Solvents">The ids of its solvents, the largest first.</param>
/// <param name="Cut">Its cut, rounded down to a hundredth of a pound, thus never with less alcohol than there is.</param>
/// <param name="Liquid">How much, each jar counted to the microlitre.</param>
public sealed record ShelfLiquid(IReadOnlyList<string> Solvents, PoundCut Cut, Volume Liquid);

/// <summary>What stands on one shelf altogether.</summary>
/// <param name="Shelf">The shelf's name.</param>
/// <param name="Jars">How many jars.</param>
/// <param name="Liquid">Their liquid, each jar counted to the microlitre.</param>
public sealed record ShelfTotal(string Shelf, int Jars, Volume Liquid);
