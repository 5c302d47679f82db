namespace JarLabel.Core.Jars;

/// <summary>Follows what is in a jar back to where each batch of it was mixed, through every jar that it was poured from.</summary>
/// <param name="find">The life of a jar; null where it cannot be read.</param>
public sealed class JarOrigins(Func<JarNumber, JarLife?> find)
{
    /// <summary>More different batches than a shop pours together; what is beyond is not followed.</summary>
    private const int MostBatches = 100;

    /// <summary>More jars that were poured one from the other than a shop does.</summary>
    private const int Deepest = 200;

    private int depth;

    private readonly Dictionary<(JarNumber From, JarNumber Into), IReadOnlyList<KeptBatch>?> known = [];

    /// <summary>Every batch that is in a jar, the jar's own flakes first; null where one of the jars it came from cannot be followed.</summary>
    public IReadOnlyList<KeptBatch>? Of(JarLife life) => Of(life.Jar.Number, [.. life.Standing.Reverse()]);

    /// <summary>The batches in a jar after these of its events, the first one first.</summary>
    internal IReadOnlyList<KeptBatch>? Of(JarNumber jar, IReadOnlyList<JarEvent> events) => events is [IBeginning begun, ..] ? events.Skip(1).Aggregate((IReadOnlyList<KeptBatch>?)Begun(jar, begun), (batches, happened) => happened switch
    {
        Moved m => batches?.Select(b => b.Then(m.At, m.Shelf)).ToArray(),
        Thickened t => batches is [var first, ..] ? [.. batches, new KeptBatch(jar, t.At, t.Added, t.Bag, [new Stay(t.At, first.Stays[^1].Shelf)])] : null,
        _ => batches,
    }) : null;

    private List<KeptBatch>? Begun(JarNumber jar, IBeginning begun) => begun switch
    {
        Mixed m => [.. m.Contents.Resins.Select(r => new KeptBatch(jar, m.At, r, m.Bag, [new Stay(m.At, m.Shelf)]))],
        Decanted d => Poured(jar, [d.From], d.At, d.Shelf),
        Blended b => Poured(jar, b.From, b.At, b.Shelf),
        _ => null,
    };

    private List<KeptBatch>? Poured(JarNumber into, IReadOnlyList<JarNumber> from, DateTime at, string shelf)
    {
        var all = new List<KeptBatch>();
        foreach (var jar in from)
        {
            if (Before(jar, into, at) is not { } batches)
            {
                return null;
            }

            all.AddRange(batches.Select(b => b.Then(at, shelf)).Where(b => !all.Any(b.IsSame)));
        }

        return all.Count is > 0 and <= MostBatches ? all : null;
    }

    /// <summary>The batches in a jar when it was poured into another one, which has always a later number.</summary>
    private IReadOnlyList<KeptBatch>? Before(JarNumber jar, JarNumber into, DateTime at)
    {
        if (jar >= into || depth == Deepest)
        {
            return null;
        }

        if (!known.TryGetValue((jar, into), out var batches))
        {
            depth++;
            known[(jar, into)] = batches = find(jar) is { } life ? Of(jar, Poured([.. life.Standing.Reverse()], into, at)) : null;
            depth--;
        }

        return batches;
    }

    // While the step is at work, the jar that is poured from does not have its event yet.
    private static JarEvent[] Poured(JarEvent[] events, JarNumber into, DateTime at) =>
        Array.FindIndex(events, e => e is PouredOut p && p.To == into) is var place && place >= 0 ? events[..place] : [.. events.TakeWhile(e => e.At <= at)];
}

/// <summary>Flakes that went into alcohol at one moment, and where they have stood since, in whatever jars.</summary>
/// <param name="Mother">The jar they went into.</param>
/// <param name="Since">When.</param>
/// <param name="Flakes">What they were.</param>
/// <param name="Bag">The bag they came from, where that was said.</param>
/// <param name="Stays">Where they stood, in order; no two that follow each other are on one shelf.</param>
public sealed record KeptBatch(JarNumber Mother, DateTime Since, ResinPart Flakes, SupplyNumber? Bag, IReadOnlyList<Stay> Stays)
{
    /// <summary>The same when it came to a shelf: a stay of no length is none, and one that goes on is one.</summary>
    public KeptBatch Then(DateTime at, string shelf)
    {
        Stay[] before = [.. Stays.Where(s => s.From < at)];
        return this with { Stays = before is [.., var last] && last.Shelf == shelf ? before : [.. before, new Stay(at, shelf)] };
    }

    internal bool IsSame(KeptBatch other) => (Mother, Since, Flakes with { Weight = other.Flakes.Weight }, Bag) == (other.Mother, other.Since, other.Flakes, other.Bag) && Stays.SequenceEqual(other.Stays);

    /// <summary>How warm they were from each moment on.</summary>
    /// <param name="shelf">How warm a shelf is and was.</param>
    public IReadOnlyList<(DateTime From, Temperature Warmth)> Warmth(Func<string, WarmthHistory> shelf) =>
        [.. Stays.SelectMany((stay, i) => shelf(stay.Shelf).Since(stay.From).Where(w => i + 1 == Stays.Count || w.From < Stays[i + 1].From))];

    /// <summary>Their age at a moment, in days as at 20 °C.</summary>
    /// <param name="at">The moment.</param>
    /// <param name="shelf">How warm a shelf is and was.</param>
    /// <param name="q10">How many times faster it ages when it is 10 °C warmer.</param>
    public double Age(DateTime at, Func<string, WarmthHistory> shelf, double q10) =>
        Stays.Select((stay, i) => shelf(stay.Shelf).AgedDays(stay.From, i + 1 < Stays.Count && Stays[i + 1].From < at ? Stays[i + 1].From : at, q10)).Sum();
}

/// <summary>A stay on a shelf; it lasts until the next one begins.</summary>
/// <param name="From">When it begins.</param>
/// <param name="Shelf">The shelf.</param>
public readonly record struct Stay(DateTime From, string Shelf);
