namespace JarLabel.Store;

/// <summary>The ledger as it stands at one moment, for looking things up. Every event that is read is checked against its seal; a
/// damaged one ends the reading with a problem.</summary>
public class LedgerView
{
    private const int AtOnce = 500;

    private readonly EventTable events;
    private readonly JarIndex jars;
    private readonly SheetBook sheets;

    internal LedgerView(EventTable events, JarIndex jars, SheetBook sheets)
    {
        this.events = events;
        this.jars = jars;
        this.sheets = sheets;
    }

    /// <summary>How many events there are.</summary>
    public long EventCount => events.Count;

    /// <summary>What tells this ledger from every other: 32 hexadecimal digits.</summary>
    public string LedgerId => events.LedgerId;

    /// <summary>The events of one jar, bag, bottle or sheet, in order; empty when there is none of that number.</summary>
    public IReadOnlyList<EventRow> EventsOf(Subject of) =>
        of.Kind == SubjectKind.Jar ? jars.EventsOf(of.Number) : events.Of(of);

    /// <summary>The events of everything of one kind, by number and then in order.</summary>
    public IEnumerable<EventRow> EventsOf(SubjectKind kind) => events.OfKind(kind);

    /// <summary>All events in order, one by one.</summary>
    public IEnumerable<EventRow> Events() => events.All().Select(link => link.Row);

    /// <summary>True when, of the events recorded last, one is of a later moment.</summary>
    public bool HasEventsAfter(DateTime moment) => events.After(moment, MostLookedBack) > 0;

    private const int MostLookedBack = 50;

    /// <summary>The highest number given out, or 0.</summary>
    public int LastNumber(SubjectKind kind) => events.LastNumber(kind);

    /// <summary>The numbers that have events, ascending.</summary>
    public IReadOnlyList<int> Numbers(SubjectKind kind) => events.Numbers(kind);

    /// <summary>What the list of jars shows of one jar; null when there is no such jar.</summary>
    public JarEntry? Jar(int number) => jars.Find(number);

    /// <summary>Jars on the shelves, soonest use-by first.</summary>
    public IReadOnlyList<JarEntry> Shelf(ShelfQuery query) => jars.Page(query);

    /// <summary>All jars on a shelf, or on every shelf, soonest use-by first, read page by page as they are asked for.</summary>
    public IEnumerable<JarEntry> Standing(string? shelf = null)
    {
        var query = new ShelfQuery(shelf, Take: AtOnce);
        while (jars.Page(query) is { Count: > 0 } page)
        {
            foreach (var entry in page)
            {
                yield return entry;
            }

            if (page.Count < AtOnce)
            {
                yield break;
            }

            query = query with { After = new ShelfMark(page[^1].UseBy, page[^1].Number) };
        }
    }

    /// <summary>Of these jars those whose newest label speaks of an older revision.</summary>
    public IReadOnlySet<int> OldLabels(IEnumerable<int> numbers) => jars.OldLabels(numbers);

    /// <summary>The jars, on a shelf or gone, whose latest test failed.</summary>
    public IReadOnlyList<int> FailedJars() => jars.Failed();

    /// <summary>The jars on the shelves that have a label on their glass.</summary>
    public IReadOnlyList<int> LabelledJars() => jars.Labelled();

    /// <summary>The jars that were tested, the latest test first.</summary>
    /// <param name="most">How many at most.</param>
    public IReadOnlyList<int> TestedJars(int most) => jars.Tested(most);

    /// <summary>What stands on each shelf altogether, by name.</summary>
    public IReadOnlyList<ShelfTotal> ShelfTotals() => jars.Totals();

    /// <summary>What stands on one shelf by solvent and cut.</summary>
    /// <param name="shelf">The shelf's name.</param>
    /// <param name="without">The numbers of jars not to count.</param>
    public IReadOnlyList<ShelfLiquid> ShelfLiquids(string shelf, params IEnumerable<int> without) => jars.Liquids(shelf, without);

    /// <summary>The open sheet of a label stock, or null.</summary>
    public SheetInUse? OpenSheet(string stock) => sheets.Open(stock);

    /// <summary>All sheets that are open, the latest first.</summary>
    public IReadOnlyList<SheetInUse> OpenSheets() => sheets.AllOpen();
}
