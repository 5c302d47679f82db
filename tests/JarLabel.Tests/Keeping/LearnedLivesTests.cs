using Drawn = MathNet.Numerics.Distributions.Weibull;

namespace JarLabel.Tests.Keeping;

public class LearnedLivesTests
{
    private const double MonthDays = 365.2425 / 12;

    private static readonly LifeClass Garnet = new("dewaxed", "ethanol-95");
    private static readonly LifeClass Neighbour = new("dewaxed", "isopropanol-99");
    private static readonly LifeClass Stranger = new("blonde", "ethanol-95");

    [Theory, CommonPractice]
    [InlineData("bleached", 3)]
    [InlineData("blonde", 6)]
    [InlineData("dewaxed", 8)]
    [InlineData("waxy", 12)]
    public void Without_a_test_the_estimate_is_the_published_one_exactly(string kind, double months)
    {
        var lives = Learned([]);
        Assert.Equal(months, lives.Of(new(kind, "ethanol-95")).Months);
        Assert.Null(lives.MonthsOn(ShopCatalog.Ours.Keeping.Find(kind)!, "ethanol-95", Warmth.Reference));
        Assert.Null(lives.Basis(new(kind, "ethanol-95")));
    }

    /// <summary>The prior says: nine shops of ten lie within the factor.</summary>
    [Fact]
    public void Without_a_test_the_band_is_the_spread_that_is_set()
    {
        var estimate = Learned([], spread: 2).Of(Garnet);
        Assert.Equal(4, estimate.Low, 0.01);
        Assert.Equal(16, estimate.High, 0.04);
    }

    /// <summary>Shops drawn as the model says they are before any test, the age of each share by the reference library's distribution function.</summary>
    [Theory]
    [InlineData(0.75)]
    [InlineData(0.5)]
    [InlineData(0.1)]
    public void The_band_of_any_share_holds_nine_shops_of_ten(double share)
    {
        var random = new Random(5);
        var ages = Enumerable.Range(0, 4000).Select(_ =>
        {
            var shape = 3 * Math.Exp(MathNet.Numerics.Distributions.Normal.Sample(random, 0, 0.35));
            var tenth = 8 * Math.Exp(MathNet.Numerics.Distributions.Normal.Sample(random, 0, Math.Log(2) / 1.6448536269514722));
            return tenth * Inverse(shape, 1, 1 - share) / Inverse(shape, 1, 0.1);
        }).Order().ToArray();
        var band = Assert.Single(Learned([]).Band(Garnet, [share]));
        Assert.Equal(ages[200], band.Low, 0.06 * ages[200]);
        Assert.Equal(ages[3800], band.High, 0.06 * ages[3800]);
    }

    /// <summary>Jars that dried hard after five times what was thought possible, and others that never did.</summary>
    [Theory]
    [InlineData(13_000, null)]
    [InlineData(0, 1)]
    [InlineData(3_000, 13_000)]
    public void The_band_holds_the_estimate_whatever_the_tests_say(int after, int? until)
    {
        var estimate = Learned([(Garnet, [.. Enumerable.Repeat(new LifeObservation(after, until), 12)])]).Of(Garnet);
        Assert.InRange(estimate.Months, estimate.Low, estimate.High);
    }

    [Fact]
    public void The_band_at_the_share_of_the_use_by_is_that_of_the_estimate()
    {
        var lives = Learned([(Garnet, [new(60, 90), new(100, null)])]);
        var band = Assert.Single(lives.Band(Garnet, [0.9]));
        Assert.Equal((lives.Of(Garnet).Low, lives.Of(Garnet).High), (band.Low, band.High));
    }

    [Fact]
    public void Many_tests_bring_the_estimate_to_what_the_shop_sees()
    {
        var random = new Random(7);
        var truth = Inverse(3, 500, 0.1);
        var source = new Drawn(3, 500, random);
        var estimate = Learned([(Garnet, [.. Enumerable.Range(0, 200).Select(_ => Seen(source.Sample(), 30, 900))])]).Of(Garnet);
        Assert.Equal(truth / MonthDays, estimate.Months, 0.5);
        Assert.Equal(200, estimate.Lives.Count);
    }

    /// <summary>The width that Fisher's information leaves of the age at which a tenth has failed, 200 lives with both parameters unknown:
    /// var(ln t) = (1.109 + 0.514 x 2.250 + 0.608 x 2.250^2) / (n shape^2), 90 % of it at 7.76 months. A prior can only be a little narrower, monthly
    /// tests only a little wider.</summary>
    [Fact, Cites(References.WeibullInformation, "variance of the logarithm of a quantile")]
    public void The_band_of_many_tests_is_as_wide_as_their_information_leaves_it()
    {
        var random = new Random(11);
        var source = new Drawn(3, 500, random);
        var estimate = Learned([(Garnet, [.. Enumerable.Range(0, 200).Select(_ => Seen(source.Sample(), 30, 2000))])]).Of(Garnet);
        Assert.InRange(estimate.High - estimate.Low, 1.39 * 0.8, 1.39 * 1.15);
        Assert.InRange(estimate.Shape, 2.6, 3.4);
        Assert.InRange(7.76, estimate.Low, estimate.High);
    }

    [Fact]
    public void A_class_without_tests_leans_on_its_relatives_and_the_nearer_ones_more()
    {
        LifeObservation[] poor = [.. Enumerable.Repeat(new LifeObservation(60, 90), 6)];
        var lives = Learned([(Garnet, poor)]);
        double Left(LifeClass of) => lives.Of(of).Months / lives.Of(of).BaseMonths;
        Assert.True(Left(Garnet) < Left(Neighbour));
        Assert.True(Left(Neighbour) < Left(Stranger));
        Assert.True(Left(Stranger) < 1);
        Assert.Equal((0, 6), (lives.Of(Neighbour).Tests, lives.Of(Neighbour).Related));
    }

