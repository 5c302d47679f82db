using JarLabel.Core.Supplies;

namespace JarLabel.Tests.Supplies;

/// <summary>Bags of flakes and bottles of alcohol: what was bought is there, was taken, or was weighed.</summary>
public class SupplyTests
{
    private static readonly DateTime Day = new(2026, 3, 9, 10, 0, 0);
    private static readonly DateOnly Made = new(2025, 6, 1);
    private static readonly JarNumber Jar = JarNumber.From(7);
    private static readonly SupplyNumber Number = SupplyNumber.From(12);

    [Fact]
    public void What_was_bought_is_left_or_went_into_a_jar() =>
        Gen.Select(Gen.Double[50, 2000], Gen.Double[1, 400].Array[0, 20], Gen.Bool.Array[0, 20]).Sample((bought, wanted, back) =>
        {
            List<SupplyEvent> events = [new BagAdded(Day, "garnet", Mass.FromGrams(bought), Made)];
            foreach (var (grams, returned) in wanted.Zip(back))
            {
                if (Bag.Fold(Number, events).Require().Take(Day, grams, Jar) is { } taken)
                {
                    events.Add(taken);
                    events.AddRange(returned ? [new PutBack(Day, Jar)] : []);
                }
            }

            var bag = Bag.Fold(Number, events).Require();
            Assert.True(bag.Left >= Mass.Zero);
            Assert.Equal(bought, bag.Left.Grams + bag.Taken.Sum(t => t.Size), 1e-6);
        });

    [Theory]
    [InlineData(99.4, 99.4, 0.6)]
    [InlineData(99.6, 100, 0)]
    [InlineData(100.4, 100, 0)]
    public void Within_half_a_percent_of_the_rest_all_is_taken(double wanted, double taken, double left)
    {
        var bottle = Bottle.Fold(Number, [Bottled(100)]).Require();
        var happened = Assert.IsType<SolventTaken>(bottle.Take(Day, wanted, Jar));
        Assert.Equal(taken, happened.Volume.Milliliters, 1e-9);
        var after = Bottle.Fold(Number, [Bottled(100), happened]).Require();
        Assert.Equal(left, after.Left.Milliliters, 1e-9);
        Assert.Equal(left > 0, after.OnHand);
    }

    [Fact]
    public void More_than_there_is_cannot_be_taken() => Assert.Null(Bottle.Fold(Number, [Bottled(100)]).Require().Take(Day, 101, Jar));

    [Fact]
    public void A_batch_too_large_says_what_the_scarcer_of_both_gives()
    {
        var recipe = RecipeSolver.Solve(new BatchRequest(PoundCut.FromPoundsPerUsGallon(2), Pour: Volume.FromLiters(1)), Density.FromKilogramsPerCubicMeter(811)).Require();
        var bag = Bag.Fold(Number, [new BagAdded(Day, "garnet", Mass.FromGrams(119.826427), Made)]).Require();
        var problems = SupplyFit.Check(recipe, bag, Bottle.Fold(Number, [Bottled(800)]).Require()).Problems;

        // 2 lb/gal is 239.652855 g/L: 119.83 g are enough for 500 mL, which make 599.4 mL (119.83 g take up 99.3).
        Assert.Equal(["bag", "bottle"], problems.Select(p => p.Where));
        Assert.All(problems, p =>
        {
            Assert.Contains("makes 599 mL", p.Message, StringComparison.Ordinal);
            Assert.Contains("pour 500 mL", p.Message, StringComparison.Ordinal);
        });
        Assert.True(SupplyFit.Check(recipe, null, Bottle.Fold(Number, [Bottled(996)]).Require()).Ok);
    }

    [Fact]
    public void Every_event_reads_back_as_it_was_written()
    {
        SupplyEvent[] events =
        [
            new BagAdded(Day, "garnet", Mass.FromGrams(500), Made, "second delivery"),
            Bottled(1000) with { Material = ContainerMaterial.LinedMetal },
            new FlakesTaken(Day, Mass.FromGrams(62.9), Jar),
            new SolventTaken(Day, Volume.FromMilliliters(350), Jar),
            new PutBack(Day, Jar),
            new FlakesLeft(Day, Mass.FromGrams(100)),
            new SolventLeft(Day, Volume.FromMilliliters(100)),
            new BottleMoved(Day, "cellar"),
            new SupplyLabelled(Day, "labels/bag-12-3-bag.pdf", "bag", "a4", 3, "BAG 12-3") { Sha256 = "00" },
            new FlakesTested(Day, Pinch.Cloudy),
            new SupplyDiscarded(Day, "damp"),
            new SupplyUndone(Day, "FlakesLeft"),
        ];
        Assert.All(events, e => Assert.Equal(e, SupplyEventJson.Read(SupplyEventJson.Write(e), "here").Require()));
        Assert.Equal(events.Length, typeof(SupplyEvent).Assembly.GetTypes().Count(t => t.BaseType == typeof(SupplyEvent)));
        Assert.Equal("JL481", Assert.Single(SupplyEventJson.Read("""{"event":"Melted","at":"2026-03-09T10:00:00"}""", "here").Problems).Code);
    }

    [Theory]
    [InlineData("12", null)]
    [InlineData(" 12-3 ", null)]
    [InlineData("12-4", "JL155")]
    [InlineData("0", "JL154")]
    [InlineData("-3", "JL154")]
    [InlineData("1-2-3", "JL154")]
    [InlineData("garnet", "JL154")]
    public void A_bag_is_named_by_its_number_with_or_without_its_check_digit(string text, string? problem)
    {
        var read = SupplyNumber.ReadBag(text, "bag");
        Assert.Equal(problem, read.Problems.Count == 0 ? null : Assert.Single(read.Problems).Code);
        Assert.True(problem is not null || read.Require() == Number);
    }

