namespace JarLabel.Operations.Supplies;

/// <summary>What a bag or bottle is called where one is chosen among them.</summary>
internal static class SupplyChoiceWords
{
    /// <summary>A bottle to choose: <c>4-9: ethanol 95 %, 1 qt (946 mL) left</c>.</summary>
    internal static string Of(Workbench bench, Bottle bottle) => $"{bottle.Number}: {What(bench, bottle)}";

    /// <summary>A bag to choose: <c>7-6: garnet, 14.1 oz (400 g) left, of 1 Oct 2025</c>.</summary>
    internal static string Of(Workbench bench, Bag bag) => $"{bag.Number}: {What(bench, bag)}";

    internal static string What(Workbench bench, Bottle bottle) =>
        $"{bench.Catalog.Solvents.Find(bottle.Solvent)?.Name ?? bottle.Solvent}, {BenchAmount.Both(bottle.Left, bench.Metric)} left";

    internal static string What(Workbench bench, Bag bag) =>
        $"{bench.Catalog.Grades.Find(bag.Grade)?.Name ?? bag.Grade}, {BenchAmount.Both(bag.Left, bench.Metric)} left, of {DateWords.Of(bag.Made)}{(bag.Test is { } test ? $"; pinch: {PinchWords.WithAdvice(test)}" : "")}";
}
