namespace JarLabel.Operations.Supplies;

/// <summary>The bags of flakes and bottles of alcohol in the ledger.</summary>
public static class SupplyBook
{
    /// <summary>One bag.</summary>
    public static Result<Bag> Bag(Workbench bench, SupplyNumber number) => LedgerAccess.Read(bench, view => Bag(view, number));

    /// <summary>One bottle.</summary>
    public static Result<Bottle> Bottle(Workbench bench, SupplyNumber number) => LedgerAccess.Read(bench, view => Bottle(view, number));

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

    internal static Subject Subject(SupplyKind kind, SupplyNumber number) =>
        kind == SupplyKind.Bag ? Store.Subject.Bag(number.Value) : Store.Subject.Bottle(number.Value);

    internal static Result<Bag> Bag(LedgerView view, SupplyNumber number) =>
        Events(view, Store.Subject.Bag(number.Value)).Then(events => Core.Supplies.Bag.Fold(number, events));

    internal static Result<Bottle> Bottle(LedgerView view, SupplyNumber number) =>
        Events(view, Store.Subject.Bottle(number.Value)).Then(events => Core.Supplies.Bottle.Fold(number, events));

    /// <summary>The bags that still hold something, the oldest flakes first.</summary>
    public static Result<IReadOnlyList<Bag>> Bags(LedgerView view) =>
        All(view.EventsOf(SubjectKind.Bag), Core.Supplies.Bag.Fold, bag => bag.OnHand, bag => bag.Made);

    /// <summary>The bottles that still hold something, the oldest first.</summary>
    public static Result<IReadOnlyList<Bottle>> Bottles(LedgerView view) =>
        All(view.EventsOf(SubjectKind.Bottle), Core.Supplies.Bottle.Fold, bottle => bottle.OnHand, bottle => bottle.Since);

    /// <summary>Adds an event at the end of a bag's or bottle's life.</summary>
    internal static void Append(LedgerStep step, Subject of, SupplyEvent happened) => step.Append(
        of, happened.At.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture), happened.Name, 0, SupplyEventJson.Write(happened));

    /// <summary>What is wrong with the life of one bag or bottle.</summary>
    internal static IReadOnlyList<Problem> LifeFaults(IReadOnlyList<EventRow> rows) => Read(rows).Then(events => rows[0].Of.Kind == SubjectKind.Bag
        ? Core.Supplies.Bag.Fold(SupplyNumber.From(rows[0].Of.Number), events).Then<bool>(_ => true)
        : Core.Supplies.Bottle.Fold(SupplyNumber.From(rows[0].Of.Number), events).Then<bool>(_ => true)).Problems;

    /// <summary>The event at its moment, which is not before the last thing that was said of the bag or bottle itself.</summary>
    internal static Result<SupplyEvent> InTime(Workbench bench, LedgerStep step, Subject of, SupplyEvent happened) => Events(step, of).Then<SupplyEvent>(events =>
        events.LastOrDefault(e => e is not (SupplyLabelled or PutBack)) is { } last
            ? bench.NotBefore(last.At, () => OperationProblems.OutOfOrder(of.ToString(), last.At, bench.Now), () => OperationProblems.ClockBehind(of.ToString(), last.At, bench.Now))
                .Then<SupplyEvent>(now => happened with { At = now })
            : happened);

    internal static Result<SupplyEvent> Read(EventRow row) =>
        SupplyEventJson.Read(row.Body, string.Create(CultureInfo.InvariantCulture, $"event {row.Sequence}"));

    private static Result<IReadOnlyList<T>> All<T>(
        IEnumerable<EventRow> rows, Func<SupplyNumber, IReadOnlyList<SupplyEvent>, Result<T>> fold, Func<T, bool> there, Func<T, DateOnly> day)
        where T : notnull
    {
        var all = new List<T>();
        foreach (var life in rows.GroupBy(row => row.Of.Number))
        {
            if (!Read(life).Then(events => fold(SupplyNumber.From(life.Key), events)).TryGet(out var one, out var problems))
            {
                return Result<IReadOnlyList<T>>.Failed(problems);
            }

            all.Add(one);
        }

        return Result<IReadOnlyList<T>>.Of([.. all.Where(there).OrderBy(day)]);
    }

    private static Result<IReadOnlyList<SupplyEvent>> Read(IEnumerable<EventRow> rows)
    {
        var events = new List<SupplyEvent>();
        foreach (var row in rows)
        {
            if (!Read(row).TryGet(out var happened, out var problems))
            {
                return Result<IReadOnlyList<SupplyEvent>>.Failed(problems);
            }

            events.Add(happened);
        }

        return events;
    }
}
