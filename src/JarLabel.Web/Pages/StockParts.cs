using System.Globalization;
using JarLabel.Bench;
using JarLabel.Bench.Notices;
using JarLabel.Core.Labels;
using JarLabel.Core.Supplies;

namespace JarLabel.Web.Pages;

/// <summary>What stands on the shelves beside the jars, and altogether.</summary>
internal static class StockParts
{
    /// <summary>Every shelf with its jars and bottles.</summary>
    internal static Markup Totals(Workbench bench, IReadOnlyList<StandingOnShelf> totals) => Html.If(totals.Count > 0, () => Html.Of(
        $"""
        <section aria-labelledby="totals"><h2 id="totals">On the shelves</h2>
        {JarParts.Rows([.. totals.Select(t => ($"shelf {t.Shelf}", (string?)Total(bench, t)))])}</section>
        """));

    /// <summary>The bottles of alcohol, the oldest first.</summary>
    internal static Markup Bottles(Workbench bench, IReadOnlyList<Bottle> bottles) => Html.If(bottles.Count > 0, () => Html.Of(
        $"""
        <section aria-labelledby="bottles"><h2 id="bottles">Bottles of alcohol</h2>
        {JarParts.Rows([.. bottles.Select(b => ($"bottle {b.Number}", (string?)$"{Of(bench, b)}, since {DateWords.Of(b.Since)}, shelf {b.Shelf}"))])}</section>
        """));

    /// <summary>The bags of flakes, the oldest first.</summary>
    internal static Markup Bags(Workbench bench, IReadOnlyList<Bag> bags) => Html.If(bags.Count > 0, () => Html.Of(
        $"""
        <section aria-labelledby="bags"><h2 id="bags">Bags of flakes</h2>
        {JarParts.Rows([.. bags.Select(b => ($"bag {b.Number}", (string?)Of(bench, b)))])}</section>
        """));

    /// <summary>A bottle to choose: <c>4-9: ethanol 95 %, 1 qt (946 mL) left</c>.</summary>
    internal static string Words(Workbench bench, Bottle bottle) => $"{bottle.Number}: {Of(bench, bottle)}";

    /// <summary>A bag to choose: <c>7-6: garnet, 14.1 oz (400 g) left, of 1 Oct 2025</c>.</summary>
    internal static string Words(Workbench bench, Bag bag) => $"{bag.Number}: {Of(bench, bag)}";

    private static string Of(Workbench bench, Bottle bottle) =>
        $"{bench.Catalog.Solvents.Find(bottle.Solvent)?.Name ?? bottle.Solvent}, {BenchAmount.Both(bottle.Left, bench.Metric)} left";

    private static string Of(Workbench bench, Bag bag) =>
        $"{bench.Catalog.Grades.Find(bag.Grade)?.Name ?? bag.Grade}, {BenchAmount.Both(bag.Left, bench.Metric)} left, of {DateWords.Of(bag.Made)}{(bag.Test is { } test ? $"; pinch: {PinchWords.WithAdvice(test)}" : "")}";

    private static string Total(Workbench bench, StandingOnShelf total) => string.Join("; ", ((string?[])
    [
        total.Jars == 0 ? null : $"{Count(total.Jars, "jar")}, {BenchAmount.Both(total.Liquid, bench.Metric)}",
        total.Bottles == 0 ? null : $"{Count(total.Bottles, "bottle")} of alcohol, {BenchAmount.Both(total.Alcohol, bench.Metric)}",
    ]).OfType<string>());

    private static string Count(int count, string what) => string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");
}
