namespace JarLabel.Operations.Supplies;

/// <summary>What a bag or bottle is called where one is chosen among them.</summary>
internal static class SupplyChoiceWords
{
    /// <summary>One to choose: <c>4-9: ethanol 95 %, 1 qt (946 mL) left</c>, <c>7-6: garnet, 14.1 oz (400 g) left, of 1 Oct 2025</c>.</summary>
    internal static string Of(Workbench bench, Supply supply) => $"{supply.Number}: {(supply.OnHand ? What(bench, supply) : $"{NameOf(bench, supply)}, {supply.Standing(bench.Metric)}")}";

    internal static string What(Workbench bench, Supply supply) =>
        $"{NameOf(bench, supply)}, {supply.Shown(supply.Rest, bench.Metric)} left{(supply is Bag bag ? $", of {DateWords.Of(bag.Made)}{(bag.Test is { } test ? $"; pinch: {PinchWords.WithAdvice(test)}" : "")}" : "")}";

    private static string NameOf(Workbench bench, Supply supply) => supply is Bag
        ? bench.Catalog.Grades.Find(supply.Holds)?.Name ?? supply.Holds
        : bench.Catalog.Solvents.Find(supply.Holds)?.Name ?? supply.Holds;
}
