using JarLabel.Core.Supplies;
using JarLabel.Operations.Recording;
using JarLabel.Tests.Operations;

namespace JarLabel.Tests.Supplies;

/// <summary>Events that this program could not have recorded, of jars, bags and bottles.</summary>
public class RefusedEventTests
{
    private const string At = "2026-03-09T10:00:00";

    [Theory]
    [InlineData("JL468", "BagAdded", """{"event":"BagAdded","grade":"garnet","grams":-5,"made":"2026-01-05","at":"2026-03-09T10:00:00"}""")]
    [InlineData("JL468", "FlakesLeft", """{"event":"FlakesLeft","grams":-1,"at":"2026-03-09T10:00:00"}""")]
    [InlineData("JL468", "SupplyUndone", """{"event":"SupplyUndone","what":"FlakesTaken","at":"2026-03-09T10:00:00"}""")]
    [InlineData("JL470", "SupplyDiscarded", """{"event":"FlakesLeft","grams":1,"at":"2026-03-09T10:00:00"}""")]
    [InlineData("JL470", "FlakesLeft", """{"event":"FlakesLeft","grams":1,"at":"2026-03-09T11:00:00"}""")]
    [InlineData("JL481", "FlakesLeft", """{"event":"FlakesLeft","grams":"much","at":"2026-03-09T10:00:00"}""")]
    [InlineData(null, "FlakesLeft", """{"event":"FlakesLeft","grams":0,"at":"2026-03-09T10:00:00"}""")]
    [InlineData(null, "SupplyUndone", """{"event":"SupplyUndone","what":"FlakesLeft","at":"2026-03-09T10:00:00"}""")]
    public void An_event_that_was_never_recorded_is_refused(string? code, string kind, string body)
    {
        var refused = JarReader.Instance.Refusals(new EventRow(1, Subject.Bag(1), At, kind, 0, body));
        Assert.Equal(code, refused.Count == 0 ? null : Assert.Single(refused).Code);
    }

    [Fact]
    public void A_jar_that_holds_flakes_without_alcohol_is_no_jar()
    {
        using var shop = new BenchShop();
        var mixed = Mixed(shop);
        var dry = mixed with { Contents = mixed.Contents with { Solvents = [] } };
        Assert.Equal("JL469", Assert.Single(Jar.Fold(JarNumber.From(7), [dry]).Problems).Code);
    }

    [Theory]
    [InlineData(600, 350, "bag")]
    [InlineData(60, 1350, "bottle")]
    public void What_somebody_else_took_meanwhile_is_told_and_nothing_is_recorded(double grams, double milliliters, string of)
    {
        using var shop = new BenchShop();
        var before = shop.Recorded;
        var greedy = Mixed(shop) with
        {
            Contents = new([new ResinPart("garnet", Mass.FromGrams(grams))], [new SolventPart("ethanol-95", Volume.FromMilliliters(milliliters), Mass.FromGrams(milliliters * 0.8))]),
            Bag = SupplyNumber.From(1),
            Bottle = SupplyNumber.From(1),
        };
        var told = Assert.Single(LedgerAccess.Record(shop.Open(), step => StockWithdrawal.Take(step, JarNumber.From(3), greedy)).Problems);
        Assert.Equal(("JL189", of), (told.Code, told.Where));
        Assert.Equal(before, shop.Recorded);
    }

    private static Mixed Mixed(BenchShop shop) => (Mixed)LedgerAccess.Jar(shop.Open(), JarNumber.From(1)).Require().Events[0].Event;
}
