namespace JarLabel.Operations.Labels.Many;

/// <summary>The jars that get a label, each once, and those that are left out.</summary>
/// <param name="Jars">Their numbers: named ones in the order they were named, others from the lowest.</param>
/// <param name="LeftOut">Numbers of a run whose jar is no longer on a shelf.</param>
internal sealed record JarPick(IReadOnlyList<JarCopies> Jars, IReadOnlyList<int> LeftOut)
{
    /// <summary>How many labels that makes.</summary>
    internal long Labels => Jars.Sum(jar => (long)jar.Copies);

    /// <summary>What should be known of the choice.</summary>
    internal IReadOnlyList<Problem> Cautions { get; init; } = [];

    /// <summary>Looks them up. A jar named by itself must be on a shelf; of a run, a shelf or the whole shop those are taken that are.</summary>
    internal static Result<JarPick> Of(Workbench bench, LedgerView ledger, JarsWanted wanted, int copies)
    {
        var (jars, added, leftOut, problems) = (new OrderedDictionary<int, int>(), new SortedSet<int>(), new List<int>(), new List<Problem>());
        if (wanted.Named.Sum(wish => 1L + wish.Jars.Last.Value - wish.Jars.First.Value) is > JarSpan.Longest and var numbers)
        {
            return ListProblems.TooManyJars(numbers);
        }

        foreach (var wish in wanted.Named)
        {
            var taken = OnShelf(ledger, wish, leftOut, problems);
            added.UnionWith(wish.AddsUp ? taken.Where(jars.ContainsKey) : []);
            Add(jars, taken, wish.Copies ?? copies, wish.AddsUp);
        }

        if (wanted.Shelf is not null && !bench.Settings.Shelf(wanted.Shelf).TryGet(out _, out var noShelf))
        {
            problems.AddRange(noShelf);
        }

        if (problems.Count > 0)
        {
            return Result<JarPick>.Failed(problems);
        }

        if (wanted.All || wanted.Shelf is not null)
        {
            Add(jars, OnShelf(ledger, wanted.All ? null : wanted.Shelf).Order(), copies, addUp: false);
        }

        return jars.Count == 0 ? OperationProblems.NoJarsToLabel(wanted.Shelf) : new JarPick([.. jars.Select(jar => new JarCopies(jar.Key, jar.Value))], leftOut)
        {
            Cautions = added.Count > 0 ? [ListProblems.CopiesAddUp([.. added.Select(jar => (JarNumber.From(jar), jars[jar]))])] : [],
        };
    }

    private static void Add(OrderedDictionary<int, int> jars, IEnumerable<int> more, int copies, bool addUp)
    {
        foreach (var jar in more)
        {
            if (!jars.TryAdd(jar, copies) && addUp)
            {
                jars[jar] += copies;
            }
        }
    }

    /// <summary>The jars of one wish that are on a shelf.</summary>
    private static List<int> OnShelf(LedgerView ledger, JarWish wish, List<int> leftOut, List<Problem> problems)
    {
        var (span, jars) = (wish.Jars, new List<int>());
        for (var number = span.First.Value; number <= span.Last.Value; number++)
        {
            var entry = ledger.Jar(number);
            if (entry is { OnShelf: true })
            {
                jars.Add(number);
            }
            else if (entry is not null && !span.IsOne)
            {
                leftOut.Add(number);
            }
        }

        if (jars.Count == 0)
        {
            problems.Add(span.IsOne
                ? OperationProblems.JarNotOnShelf(span.First, Gone(ledger, span.First), wish.Where)
                : OperationProblems.NoJarsInRun(span, wish.Where));
        }

        return jars;
    }

    private static Jar? Gone(LedgerView ledger, JarNumber jar) => JarHistory.Of(jar, ledger.EventsOf(Subject.Jar(jar.Value))).TryGet(out var history, out _) ? history.Jar : null;

    private static IEnumerable<int> OnShelf(LedgerView ledger, string? shelf) => ledger.Standing(shelf).Select(entry => entry.Number);
}

/// <summary>A jar and how many labels it gets.</summary>
/// <param name="Jar">The jar's number.</param>
/// <param name="Copies">How many, from 1.</param>
internal readonly record struct JarCopies(int Jar, int Copies);
