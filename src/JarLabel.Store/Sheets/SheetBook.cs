namespace JarLabel.Store.Sheets;

/// <summary>Which places of which sheet of label stock are used. At most one sheet of a stock is open at a time. What happened to
/// a sheet is events of the ledger like any other.</summary>
public sealed class SheetBook
{
    private readonly Database database;
    private readonly EventTable events;
    private readonly string ledger;
    private readonly List<SheetPlace> given = [];

    internal SheetBook(Database database, EventTable events, string ledger)
    {
        this.database = database;
        this.events = events;
        this.ledger = ledger;
    }

    /// <summary>The places that were taken since the ledger was opened, in order.</summary>
    public IReadOnlyList<SheetPlace> Given => given;

    /// <summary>The open sheet of a stock, or null.</summary>
    public SheetInUse? Open(string stock)
    {
        var found = database.List("SELECT number FROM sheets WHERE open = 1 AND stock = $1 ORDER BY number DESC LIMIT 1", row => row.GetInt32(0), stock);
        if (found.Count == 0)
        {
            DemandWhole(database.Number("SELECT EXISTS (SELECT 1 FROM sheets NOT INDEXED WHERE open = 1 AND stock = $1)", stock) == 0);
        }

        return found.Select(Sheet).SingleOrDefault();
    }

    /// <summary>All open sheets, the latest first.</summary>
    public IReadOnlyList<SheetInUse> AllOpen()
    {
        DemandWhole();
        return [.. database.List("SELECT number FROM sheets NOT INDEXED WHERE open = 1 ORDER BY number DESC", row => row.GetInt32(0)).Select(Sheet)];
    }

    /// <summary>Begins a new sheet of a stock; the open one, if any, is put away.</summary>
    public SheetInUse Begin(string stock, int places, string at)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(stock);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(places);
        if (Open(stock) is { } before)
        {
            Happen(before.Number, at, SheetEvents.PutAway, SheetEvents.Nothing);
        }

        var number = events.LastNumber(SubjectKind.Sheet) + 1;
        Happen(number, at, SheetEvents.Begun, SheetEvents.BegunBody(stock, places));
        return Sheet(number);
    }

    /// <summary>Takes places for labels: the next free ones of the open sheet, then of new sheets, as many as it needs.</summary>
    /// <param name="stock">The id of the sheet layout.</param>
    /// <param name="places">How many places a sheet of it has.</param>
    /// <param name="count">How many labels.</param>
    /// <param name="start">The place on the open sheet to begin at; null for the next free one.</param>
    /// <param name="at">The moment.</param>
    public Result<IReadOnlyList<SheetPlace>> Take(string stock, int places, int count, int? start, string at)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(count);
        var sheet = OpenOrNew(stock, places, at);
        if (start is { } first && Refusal(sheet, first) is { } problem)
        {
            return problem;
        }

        var taken = new List<SheetPlace>();
        for (var from = start ?? 1; taken.Count < count; from = 1)
        {
            var free = sheet.Free.Where(place => place >= from).Take(count - taken.Count).ToList();
            taken.AddRange(free.Select(place => new SheetPlace(sheet.Number, place)));
            Happen(sheet.Number, at, SheetEvents.Taken, SheetEvents.PlacesBody(free));
            sheet = taken.Count < count ? Begin(stock, places, at) : sheet;
        }

        given.AddRange(taken);
        return taken;
    }

    /// <summary>Gives places back that were taken but not used well: the printer jammed, the page was never printed.</summary>
    public Result<SheetInUse> TakeBack(int sheet, IReadOnlyList<int> places, string at)
    {
        if (events.Of(Subject.Sheet(sheet)).Count == 0)
        {
            return SheetProblems.NoSuchSheet(sheet);
        }

        var known = Sheet(sheet);
        if (places.Where(place => !known.Taken.Contains(place)).ToList() is { Count: > 0 } untaken)
        {
            return SheetProblems.NotTaken(known, untaken);
        }

        Happen(sheet, at, SheetEvents.TakenBack, SheetEvents.PlacesBody(places));
        return Sheet(sheet);
    }

    /// <summary>Makes the list of sheets again from the events.</summary>
    internal void Rebuild()
    {
        database.Execute("DELETE FROM sheets");
        foreach (var number in events.Numbers(SubjectKind.Sheet))
        {
            Index(number);
        }
    }

    /// <summary>The sheets of which the list says something else than their events, or that have none.</summary>
    internal IReadOnlyList<int> Differing()
    {
        var listed = database.List("SELECT number, stock, open FROM sheets NOT INDEXED", row => (Number: row.GetInt32(0), Stock: row.GetString(1), IsOpen: row.GetInt32(2) != 0)).ToHashSet();
        listed.SymmetricExceptWith(events.Numbers(SubjectKind.Sheet).Select(Sheet).Select(sheet => (sheet.Number, sheet.Stock, sheet.IsOpen)));
        return [.. listed.Select(sheet => sheet.Number).Distinct().Order()];
    }

    /// <summary>A sheet that is full, or of a layout that has since got another number of places, is not gone on with.</summary>
    private SheetInUse OpenOrNew(string stock, int places, string at) =>
        Open(stock) is { } open && open.Places == places && open.Free.Any() ? open : Begin(stock, places, at);

    private static Problem? Refusal(SheetInUse sheet, int start)
    {
        if (start < 1 || start > sheet.Places)
        {
            return SheetProblems.NoSuchPlace(sheet, start);
        }

        return sheet.Taken.Contains(start) ? SheetProblems.AlreadyTaken(sheet, start) : null;
    }

    /// <summary>Throws when the list lacks a sheet that has events.</summary>
    private void DemandWhole(bool asFound = true)
    {
        if (!asFound || database.Number("SELECT count(*) FROM sheets NOT INDEXED") != events.CountOf(SubjectKind.Sheet))
        {
            throw new LedgerFault(StoreProblems.IndexDamaged(ledger));
        }
    }

    private void Happen(int sheet, string at, string kind, string body)
    {
        events.Append(Subject.Sheet(sheet), at, kind, 0, body);
        Index(sheet);
    }

    private void Index(int number)
    {
        var sheet = Sheet(number);
        database.Execute(
            "INSERT INTO sheets VALUES ($1, $2, $3) ON CONFLICT (number) DO UPDATE SET stock = $2, open = $3", number, sheet.Stock, sheet.IsOpen);
    }

    private SheetInUse Sheet(int number)
    {
        try
        {
            return SheetEvents.Fold(events.Of(Subject.Sheet(number)));
        }
        catch (Exception fault) when (StoreFaults.FromDamage(fault))
        {
            throw new LedgerFault(SheetProblems.NotASheet(number));
        }
    }
}

/// <summary>A sheet of label stock that has been begun.</summary>
/// <param name="Number">Which sheet: every new one gets the next number.</param>
/// <param name="Stock">The id of its sheet layout.</param>
/// <param name="Places">How many labels it holds; they are counted from 1 in reading order.</param>
/// <param name="Taken">The places that are used.</param>
/// <param name="IsOpen">False once another sheet of the stock was begun or this one was put away.</param>
public sealed record SheetInUse(int Number, string Stock, int Places, IReadOnlySet<int> Taken, bool IsOpen)
{
    /// <summary>The free places, in order.</summary>
    public IEnumerable<int> Free => Enumerable.Range(1, Places).Where(place => !Taken.Contains(place));
}

/// <summary>One place on one sheet.</summary>
/// <param name="Sheet">The sheet's number.</param>
/// <param name="Place">The place on it, from 1 in reading order.</param>
public readonly record struct SheetPlace(int Sheet, int Place);