    [Fact]
    public void A_larger_share_still_good_means_an_earlier_use_by() =>
        Assert.True(Learned([], share: 0.95).Of(Garnet).Months < Learned([]).Of(Garnet).Months);

    [Fact]
    public void A_pass_never_shortens_and_a_failure_never_lengthens_any_estimate() => Shops.Sample((shop, jar, age, passed) =>
    {
        var more = shop.Select((j, i) => i == jar % shop.Length ? (j.Class, Tests: (DryingTest[])[.. j.Tests, new DryingTest(age, passed)]) : j).ToArray();
        return ((LifeClass[])[Garnet, Neighbour, Stranger]).All(c =>
        {
            var (before, after) = (Of(shop).Of(c), Of(more).Of(c));
            return passed ? after.Months >= before.Months * (1 - 1e-9) : after.Months <= before.Months * (1 + 1e-9);
        });
    }, iter: 60);

    [Fact]
    public void The_order_in_which_tests_were_written_down_does_not_matter() => Shops.Sample((shop, jar, _, _) =>
    {
        (LifeClass Class, DryingTest[] Tests)[] backwards = [.. shop.Select(j => (j.Class, j.Tests.Reverse().ToArray()))];
        (LifeClass, DryingTest[])[] turned = [.. backwards.Skip(jar % shop.Length), .. backwards.Take(jar % shop.Length)];
        return Math.Abs(Of(shop).Of(Garnet).Months - Of(turned).Of(Garnet).Months) < 1e-6;
    }, iter: 40);

    /// <summary>Shops are drawn as the model says shops are, each with a truth of its own: off the published months by a lognormal factor (nine of ten within
    /// two), its jars' lives scattered with a shape drawn lognormal around 3 (deviation 0.35).</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(8)]
    [InlineData(20)]
    public void In_two_thousand_simulated_shops_the_band_holds_the_truth_about_nine_times_of_ten(int jars) =>
        Assert.InRange(Coverage(random => 3 * Math.Exp(MathNet.Numerics.Distributions.Normal.Sample(random, 0, 0.35)), jars), 0.85, 0.95);

    /// <summary>Nobody knows the true shape. Where all shops have the same one, off the middle, the band still holds.</summary>
    [Theory]
    [InlineData(2.5)]
    [InlineData(3.5)]
    public void Where_every_shop_has_one_shape_off_the_middle_the_band_still_holds(double shape) => Assert.InRange(Coverage(_ => shape, jars: 6), 0.85, 0.95);

    /// <summary>The age by which a share has failed, as the reference library's distribution function gives it.</summary>
    private static double Inverse(double shape, double scale, double share)
    {
        var reference = new Drawn(shape, scale);
        return MathNet.Numerics.RootFinding.Bisection.FindRoot(t => reference.CumulativeDistribution(t) - share, 1e-9, 10 * scale, 1e-12, 200);
    }

    private static double Coverage(Func<Random, double> shapes, int jars)
    {
        const int Rounds = 2000;
        var held = 0;
        Parallel.For(0, Rounds, round =>
        {
            var random = new Random(42 + round);
            var shape = shapes(random);
            var truth = 8 * Math.Exp(MathNet.Numerics.Distributions.Normal.Sample(random, 0, Math.Log(2) / 1.6448536269514722));
            var source = new Drawn(shape, truth * MonthDays / Inverse(shape, 1, 0.1), random);
            LifeObservation[] lives = [.. Enumerable.Range(0, jars).Select(_ => Seen(source.Sample(), 20 + random.Next(60), 700))];
            var estimate = Learned([(Garnet, lives)]).Of(Garnet);
            if (truth >= estimate.Low && truth <= estimate.High)
            {
                Interlocked.Increment(ref held);
            }
        });
        return (double)held / Rounds;
    }

    /// <summary>What a shop sees that tests every so many days, and gives a jar up after some.</summary>
    private static LifeObservation Seen(double life, double every, double longest)
    {
        var passed = Math.Floor(Math.Min(life, longest) / every) * every;
        return new LifeObservation(passed, life < longest ? passed + every : null);
    }

    private static readonly Gen<((LifeClass Class, DryingTest[] Tests)[] Shop, int Jar, double Age, bool Passed)> ShopsOf =
        Gen.Select(
            Gen.Select(
                Gen.Int[0, 2].Select(i => ((LifeClass[])[Garnet, Neighbour, Stranger])[i]),
                Gen.Select(Gen.Double[1, 900], Gen.Bool, (age, passed) => new DryingTest(age, passed)).Array[1, 4],
                (c, t) => (Class: c, Tests: t)).Array[1, 6],
            Gen.Int[0, 5],
            Gen.Double[1, 900],
            Gen.Bool);

    private static Gen<((LifeClass Class, DryingTest[] Tests)[], int, double, bool)> Shops => ShopsOf;

    private static LearnedLives Of((LifeClass Class, DryingTest[] Tests)[] shop) => Learned(
        [.. shop.GroupBy(j => j.Class).Select(g => (g.Key, g.Select(j => DryingTests.Life(j.Tests)!.Value).ToArray()))]);

    private static LearnedLives Learned((LifeClass Class, LifeObservation[] Lives)[] tests, double share = 0.9, double spread = 2) => new(
        tests.ToDictionary(t => t.Class, t => new ClassTests(t.Lives, t.Lives.Length)),
        ShopCatalog.Ours.Keeping,
        new LearningSettings(share, spread));
}