    [Fact]
    public void What_is_weighed_holds_and_brings_a_discarded_bag_back()
    {
        List<SupplyEvent> events = [new BagAdded(Day, "garnet", Mass.FromGrams(500), Made), new SupplyDiscarded(Day)];
        Assert.Equal("JL157", Assert.Single(Bag.Fold(Number, events).Require().DemandOnHand("bag").Problems).Code);
        events.Add(new FlakesLeft(Day, Mass.FromGrams(80)));
        Assert.Equal(80, Bag.Fold(Number, events).Require().DemandOnHand("bag").Require().Left.Grams, 1e-9);
    }

    [Fact]
    public void A_pinch_that_gelled_makes_a_bag_unfit_until_another_did_not()
    {
        List<SupplyEvent> events = [new BagAdded(Day, "garnet", Mass.FromGrams(500), Made)];
        Bag Now(Pinch pinch)
        {
            events.Add(new FlakesTested(Day.AddDays(events.Count), pinch));
            return Bag.Fold(Number, events).Require();
        }

        static IEnumerable<string> Codes(Bag bag) => BagCautions.OfTest(bag).Select(c => c.Code);
        Assert.Empty(Codes(Now(Pinch.All)));
        var cloudy = Now(Pinch.Cloudy);
        Assert.Equal((true, false), (cloudy.Cloudy, cloudy.Unfit));
        Assert.Equal(["JL395"], Codes(cloudy));
        events.Add(new FlakesTaken(Day, Mass.FromGrams(100), Jar));
        var gel = Now(Pinch.Gel);
        Assert.Equal("JL393", Assert.Single(gel.DemandFit().Problems).Code);
        Assert.Equal(["JL394", "JL397"], Codes(gel));
        Assert.Contains(Jar.ToString(), BagCautions.OfTest(gel)[1].Message, StringComparison.Ordinal);
        var better = Now(Pinch.All);
        Assert.Same(better, better.DemandFit().Require());
        Assert.Equal(["JL396"], Codes(better));
        events.Add(new SupplyDiscarded(Day));
        events.Add(new FlakesTested(Day, Pinch.All));
        Assert.Equal("JL482", Assert.Single(Bag.Fold(Number, events).Problems).Code);
    }

    /// <summary>A clean pinch changes nothing on the label; a bad one takes the place of the day until which the flakes are fresh.</summary>
    [Theory]
    [InlineData(null, "fresh until", "Garnet flakes")]
    [InlineData(Pinch.All, "fresh until", "Garnet flakes")]
    [InlineData(Pinch.Cloudy, "pinch cloudy", "Garnet flakes")]
    [InlineData(Pinch.Gel, "pinch a gel", "Do not use: garnet")]
    public void The_label_of_a_bag_says_what_its_pinch_did(Pinch? pinch, string says, string title)
    {
        SupplyEvent[] events = [new BagAdded(Day, "garnet", Mass.FromGrams(500), Made), .. pinch is { } did ? [new FlakesTested(Day, did)] : Array.Empty<SupplyEvent>()];
        var text = SupplyLabelText.For(Bag.Fold(Number, events).Require(), ShopCatalog.Ours, []);
        Assert.Equal((says, title), (text.Tables["dates"][1][0], text.Words["grade"][0]));
    }

    [Fact]
    public void A_life_that_cannot_be_is_told()
    {
        var added = new BagAdded(Day, "garnet", Mass.FromGrams(50), Made);
        Assert.Equal("JL156", Assert.Single(Bag.Fold(Number, []).Problems).Code);
        Assert.Equal("JL482", Assert.Single(Bag.Fold(Number, [Bottled(100)]).Problems).Code);
        Assert.Equal("JL482", Assert.Single(Bag.Fold(Number, [added, new FlakesTaken(Day, Mass.FromGrams(60), Jar)]).Problems).Code);
        Assert.Equal("JL482", Assert.Single(Bag.Fold(Number, [added, new PutBack(Day, Jar)]).Problems).Code);
        Assert.Equal("JL482", Assert.Single(Bottle.Fold(Number, [Bottled(100), new SupplyDiscarded(Day), new SolventTaken(Day, Volume.FromMilliliters(1), Jar)]).Problems).Code);
    }

    [Theory]
    [InlineData("GARNET FLAKES. 2025-06-01. BAG 12-3", SupplyKind.Bag)]
    [InlineData("ethanol-95. 2026-02-20. danger flammable. bottle 12-3", SupplyKind.Bottle)]
    [InlineData("BAG 12-3", SupplyKind.Bag)]
    [InlineData("BAG 12-4", null)]
    [InlineData("HANDBAG 12-3", null)]
    [InlineData("JAR 12-3.1", null)]
    [InlineData("12-3", null)]
    public void A_code_names_a_bag_or_a_bottle(string payload, SupplyKind? kind) => Assert.Equal(kind, SupplyCode.Read(payload)?.Kind);

    /// <summary>The convention of the house, on an invented class that keeps 24 months dry: no loss in the first 12.</summary>
    [Fact]
    public void Flakes_are_fresh_through_the_first_half_of_their_dry_life()
    {
        var kind = new KeepingClass("some", 8, 24, "practice");
        var last = FlakeAge.FreshUntil(Made, kind);
        Assert.Equal(new DateOnly(2026, 6, 1), last);
        Assert.Equal(1, FlakeAge.LifeLeft(Made, last, kind));
        Assert.True(FlakeAge.LifeLeft(Made, last.AddDays(1), kind) < 1);
    }

    private static BottleAdded Bottled(double milliliters) => new(Day, "ethanol-95", Volume.FromMilliliters(milliliters), Made, "main");
}
