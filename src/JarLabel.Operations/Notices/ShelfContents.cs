namespace JarLabel.Operations.Notices;

/// <summary>Reads everything that stands on one shelf, jar by jar from its whole history, so that no ingredient of a blend is missed.</summary>
internal static class ShelfContents
{
    internal static Result<IReadOnlyList<Jar>> Jars(LedgerView view, string shelf)
    {
        var jars = new List<Jar>();
        foreach (var entry in view.Standing(shelf))
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
}
