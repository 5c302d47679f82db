using JarLabel.Core.Hazards;
using JarLabel.Core.Supplies;
using JarLabel.Operations.Supplies;

namespace JarLabel.Web.Pages;

/// <summary>What stands on the shelves beside the jars, and altogether.</summary>
internal static class StockParts
{
    /// <summary>Every shelf with its jars and bottles.</summary>
    internal static Markup Totals(Workbench bench, IReadOnlyList<StandingOnShelf> totals) => Html.If(totals.Count > 0, () => Html.Of(
        $"""
        <section aria-labelledby="totals"><h2 id="totals">On the shelves</h2>
        {JarParts.Rows([.. totals.Select(total => ShelfAnswer.Total(bench, total))])}</section>
        """));

    /// <summary>The bottles of alcohol, the oldest first.</summary>
    internal static Markup Bottles(Workbench bench, IReadOnlyList<Bottle> bottles) => Html.If(bottles.Count > 0, () => Html.Of(
        $"""
        <section aria-labelledby="bottles"><h2 id="bottles">Bottles of alcohol</h2>
        {Rows(bottles, b => $"{SupplyChoiceWords.What(bench, b)}, since {DateWords.Of(b.Since)}, shelf {b.Shelf}{Poison(bench, b)}")}</section>
        """));

    /// <summary>One row each, whose name leads to what can be done with it.</summary>
    private static Markup Rows<T>(IReadOnlyList<T> supplies, Func<T, string> says)
        where T : Supply =>
        Html.Of($"<dl>{supplies.Select(one => Html.Of($"<dt>{StepLinks.Named(SupplyAnswer.Shown(one), $"{one.Kind.Word()} {one.Number}")}</dt><dd>{says(one)}</dd>"))}</dl>");

    private static string Poison(Workbench bench, Bottle bottle) => SupplyWords.Hazards(bench, bottle) switch
    {
        { PoisonWording: true } => $"; {PoisonWords.Text}",
        { CanPoison: true } => $"; {PoisonWords.Words[0]}",
        _ => "",
    };

    /// <summary>The bags of flakes, the oldest first.</summary>
    internal static Markup Bags(Workbench bench, IReadOnlyList<Bag> bags) => Html.If(bags.Count > 0, () => Html.Of(
        $"""
        <section aria-labelledby="bags"><h2 id="bags">Bags of flakes</h2>
        {Rows(bags, b => SupplyChoiceWords.What(bench, b))}</section>
        """));
}
