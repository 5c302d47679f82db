namespace JarLabel.Store;

/// <summary>The rows of <c>events</c>: added at the end, read with their seals checked.</summary>
internal sealed class EventTable(Database database, string ledger)
{
    private const string WithSealBefore =
        "SELECT e.sequence, e.subject, e.number, e.at, e.kind, e.revision, e.body, e.chain, before.chain FROM events e LEFT JOIN events before ON before.sequence = e.sequence - 1 ";

    private readonly List<Subject> added = [];

    /// <summary>What got events since <see cref="Forget"/>, once for each event.</summary>
    internal IReadOnlyList<Subject> Added => added;

    internal long Count => database.Number("SELECT coalesce(max(sequence), 0) FROM events");

    internal string LedgerId => database.List("SELECT ledger FROM about", row => row.GetString(0)).SingleOrDefault() ?? "";

    /// <summary>The seal of the last event.</summary>
    internal byte[] Head =>
        database.List("SELECT chain FROM events ORDER BY sequence DESC LIMIT 1", row => (byte[])row.GetValue(0)).SingleOrDefault() ?? EventChain.Start;

    /// <summary>The seal of one event; empty when there is none.</summary>
    internal byte[] SealOf(long sequence) =>
        database.List("SELECT chain FROM events WHERE sequence = $1", row => (byte[])row.GetValue(0), sequence).SingleOrDefault() ?? [];

    /// <summary>How many of the events recorded last are of a later moment.</summary>
    /// <param name="moment">The moment.</param>
    /// <param name="most">How many are looked at.</param>
    internal long After(DateTime moment, int most) => database.Number(
        "SELECT count(*) FROM (SELECT at FROM events ORDER BY sequence DESC LIMIT $1) WHERE at > $2", most, moment.ToString("s", CultureInfo.InvariantCulture));

    /// <summary>The highest number that has events, by whichever of the two lists knows more.</summary>
    internal int LastNumber(SubjectKind kind) => (int)database.Number(
        "SELECT max(coalesce((SELECT max(number) FROM events WHERE subject = $1), 0), coalesce((SELECT max(number) FROM lives WHERE subject = $1), 0))", SubjectWords.Of(kind));

    /// <summary>The highest number among the events themselves, in a ledger of any version.</summary>
    internal int Highest(SubjectKind kind) => (int)database.Number("SELECT coalesce(max(number), 0) FROM events WHERE subject = $1", SubjectWords.Of(kind));

    /// <summary>The highest numbers of all that bears them on labels.</summary>
    internal IReadOnlyDictionary<SubjectKind, int> LastNumbers() => SubjectWords.OnGlass.ToDictionary(kind => kind, Highest);

    /// <summary>The numbers of a kind that have events, ascending.</summary>
    internal IReadOnlyList<int> Numbers(SubjectKind kind) => database.List(
        "SELECT DISTINCT number FROM events WHERE subject = $1 ORDER BY number", row => row.GetInt32(0), SubjectWords.Of(kind));

    /// <summary>What happened to one subject; throws when it is not as much as was recorded.</summary>
    internal IReadOnlyList<EventRow> Of(Subject of)
    {
        var kind = SubjectWords.Of(of.Kind);
        var rows = database.List(WithSealBefore + "WHERE e.subject = $1 AND e.number = $2 ORDER BY e.sequence", Checked, kind, of.Number);
        DemandAll(of.ToString(), rows.Count, database.Number("SELECT coalesce(sum(events), 0) FROM lives WHERE subject = $1 AND number = $2", kind, of.Number));
        return rows;
    }

    /// <summary>What happened to all of a kind, one by one; throws at the end when it is not as much as was recorded.</summary>
    internal IEnumerable<EventRow> OfKind(SubjectKind of)
    {
        var kind = SubjectWords.Of(of);
        var found = 0L;
        foreach (var row in database.Stream(WithSealBefore + "WHERE e.subject = $1 ORDER BY e.number, e.sequence", Checked, kind))
        {
            found++;
            yield return row;
        }

        DemandAll($"one {kind} or more", found, database.Number("SELECT coalesce(sum(events), 0) FROM lives WHERE subject = $1", kind));
    }

