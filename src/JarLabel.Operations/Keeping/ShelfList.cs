namespace JarLabel.Operations.Keeping;

/// <summary>Jars of the shelves as listed, soonest use-by on record first.</summary>
/// <param name="Jars">The jars.</param>
/// <param name="Known">What is known of some of them beside what is on record.</param>
public sealed record ShelfList(IReadOnlyList<JarEntry> Jars, ShelfKnowledge Known)
{
    /// <summary>Lists jars.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="view">The ledger.</param>
    /// <param name="query">Which jars, and how many at most.</param>
    /// <param name="due">Only those that on this day are to be tested or past their use-by, by the more careful dates; null for all.</param>
    /// <param name="soonest">True for those first that are due soonest by the more careful dates; else in the order on record, which can be gone on with.</param>
    public static Result<ShelfList> Of(Workbench bench, LedgerView view, ShelfQuery query, DateOnly? due, bool soonest = true)
    {
        if (!ShopLives.Of(bench, view).TryGet(out var lives, out var faults))
        {
            return faults;
        }

        // By the shop's tests or because of its flakes a jar may be due sooner than on record, however far behind it stands; what comes behind a mark goes on in the order on record.
        var far = due is not null || (soonest && lives.SaysMore);
        var looked = view.Shelf(far ? query with { Take = Math.Max(query.Take, MostLookedAt) } : query);
        if (!ShelfKnowledge.Of(new JarDating(bench, view, lives), view, looked).TryGet(out var known, out faults))
        {
            return faults;
        }

        var found = due is { } day ? Due(view.Shelf(query with { Due = day, Take = int.MaxValue }), [.. looked, .. Behind(view, query, looked, known)], known, bench.Now) : looked;
        JarEntry[] first = [.. (soonest ? known.SoonestFirst(found) : found).Take(query.Take)];
        return new ShelfList(first, known) { Standing = due is null ? first.Length : found.Count, OldLabels = OldLabelsOf(view, first), Poisons = PoisonsOf(bench, view, first) };
    }

    private const int MostLookedAt = 1000;

    /// <summary>How many there are of which these are the first.</summary>
    public int Standing { get; private init; }

    /// <summary>Those that can poison.</summary>
    public IReadOnlySet<int> Poisons { get; init; } = new HashSet<int>();

    /// <summary>Where an alcohol in it can poison, a jar is worked out whole as for its label, because flakes take their share of the weight. Of one grade in one alcohol
    /// all of a cut are alike.</summary>
    private static HashSet<int> PoisonsOf(Workbench bench, LedgerView view, IReadOnlyList<JarEntry> jars)
    {
        var poisons = jars.SelectMany(jar => jar.Solvents).Distinct().Where(solvent => SupplyWords.Hazards(bench, bench.Catalog.SolventOf(solvent)).CanPoison).ToHashSet();
        return
        [
            .. jars.Where(jar => jar.Solvents.Any(poisons.Contains))
                .GroupBy(jar => (jar.Flakes, jar.Alcohol, jar.Cut, Of: jar.Solvents.Count == 1 && jar.Grades.Count == 1 ? 0 : jar.Number))
                .Where(alike => IsPoison(bench, view, alike.First()))
                .SelectMany(alike => alike.Select(jar => jar.Number)),
        ];
    }

    private static bool IsPoison(Workbench bench, LedgerView view, JarEntry jar) =>
        !JarHistory.Of(JarNumber.From(jar.Number), view.EventsOf(Subject.Jar(jar.Number))).TryGet(out var history, out _) || JarWords.Hazards(bench, history.Jar).CanPoison;

    /// <summary>Those whose newest label speaks of them as they were.</summary>
    public IReadOnlySet<int> OldLabels { get; init; } = new HashSet<int>();

    /// <summary>True when the label on the jar is no longer true, because of what was done to it or because its dates have moved.</summary>
    public bool IsLabelOld(JarEntry jar) => OldLabels.Contains(jar.Number) || Doubts(jar).StillPromised || (Learned(jar) is not null && !Known.Unlabelled.Contains(jar.Number));

    /// <summary>The use-by that counts now, the more careful one, and whether its label is out of date; of a jar in doubt there is none.</summary>
    /// <param name="jar">A listed jar.</param>
    /// <param name="said">How a day is written.</param>
    public string UseBy(JarEntry jar, Func<DateOnly, string> said) => $"{(Doubts(jar).Any ? "in doubt" : said(Known.UseBy(jar)))}{(IsLabelOld(jar) ? ", label out of date" : "")}";

    private static IReadOnlySet<int> OldLabelsOf(LedgerView view, IReadOnlyList<JarEntry> jars) => view.OldLabels(jars.Select(jar => jar.Number));

    /// <summary>The dates that the tests say now; null where they are those on record.</summary>
    public KeepingDates? Learned(JarEntry jar) => Known.Moved.GetValueOrDefault(jar.Number);

    /// <summary>What it is in doubt for.</summary>
    public JarDoubts Doubts(JarEntry jar) => Known.DoubtsOf(jar.Number);

    /// <summary>From when a drop is tried before use, as on record or as what was found since says.</summary>
    public DateOnly TestFrom(JarEntry jar) => Doubts(jar).TestFrom(Known.DatesOf(jar).TestFrom);

