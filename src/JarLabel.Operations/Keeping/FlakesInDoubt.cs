namespace JarLabel.Operations.Keeping;

/// <summary>Jars whose flakes were found to be going off after they were mixed: their dates were given without knowing it, and a few drops come before any use.
/// A test that the jar passed since then settles it for as long as a test holds.</summary>
public static class FlakesInDoubt
{
    /// <summary>What to say of one jar.</summary>
    public static IReadOnlyList<Problem> Of(Workbench bench, JarHistory history) =>
        MayBe(history) && LedgerAccess.Read(bench, view => Result<IReadOnlyList<Problem>>.Of(Of(bench, view, history))).TryGet(out var cautions, out _) ? cautions : [];

    /// <summary>What to say of the jars of a list.</summary>
    public static IReadOnlyList<Problem> Of(Workbench bench, LedgerView view, IReadOnlyList<JarEntry> jars) =>
    [
        .. Among(bench, view).Where(doubt => jars.Any(jar => jar.Number == doubt.Jar.Value)).GroupBy(doubt => doubt.Bag.Number)
            .Select(bag => BagCautions.OfJars(bag.First().Bag, [.. bag.Select(doubt => doubt.Jar).Order()])),
    ];

    internal static IReadOnlyList<Problem> Of(Workbench bench, LedgerView view, JarHistory history) =>
        [.. Bags(bench, view, JarDating.Origins(view), history).Select(bag => BagCautions.OfJars(bag, [history.Jar.Number]))];

    /// <summary>Every jar in doubt with the bag it is for. Only jars are read that hold flakes of a bag that was ever tried.</summary>
    internal static IReadOnlyList<(JarNumber Jar, Bag Bag)> Among(Workbench bench, LedgerView view)
    {
        var tried = view.EventsOf(SubjectKind.Bag).Where(row => row.Kind == nameof(FlakesTested)).Select(row => row.Of.Number).Distinct().ToArray();
        var next = new List<JarNumber>();
        foreach (var number in tried)
        {
            if (SupplyBook.Bag(view, SupplyNumber.From(number)).TryGet(out var bag, out _) && IsBad(bag))
            {
                next.AddRange(bag.Taken.Select(taken => taken.Jar));
            }
        }

        var origins = JarDating.Origins(view);
        return [.. Reached(view, next).SelectMany(history => Bags(bench, view, origins, history).Select(bag => (history.Jar.Number, bag)))];
    }

    /// <summary>The jars on a shelf that hold flakes of a bag: mixed from it, or filled from one that was.</summary>
    internal static IReadOnlyList<JarNumber> Holding(Workbench bench, Bag bag) => LedgerAccess.Read(bench, view => Result<IReadOnlyList<JarNumber>>.Of(
        [.. Reached(view, bag.Taken.Select(taken => taken.Jar)).Where(history => history.Jar.OnShelf).Select(history => history.Jar.Number)])).TryGet(out var jars, out _) ? jars : [];

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

    private static IEnumerable<Bag> Bags(Workbench bench, LedgerView view, JarOrigins origins, JarHistory history)
    {
        var jar = history.Jar;
        if (!jar.OnShelf || !MayBe(history))
        {
            return [];
        }

        var batches = origins.Of(history.Life) ?? [];
        return batches.Where(batch => batch.Bag is not null).GroupBy(batch => batch.Bag!.Value)
            .Select(of => SupplyBook.Bag(view, of.Key).TryGet(out var bag, out _) && of.Any(batch => IsDoubted(batch, bag, jar.Test, DateOnly.FromDateTime(bench.Now))) ? bag : null)
            .OfType<Bag>();
    }

    private static bool MayBe(JarHistory history) => history.Events.Any(e => e.Event is Mixed { Bag: not null } or Thickened { Bag: not null } or Blended or Decanted);

    private static bool IsBad(Bag bag) => bag.Test is { Pinch: not Pinch.All };

    /// <summary>A batch of flakes that were known to be cloudy was dated with that.</summary>
    private static bool IsDoubted(KeptBatch batch, Bag bag, TestResult? tested, DateOnly today) =>
        bag.Test is { Pinch: not Pinch.All } test
        && test.Day >= DateOnly.FromDateTime(batch.Since)
        && !(test.Pinch == Pinch.Cloudy && batch.Flakes.Cloudy)
        && !(tested?.HoldsOn(today) == true && tested.Day >= test.Day);
}