    /// <summary>How many of a kind have events.</summary>
    internal long CountOf(SubjectKind kind) => database.Number("SELECT count(*) FROM lives WHERE subject = $1", SubjectWords.Of(kind));

    /// <summary>Those whose events are not as many as were recorded, twenty at most; the events are counted in their table and not by the index.</summary>
    internal IReadOnlyList<string> Miscounted() => database.List(
        """
        SELECT coalesce(subject, 'something') || ' ' || coalesce(number, 'unknown') FROM (
          SELECT subject, number, events FROM lives UNION ALL SELECT subject, number, -count(*) FROM events NOT INDEXED GROUP BY 1, 2
        ) GROUP BY subject, number HAVING sum(events) <> 0 LIMIT 20
        """,
        row => row.GetString(0));

    /// <summary>All events with their seals, each checked against the one before.</summary>
    internal IEnumerable<EventLink> All(long after = 0)
    {
        var before = after == 0 ? EventChain.Start : Links(after - 1).First().Seal;
        foreach (var link in Links(after))
        {
            Demand(link, before);
            before = link.Seal;
            yield return link;
        }
    }

    /// <summary>All events with their seals as they stand, unchecked.</summary>
    internal IEnumerable<EventLink> Links(long after = 0) => database.Stream(
        "SELECT sequence, subject, number, at, kind, revision, body, chain FROM events WHERE sequence > $1 ORDER BY sequence", Link, after);

    internal EventRow Append(Subject of, string at, string kind, int revision, string body)
    {
        var row = new EventRow(Count + 1, of, at, kind, revision, body);
        Add(new EventLink(row, EventChain.Next(Head, row)));
        return row;
    }

    /// <summary>Begins to count anew what gets events.</summary>
    internal void Forget() => added.Clear();

    internal void Add(EventLink link)
    {
        database.Execute("INSERT INTO events VALUES ($1, $2, $3, $4, $5, $6, $7, $8)", Row(link));
        added.Add(link.Row.Of);
    }

    private static object[] Row(EventLink link) =>
    [
        link.Row.Sequence, SubjectWords.Of(link.Row.Of.Kind), link.Row.Of.Number, link.Row.At, link.Row.Kind, link.Row.Revision, link.Row.Body, link.Seal,
    ];

    private void DemandAll(string of, long found, long recorded)
    {
        if (found != recorded)
        {
            throw new LedgerFault(found < recorded ? StoreProblems.EventsOfMissing(ledger, of) : StoreProblems.IndexDamaged(ledger));
        }
    }

    private EventRow Checked(SqliteDataReader reader)
    {
        var link = Link(reader);
        Demand(link, SealBefore(reader, link.Row.Sequence));
        return link.Row;
    }

    private byte[] SealBefore(SqliteDataReader reader, long sequence)
    {
        if (sequence == 1)
        {
            return EventChain.Start;
        }

        return reader.IsDBNull(8) ? throw new LedgerFault(StoreProblems.EventDamaged(ledger, sequence - 1)) : (byte[])reader.GetValue(8);
    }

    private void Demand(EventLink link, byte[] before)
    {
        if (!EventChain.Next(before, link.Row).AsSpan().SequenceEqual(link.Seal))
        {
            throw new LedgerFault(StoreProblems.EventDamaged(ledger, link.Row.Sequence));
        }
    }

    private EventLink Link(SqliteDataReader reader)
    {
        try
        {
            var of = new Subject(SubjectWords.Kinds[reader.GetString(1)], reader.GetInt32(2));
            var row = new EventRow(reader.GetInt64(0), of, reader.GetString(3), reader.GetString(4), reader.GetInt32(5), reader.GetString(6));
            return new EventLink(row, (byte[])reader.GetValue(7));
        }
        catch (Exception fault) when (StoreFaults.FromDamage(fault))
        {
            throw new LedgerFault(StoreProblems.EventDamaged(ledger, reader.GetInt64(0)));
        }
    }
}

/// <summary>An event with its seal, see <see cref="Checking.EventChain"/>.</summary>
internal readonly record struct EventLink(EventRow Row, byte[] Seal);
