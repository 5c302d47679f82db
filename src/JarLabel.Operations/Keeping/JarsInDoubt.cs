namespace JarLabel.Operations.Keeping;

/// <summary>Finds jars whose flakes were found to be going off after they were mixed, and those of which another with liquid of the same batch failed its test: their dates
/// were given without knowing it, and a few drops come before any use. A test that the jar passed since then settles it for as long as a test holds.</summary>
/// <param name="view">The ledger.</param>
/// <param name="origins">Follows jars back through it.</param>
/// <param name="today">The day that is asked for.</param>
internal sealed class JarsInDoubt(LedgerView view, JarOrigins origins, DateOnly today)
{
    private readonly Dictionary<SupplyNumber, Bag?> bags = [];

    /// <summary>What is known at the moment of a bench.</summary>
    internal static JarsInDoubt Of(Workbench bench, LedgerView view, JarOrigins origins) => new(view, origins, DateOnly.FromDateTime(bench.Now));

    /// <summary>What a jar is in doubt for.</summary>
    internal JarDoubts Of(JarHistory history)
    {
        var jar = history.Jar;
        if (!jar.OnShelf || jar.FailedOn is not null || !history.Events.Any(e => e.Event is Mixed { Bag: not null } or Thickened { Bag: not null } or Blended or Decanted or PouredOut))
        {
            return JarDoubts.None;
        }

        var batches = origins.Of(history.Life) ?? [];
        Bag[] bad = [.. batches.Where(IsFoundBad).Select(batch => Bag(batch.Bag!.Value)!).Distinct()];
        FailedKin[] failed = history.Events.Any(e => e.Event is Blended or Decanted or PouredOut) ? [.. Failed(jar, batches)] : [];
        var doubts = new JarDoubts([.. bad.Where(bag => !Settles(jar, bag.Bad!.At))], [.. failed.Where(kin => !Settles(jar, kin.At))])
        {
            AgainFrom = bad.Any(bag => Settles(jar, bag.Bad!.At)) || failed.Any(kin => Settles(jar, kin.At)) ? jar.Test!.AgainFrom : null,
            Shortened = bad.Length > 0,
        };
        return doubts.Matters ? doubts with { StillPromised = doubts.Since is { } since && IsPromised(history, since) } : JarDoubts.None;
    }

    private bool Settles(Jar jar, DateTime found) => jar.Test?.Settles(found, today) == true;

    /// <summary>True where the newest label on the glass is from before the doubt, or from when a test had settled it.</summary>
    private static bool IsPromised(JarHistory history, DateTime since) =>
        history.Events.Select(e => e.Event).OfType<Labelled>().LastOrDefault(printed => printed.IsOnGlass) is { } label
        && !LabelCode.SaysInDoubt(label.Payload) && (label.At < since || (history.Jar.Test is { Passed: true, At: { } passed } && passed >= since && passed <= label.At));

    /// <summary>By number, every jar in doubt with what it is for. Only jars are read that hold flakes of a bag that was ever tried, or are of a batch that failed.</summary>
    internal IReadOnlyDictionary<int, JarDoubts> All()
    {
        var tried = view.EventsOf(SubjectKind.Bag).Where(row => row.Kind == nameof(FlakesTested)).Select(row => SupplyNumber.From(row.Of.Number)).Distinct().ToArray();
        var from = tried.Select(Bag).OfType<Bag>().Where(bag => bag.Bad is not null).SelectMany(bag => bag.Taken).Select(taken => taken.Jar);
        var failed = view.FailedJars().Select(JarNumber.From).SelectMany(jar => JarHistory.Of(jar, view.EventsOf(Subject.Jar(jar.Value))).TryGet(out var history, out _) ? (origins.Of(history.Life) ?? []).Select(batch => batch.Mother) : []);
        return Reached(view, [.. from, .. failed]).Select(history => (history.Jar.Number, Doubts: Of(history))).Where(jar => jar.Doubts.Matters).ToDictionary(jar => jar.Number.Value, jar => jar.Doubts);
    }

    /// <summary>Jars that hold flakes of a bag of which a pinch was taken back, so that nothing is said against it any more: they may have been dated for it.</summary>
    internal IReadOnlySet<int> Cleared()
    {
        var undone = view.EventsOf(SubjectKind.Bag).Where(row => row.Kind == nameof(SupplyUndone)).Select(row => SupplyNumber.From(row.Of.Number)).Distinct().ToArray();
        return Reached(view, undone.Select(Bag).OfType<Bag>().Where(bag => bag.Bad is null).SelectMany(bag => bag.Taken).Select(taken => taken.Jar)).Select(history => history.Jar.Number.Value).ToHashSet();
    }

    /// <summary>Other jars of the same batches whose own drops stayed soft.</summary>
    private IEnumerable<FailedKin> Failed(Jar jar, IEnumerable<KeptBatch> batches) => Reached(view, batches.Select(batch => batch.Mother).Distinct())
        .Select(history => history.Jar)
        .Where(kin => kin.Number != jar.Number && kin is { TakenBack: null, Test: { Passed: false, OfMother: false } })
        .Select(kin => new FailedKin(kin.Number, kin.Test!.At ?? kin.Test.Day.ToDateTime(TimeOnly.MinValue)));

    /// <summary>The jars on a shelf that hold flakes of a bag: mixed from it, or filled from one that was.</summary>
    internal static IReadOnlyList<JarNumber> Holding(LedgerView view, Bag bag) =>
        [.. Reached(view, bag.Taken.Select(taken => taken.Jar)).Where(history => history.Jar.OnShelf).Select(history => history.Jar.Number)];

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

    /// <summary>True where flakes of a batch were found to be going off after they went into alcohol. One of flakes that were known to be cloudy was dated with that.</summary>
    internal bool IsFoundBad(KeptBatch batch) =>
        batch.Bag is { } from && Bag(from)?.Bad is { } test && test.At >= batch.Since && !(test.Pinch == Pinch.Cloudy && batch.Flakes.Cloudy);
}
