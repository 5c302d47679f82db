using JarLabel.Core;
using JarLabel.Store;
using JarLabel.Store.Index;

namespace JarLabel.Bench.Labels.Many;

/// <summary>The jars that get a label, each once, and those that are left out.</summary>
/// <param name="Jars">Their numbers: named ones in the order they were named, others from the lowest.</param>
/// <param name="LeftOut">Numbers of a run whose jar is no longer on a shelf.</param>
internal sealed record JarPick(IReadOnlyList<JarCopies> Jars, IReadOnlyList<int> LeftOut)
{
    /// <summary>How many labels that makes.</summary>
    internal int Labels => Jars.Sum(jar => jar.Copies);

    private const int AtOnce = 1000;

    /// <summary>Looks them up. A jar named by itself must be on a shelf; of a run, a shelf or the whole shop those are taken that are.</summary>
    internal static Result<JarPick> Of(Workbench bench, LedgerView ledger, JarsWanted wanted, int copies)
    {
        var (jars, leftOut, problems) = (new List<JarCopies>(), new List<int>(), new List<Problem>());
        foreach (var wish in wanted.Named)
        {
            Take(ledger, wish, copies, jars, leftOut, problems);
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
            jars.AddRange(OnShelf(ledger, wanted.All ? null : wanted.Shelf).Order().Select(jar => new JarCopies(jar, copies)));
        }

        return jars.Count == 0 ? BenchProblems.NoJarsToLabel(wanted.Shelf) : new JarPick([.. jars.DistinctBy(jar => jar.Jar)], leftOut);
    }

    private static void Take(LedgerView ledger, JarWish wish, int copies, List<JarCopies> jars, List<int> leftOut, List<Problem> problems)
    {
        var (span, before) = (wish.Jars, jars.Count);
        for (var number = span.First.Value; number <= span.Last.Value; number++)
        {
            var entry = ledger.Jar(number);
            if (entry is { OnShelf: true })
            {
                jars.Add(new JarCopies(number, wish.Copies ?? copies));
            }
            else if (entry is not null && !span.IsOne)
            {
                leftOut.Add(number);
            }
        }

        if (jars.Count == before)
        {
            problems.Add(span.IsOne
                ? BenchProblems.JarNotOnShelf(span.First, ledger.Jar(span.First.Value) is not null, wish.Where)
                : BenchProblems.NoJarsInRun(span, wish.Where));
        }
    }

    private static IEnumerable<int> OnShelf(LedgerView ledger, string? shelf)
    {
        ShelfMark? after = null;
        while (true)
        {
            var page = ledger.Shelf(new ShelfQuery(shelf, After: after, Take: AtOnce));
            foreach (var entry in page)
            {
                yield return entry.Number;
            }

            if (page.Count < AtOnce)
            {
                yield break;
            }

            after = new ShelfMark(page[^1].UseBy, page[^1].Number);
        }
    }
}
