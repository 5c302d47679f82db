namespace JarLabel.Operations.Keeping;

/// <summary>Jars of the shelves as listed, soonest use-by on record first.</summary>
/// <param name="Jars">The jars.</param>
/// <param name="Moved">By number, the dates that the shop's drying tests say now where those on record are clearly others.</param>
public sealed record ShelfList(IReadOnlyList<JarEntry> Jars, IReadOnlyDictionary<int, KeepingDates> Moved)
{
    /// <summary>Lists jars.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="view">The ledger.</param>
    /// <param name="query">Which jars, and how many at most.</param>
    /// <param name="due">Only those that on this day are to be tested or past their use-by, by the more careful dates; null for all.</param>
    public static Result<ShelfList> Of(Workbench bench, LedgerView view, ShelfQuery query, DateOnly? due)
    {
        if (due is not { } day)
        {
            var all = view.Shelf(query);
            return ShelfDates.Of(bench, view, all).Then<ShelfList>(moved => new ShelfList(all, moved) { Standing = all.Count, OldLabels = OldLabelsOf(view, all) });
        }

        // A jar that is not due by the dates on record may be so by the shop's tests, however far behind it stands.
        var looked = view.Shelf(query with { Take = Math.Max(query.Take, MostLookedAt) });
        return ShelfDates.Of(bench, view, looked).Then<ShelfList>(moved =>
        {
            var found = Due(view.Shelf(query with { Due = day, Take = int.MaxValue }), looked, moved, bench.Now);
            JarEntry[] first = [.. found.Take(query.Take)];
            return new ShelfList(first, moved) { Standing = found.Count, OldLabels = OldLabelsOf(view, first) };
        });
    }

    private const int MostLookedAt = 1000;

    /// <summary>How many there are of which these are the first.</summary>
    public int Standing { get; private init; }

    /// <summary>Those whose newest label speaks of them as they were.</summary>
    public IReadOnlySet<int> OldLabels { get; init; } = new HashSet<int>();

    /// <summary>True when the label on the jar is no longer true, because of what was done to it or because its dates have moved.</summary>
    public bool IsLabelOld(JarEntry jar) => OldLabels.Contains(jar.Number) || Learned(jar) is not null;

    /// <summary>The use-by that counts now, and whether its label is out of date.</summary>
    /// <param name="jar">A listed jar.</param>
    /// <param name="said">How a day is written.</param>
    public string UseBy(JarEntry jar, Func<DateOnly, string> said) => $"{said(Learned(jar)?.UseBy ?? jar.UseBy)}{(IsLabelOld(jar) ? ", label out of date" : "")}";

    private static IReadOnlySet<int> OldLabelsOf(LedgerView view, IReadOnlyList<JarEntry> jars) => view.OldLabels(jars.Select(jar => jar.Number));

    /// <summary>The dates that the tests say now; null where they are those on record.</summary>
    public KeepingDates? Learned(JarEntry jar) => Moved.GetValueOrDefault(jar.Number);

    /// <summary>How a listed jar stands, by the more careful dates.</summary>
    public static JarState StateOf(JarEntry jar, KeepingDates? learned, DateTime now)
    {
        var dates = new KeepingDates(jar.Ready, jar.TestFrom, jar.UseBy);
        return (learned is null ? dates : dates.Shortest(learned)).StateAt(now, jar.Tested is { } day ? new TestResult(day, jar.TestPassed == true) : null);
    }

    private static IReadOnlyList<JarEntry> Due(IReadOnlyList<JarEntry> onRecord, IReadOnlyList<JarEntry> all, IReadOnlyDictionary<int, KeepingDates> moved, DateTime now) =>
        [.. onRecord.Concat(all.Where(j => moved.ContainsKey(j.Number) && StateOf(j, moved[j.Number], now) is (JarState.Test or JarState.Past))).DistinctBy(j => j.Number).OrderBy(j => j.UseBy).ThenBy(j => j.Number)];
}

/// <summary>The jars of a shelf with the dates that the shop's drying tests say now.</summary>
public static class ShelfDates
{
    /// <summary>The dates now of those listed jars whose dates on record are clearly others.</summary>
    public static Result<IReadOnlyDictionary<int, KeepingDates>> Of(Workbench bench, LedgerView view, IReadOnlyList<JarEntry> jars)
    {
        return ShopLives.Of(bench, view).Then<JarDating>(lives => new JarDating(bench, view, lives)).Then(dating => dating.Lives.SaysMore
            ? Results.All(jars.Select(j => JarHistory.Of(JarNumber.From(j.Number), view.EventsOf(Subject.Jar(j.Number)))))
                .Then(all => Result<IReadOnlyDictionary<int, KeepingDates>>.Of(all
                    .Select(h => LearnedDates.Mark(dating, h))
                    .Where(j => j.Learned is not null)
                    .ToDictionary(j => j.Number.Value, j => j.Learned!)))
            : Result<IReadOnlyDictionary<int, KeepingDates>>.Of(new Dictionary<int, KeepingDates>()));
    }

    /// <summary>What to say of them: one caution for all.</summary>
    public static IReadOnlyList<Problem> Cautions(IReadOnlyDictionary<int, KeepingDates> moved) =>
        moved.Count == 0 ? [] : [OperationProblems.UseByOfShelfMoved([.. moved.OrderBy(m => m.Value.UseBy).Select(m => (JarNumber.From(m.Key), m.Value.UseBy))])];
}
