namespace JarLabel.Operations.Notices;

/// <summary>Reads everything that stands on one shelf, jar by jar from its whole history, so that no ingredient of a blend is missed.</summary>
internal static class ShelfContents
{
    private const int PageSize = 500;

    internal static Result<IReadOnlyList<Jar>> Jars(LedgerView view, string shelf)
    {
        var jars = new List<Jar>();
        foreach (var entry in Entries(view, shelf))
        {
            var number = JarNumber.From(entry.Number);
            if (!JarHistory.Of(number, view.EventsOf(Subject.Jar(entry.Number))).TryGet(out var history, out var problems))
            {
                return Result<IReadOnlyList<Jar>>.Failed(problems);
            }

            jars.Add(history.Jar);
        }

        return jars;
    }

    /// <summary>The bottles of alcohol that stand there.</summary>
    internal static Result<IReadOnlyList<Bottle>> Bottles(LedgerView view, string shelf) =>
        SupplyBook.Bottles(view).Then(bottles => Result<IReadOnlyList<Bottle>>.Of([.. bottles.Where(bottle => bottle.Shelf == shelf)]));

    internal static ShelfStock Stock(Workbench bench, IEnumerable<Jar> jars, IEnumerable<Bottle> bottles) =>
        new([.. jars.Select(jar => Liquid(bench, jar)), .. bottles.Select(bottle => SupplyWords.Liquid(bench, bottle))]);

    internal static StockedLiquid Liquid(Workbench bench, Jar jar) =>
        new(JarWords.Hazards(bench, jar), jar.Contents.Liquid, jar.Contents.Flakes + jar.Contents.PouredWeight);

    private static IEnumerable<JarEntry> Entries(LedgerView view, string shelf)
    {
        ShelfMark? after = null;
        IReadOnlyList<JarEntry> page;
        do
        {
            page = view.Shelf(new ShelfQuery(shelf, After: after, Take: PageSize));
            foreach (var entry in page)
            {
                yield return entry;
            }

            after = page.Count > 0 ? new ShelfMark(page[^1].UseBy, page[^1].Number) : null;
        }
        while (page.Count == PageSize);
    }
}
