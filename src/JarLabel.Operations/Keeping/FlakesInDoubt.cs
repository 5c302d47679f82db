namespace JarLabel.Operations.Keeping;

/// <summary>Finds jars whose flakes were found to be going off after they were mixed: their dates were given without knowing it, and a few drops come before any use.
/// A test that the jar passed since then settles it for as long as a test holds.</summary>
/// <param name="view">The ledger.</param>
/// <param name="origins">Follows jars back through it.</param>
/// <param name="today">The day that is asked for.</param>
internal sealed class FlakesInDoubt(LedgerView view, JarOrigins origins, DateOnly today)
{
    private readonly Dictionary<SupplyNumber, Bag?> bags = [];

    /// <summary>The bags of which bad flakes are in a jar.</summary>
    internal IReadOnlyList<Bag> Of(JarHistory history)
    {
        var jar = history.Jar;
        if (!jar.OnShelf || jar.FailedOn is not null || !history.Events.Any(e => e.Event is Mixed { Bag: not null } or Thickened { Bag: not null } or Blended or Decanted))
        {
            return [];
        }

        var batches = origins.Of(history.Life) ?? [];
        return [.. batches.Where(batch => batch.Bag is { } from && Bag(from) is { } bag && IsDoubted(batch, bag, jar.Test)).Select(batch => Bag(batch.Bag!.Value)!).Distinct()];
    }

    /// <summary>By number, every jar in doubt with the bags it is for. Only jars are read that hold flakes of a bag that was ever tried.</summary>
    internal IReadOnlyDictionary<int, IReadOnlyList<Bag>> All()
    {
        var tried = view.EventsOf(SubjectKind.Bag).Where(row => row.Kind == nameof(FlakesTested)).Select(row => SupplyNumber.From(row.Of.Number)).Distinct().ToArray();
        var from = tried.Select(Bag).OfType<Bag>().Where(bag => bag.Bad is not null).SelectMany(bag => bag.Taken).Select(taken => taken.Jar).ToArray();
        return Reached(view, from).Select(history => (history.Jar.Number, Bags: Of(history))).Where(jar => jar.Bags.Count > 0).ToDictionary(jar => jar.Number.Value, jar => jar.Bags);
    }

    /// <summary>The jars on a shelf that hold flakes of a bag: mixed from it, or filled from one that was.</summary>
    internal static IReadOnlyList<JarNumber> Holding(Workbench bench, Bag bag) => LedgerAccess.Read(bench, view => Result<IReadOnlyList<JarNumber>>.Of(
        [.. Reached(view, bag.Taken.Select(taken => taken.Jar)).Where(history => history.Jar.OnShelf).Select(history => history.Jar.Number)])).TryGet(out var jars, out _) ? jars : [];

    /// <summary>What to say of the jars of a list, once for each bag.</summary>
    internal static IReadOnlyList<Problem> Cautions(IEnumerable<(JarNumber Jar, IReadOnlyList<Bag> Bags)> doubts) =>
    [
        .. doubts.SelectMany(doubt => doubt.Bags.Select(bag => (doubt.Jar, Bag: bag))).GroupBy(doubt => doubt.Bag.Number)
            .Select(of => BagCautions.OfJars(of.First().Bag, [.. of.Select(doubt => doubt.Jar).Order()])),
    ];

    private Bag? Bag(SupplyNumber number)
    {
        if (!bags.TryGetValue(number, out var bag))
        {
            bags[number] = bag = SupplyBook.Bag(view, number).TryGet(out var found, out _) ? found : null;
        }

        return bag;
    }

    /// <summary>Jars, and those that were filled from them, each once.</summary>
    private static IEnumerable<JarHistory> Reached(LedgerView view, IEnumerable<JarNumber> from)
    {
        var (next, seen) = (new Queue<JarNumber>(from), new HashSet<JarNumber>());
        while (next.TryDequeue(out var jar))
        {
            if (seen.Add(jar) && JarHistory.Of(jar, view.EventsOf(Subject.Jar(jar.Value))).TryGet(out var history, out _))
            {
                history.Life.Standing.OfType<PouredOut>().ToList().ForEach(poured => next.Enqueue(poured.To));
                yield return history;
            }
        }
    }

    /// <summary>A batch of flakes that were known to be cloudy was dated with that.</summary>
    private bool IsDoubted(KeptBatch batch, Bag bag, TestResult? tested) =>
        bag.Bad is { } test
        && test.Day >= DateOnly.FromDateTime(batch.Since)
        && !(test.Pinch == Pinch.Cloudy && batch.Flakes.Cloudy)
        && !(tested?.HoldsOn(today) == true && tested.Day >= test.Day);
}
