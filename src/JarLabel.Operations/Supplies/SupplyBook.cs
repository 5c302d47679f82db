namespace JarLabel.Operations.Supplies;

/// <summary>The bags of flakes and bottles of alcohol in the ledger.</summary>
public static class SupplyBook
{
    /// <summary>One bag.</summary>
    public static Result<Bag> Bag(Workbench bench, SupplyNumber number) => Find(bench, SupplyKind.Bag, number).Then<Bag>(found => (Bag)found);

    /// <summary>One bag, in a ledger that is open.</summary>
    internal static Result<Bag> Bag(LedgerView view, SupplyNumber number) => Find(view, SupplyKind.Bag, number).Then<Bag>(found => (Bag)found);

    /// <summary>One bottle.</summary>
    public static Result<Bottle> Bottle(Workbench bench, SupplyNumber number) => Find(bench, SupplyKind.Bottle, number).Then<Bottle>(found => (Bottle)found);

    /// <summary>The bags that still hold something, the oldest flakes first.</summary>
    public static Result<IReadOnlyList<Bag>> Bags(Workbench bench) => LedgerAccess.Read(bench, Bags);

    /// <summary>The bottles that still hold something, the oldest first.</summary>
    public static Result<IReadOnlyList<Bottle>> Bottles(Workbench bench) => LedgerAccess.Read(bench, Bottles);

    /// <summary>The grade in a bag.</summary>
    public static Result<Grade> GradeIn(Workbench bench, SupplyNumber bag) =>
        Bag(bench, bag).Then(found => bench.Catalog.Grades.Named(found.Grade, "bag"));

    /// <summary>The alcohol in a bottle.</summary>
    public static Result<Solvent> SolventIn(Workbench bench, SupplyNumber bottle) =>
        Bottle(bench, bottle).Then(found => bench.Catalog.Solvents.Named(found.Solvent, "bottle"));

    /// <summary>What happened to a bag or bottle, in order.</summary>
    public static Result<IReadOnlyList<SupplyEvent>> Events(LedgerView view, Subject of) => Read(view.EventsOf(of));

    internal static SubjectKind Kind(SupplyKind kind) => kind == SupplyKind.Bag ? SubjectKind.Bag : SubjectKind.Bottle;

    internal static Subject Subject(SupplyKind kind, SupplyNumber number) => new(Kind(kind), number.Value);

    /// <summary>One bag or bottle.</summary>
    internal static Result<Supply> Find(LedgerView view, SupplyKind kind, SupplyNumber number) =>
        Events(view, Subject(kind, number)).Then(events => Fold(kind, number, events));

    /// <summary>One bag or bottle, unless somebody has done something with it since a form was opened.</summary>
    internal static Result<Supply> Unchanged(Workbench bench, LedgerView view, SupplyKind kind, SupplyNumber number)
    {
        var rows = view.EventsOf(Subject(kind, number));
        return Read(rows).Then(events => Fold(kind, number, events)).Then<Supply>(supply =>
            bench.EventsSeen is { } seen && rows.Any(row => row.Sequence > seen && row.Kind != nameof(SupplyLabelled)) ? OperationProblems.ChangedSince(supply, bench.Metric) : supply);
    }

    internal static Result<Supply> Find(Workbench bench, SupplyKind kind, SupplyNumber number) => LedgerAccess.Read(bench, view => Find(view, kind, number));

    /// <summary>Tells of a number that can be read that the ledger has no such bag or bottle.</summary>
    internal static Func<Workbench, string, IReadOnlyList<Problem>> NotThere(SupplyKind kind) => (bench, text) =>
        SupplyNumber.Read(kind, text, kind.Word()).TryGet(out var number, out _) ? Find(bench, kind, number).Problems : [];

    private static Result<Supply> Fold(SupplyKind kind, SupplyNumber number, IReadOnlyList<SupplyEvent> events) => kind == SupplyKind.Bag
        ? Core.Supplies.Bag.Fold(number, events).Then<Supply>(bag => bag)
        : Core.Supplies.Bottle.Fold(number, events).Then<Supply>(bottle => bottle);

    /// <summary>The bags that still hold something, the oldest flakes first.</summary>
    public static Result<IReadOnlyList<Bag>> Bags(LedgerView view) => OnHand<Bag>(view, SupplyKind.Bag);

    /// <summary>The bottles that still hold something, the oldest first.</summary>
    public static Result<IReadOnlyList<Bottle>> Bottles(LedgerView view) => OnHand<Bottle>(view, SupplyKind.Bottle);

    /// <summary>Those of a kind that still hold something, the oldest first.</summary>
    internal static Result<IReadOnlyList<Supply>> OnHand(Workbench bench, SupplyKind kind) => LedgerAccess.Read(bench, view => OnHand<Supply>(view, kind));

    /// <summary>All of a kind that ever came, those that still hold something first, then by their numbers, the newest first.</summary>
    internal static Result<IReadOnlyList<Supply>> All(Workbench bench, SupplyKind kind) => LedgerAccess.Read(bench, view => All(view, kind))
        .Then(all => Result<IReadOnlyList<Supply>>.Of([.. all.OrderByDescending(one => one.OnHand).ThenByDescending(one => one.Number.Value)]));

    private static Result<IReadOnlyList<T>> OnHand<T>(LedgerView view, SupplyKind kind)
        where T : Supply => All(view, kind).Then(all => Result<IReadOnlyList<T>>.Of([.. all.Where(one => one.OnHand).OrderBy(one => one.Since).Cast<T>()]));

    private static Result<IReadOnlyList<Supply>> All(LedgerView view, SupplyKind kind) => Results.All(
        view.EventsOf(Kind(kind)).GroupBy(row => row.Of.Number).Select(life => Read(life).Then(events => Fold(kind, SupplyNumber.From(life.Key), events))));

    /// <summary>Adds an event at the end of a bag's or bottle's life.</summary>
    internal static void Append(LedgerStep step, Subject of, SupplyEvent happened) => step.Append(
        of, happened.At.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture), happened.Name, 0, SupplyEventJson.Write(happened));

    /// <summary>What is wrong with the life of one bag or bottle.</summary>
    internal static IReadOnlyList<Problem> LifeFaults(IReadOnlyList<EventRow> rows) => Read(rows).Then(events =>
        Fold(rows[0].Of.Kind == SubjectKind.Bag ? SupplyKind.Bag : SupplyKind.Bottle, SupplyNumber.From(rows[0].Of.Number), events)).Problems;

    /// <summary>The event at its moment, which is not before anything that was said of the bag or bottle and still stands; a batch that was entered late is not the latest.</summary>
    internal static Result<SupplyEvent> InTime(Workbench bench, Supply supply, SupplyEvent happened) => (happened is SupplyUndone ? supply.Last : supply.Latest) is { } last
        ? bench.NotBefore(last.At, () => OperationProblems.OutOfOrder(supply, last, bench.Now), () => Behind(supply, bench.Now, happened is SupplyUndone && Workbench.IsAhead(last.At, bench.Now) ? supply.BeforeLast : last))
            .Then<SupplyEvent>(now => happened with { At = now })
        : happened;

    private static Problem? Behind(Supply supply, DateTime clock, SupplyEvent? last) => last is not null && last.At > clock ? OperationProblems.ClockBehind(supply, last, clock) : null;

    internal static Result<SupplyEvent> Read(EventRow row) =>
        SupplyEventJson.Read(row.Body, string.Create(CultureInfo.InvariantCulture, $"event {row.Sequence}"));

    private static Result<IReadOnlyList<SupplyEvent>> Read(IEnumerable<EventRow> rows) => Results.All(rows.Select(Read));
}