    /// <summary>How a listed jar stands, by the more careful dates.</summary>
    public JarState StateOf(JarEntry jar, DateTime now) => Known.StateOf(jar, now);

    /// <summary>Those in doubt that stand so far behind that they were not looked at.</summary>
    private static IEnumerable<JarEntry> Behind(LedgerView view, ShelfQuery query, IReadOnlyList<JarEntry> looked, ShelfKnowledge known) =>
        known.Doubts.Keys.Except(looked.Select(jar => jar.Number)).Select(view.Jar).OfType<JarEntry>().Where(query.Includes);

    private static IReadOnlyList<JarEntry> Due(IReadOnlyList<JarEntry> onRecord, IReadOnlyList<JarEntry> all, ShelfKnowledge known, DateTime now) =>
        [.. onRecord.Concat(all.Where(jar => known.Has(jar) && known.StateOf(jar, now) is (JarState.Test or JarState.Past))).DistinctBy(j => j.Number).OrderBy(j => j.UseBy).ThenBy(j => j.Number)];

    /// <summary>What to say of the jars listed: that their dates have moved, that they are in doubt.</summary>
    public IReadOnlyList<Problem> Cautions =>
    [
        .. Known.Moved.Count == 0 ? Array.Empty<Problem>() : [OperationProblems.UseByOfShelfMoved([.. Known.Moved.OrderBy(m => m.Value.UseBy).Select(m => (JarNumber.From(m.Key), m.Value.UseBy))], Known.Moved.Keys.Any(jar => !Known.Unlabelled.Contains(jar)))],
        .. JarDoubts.Cautions(Jars.Select(jar => (JarNumber.From(jar.Number), Doubts(jar)))),
    ];
}

/// <summary>What is known of jars on the shelves beside what is on record of each.</summary>
/// <param name="Moved">By number, the dates that the shop's drying tests say now where those on record are clearly others.</param>
/// <param name="Doubts">By number, what those are in doubt for that are.</param>
public sealed record ShelfKnowledge(IReadOnlyDictionary<int, KeepingDates> Moved, IReadOnlyDictionary<int, JarDoubts> Doubts)
{
    /// <summary>What is known of those jars.</summary>
    public static Result<ShelfKnowledge> Of(Workbench bench, LedgerView view, IReadOnlyList<JarEntry> jars) =>
        ShopLives.Of(bench, view).Then<ShelfKnowledge>(lives => Of(new JarDating(bench, view, lives), view, jars));

    internal static Result<ShelfKnowledge> Of(JarDating dating, LedgerView view, IReadOnlyList<JarEntry> jars)
    {
        var doubts = dating.Doubts.All();
        var read = dating.Lives.SaysMore ? jars : Reread(dating.Doubts.Cleared());
        if (!Results.All(read.Select(j => JarHistory.Of(JarNumber.From(j.Number), view.EventsOf(Subject.Jar(j.Number))))).TryGet(out var all, out var faults))
        {
            return faults;
        }

        JarHistory[] moved = [.. all.Select(history => history with { Jar = LearnedDates.Mark(dating, history) }).Where(history => history.Jar.Learned is not null)];
        return new ShelfKnowledge(moved.ToDictionary(history => history.Jar.Number.Value, history => history.Jar.Learned!), doubts)
        {
            Unlabelled = moved.Where(history => !history.IsLabelled).Select(history => history.Jar.Number.Value).ToHashSet(),
        };

        // Without tests only what was found of flakes moves a date.
        IReadOnlyList<JarEntry> Reread(IReadOnlySet<int> cleared) => [.. jars.Where(jar => doubts.GetValueOrDefault(jar.Number)?.Shortened == true || cleared.Contains(jar.Number))];
    }

    /// <summary>What a jar is in doubt for.</summary>
    public JarDoubts DoubtsOf(int jar) => Doubts.GetValueOrDefault(jar, JarDoubts.None);

    /// <summary>Those of the moved that never had a label.</summary>
    public IReadOnlySet<int> Unlabelled { get; private init; } = new HashSet<int>();

    /// <summary>How a jar stands, by the more careful dates.</summary>
    public JarState StateOf(JarEntry jar, DateTime now) => DatesOf(jar).StateAt(now, jar.Test, inDoubt: DoubtsOf(jar.Number).Any);

    /// <summary>A jar's dates, the more careful of those on record and those the tests say now.</summary>
    internal KeepingDates DatesOf(JarEntry jar)
    {
        var onRecord = new KeepingDates(jar.Ready, jar.TestFrom, jar.UseBy);
        return Moved.TryGetValue(jar.Number, out var learned) ? onRecord.Shortest(learned) : onRecord;
    }

    /// <summary>Until when a jar is expected to dry hard, by the more careful of the dates.</summary>
    public DateOnly UseBy(JarEntry jar) => DatesOf(jar).UseBy;

    /// <summary>Those first that are due soonest by the more careful dates.</summary>
    public IEnumerable<JarEntry> SoonestFirst(IEnumerable<JarEntry> jars) => jars.OrderBy(jar => (UseBy(jar), jar.Number));

    internal bool Has(JarEntry jar) => Moved.ContainsKey(jar.Number) || Doubts.ContainsKey(jar.Number);
}
