using Drawn = MathNet.Numerics.Distributions.Weibull;
using Normal = MathNet.Numerics.Distributions.Normal;

namespace JarLabel.Tests.Keeping;

/// <summary>Tests of jars on warm and cool shelves: how much warmth ages them is learned with how long they keep.</summary>
public class LearnedWarmthTests
{
    private const double MonthDays = 365.2425 / 12, NinetyPercent = 1.6448536269514722;

    private static readonly LifeClass Garnet = new("dewaxed", "ethanol-95");
    private static readonly LifeClass Blonde = new("blonde", "ethanol-95");
    private static readonly double[] Shelves = [10, 20, 30];

    /// <summary>Keeping time and Q10 are lognormal and independent, so their deviations add up as squares.</summary>
    [Theory]
    [InlineData(30, 1)]
    [InlineData(5, 1.5)]
    public void Without_a_test_the_band_of_a_shelf_holds_both_doubts(double celsius, double tens)
    {
        var estimate = Learned([]).Of(Garnet, Temperature.FromDegreesCelsius(celsius));
        var deviation = Math.Sqrt(Math.Pow(Math.Log(2) / NinetyPercent, 2) + Math.Pow(tens * Math.Log(3.1 / 1.7) / 2 / NinetyPercent, 2));
        var middle = 8 * Math.Pow(Math.Sqrt(1.7 * 3.1), (20 - celsius) / 10);
        Assert.Equal(middle * Math.Exp(-NinetyPercent * deviation), estimate.Low, 0.015 * estimate.Low);
        Assert.Equal(middle * Math.Exp(NinetyPercent * deviation), estimate.High, 0.015 * estimate.High);
    }

    [Fact]
    public void A_fresh_or_plain_pass_never_shortens_a_failure_never_lengthens_and_a_slow_one_stands_between() => Shops.Sample((shop, jar, age, _) =>
    {
        LearnedLives With(Drying dried) => Learned([.. shop.Select((j, i) => i == jar % shop.Length ? j with { Tests = [.. j.Tests, new(age, dried)] } : j)]);
        var (before, soft, slow, hard, fresh) = (Learned(shop), With(Drying.Soft), With(Drying.Slow), With(Drying.Hard), With(Drying.Fresh));
        return Places().All(p =>
        {
            double Of(LearnedLives lives) => lives.Of(p.Class, p.Shelf).Months;
            double[] rising = [Of(soft), Of(slow), Of(hard), Of(fresh)];
            return rising.Zip(rising.Skip(1)).All(r => r.First <= r.Second * (1 + 1e-9)) && Of(soft) <= Of(before) * (1 + 1e-9) && Of(hard) >= Of(before) * (1 - 1e-9);
        });
    }, iter: 8);

    [Fact]
    public void No_estimate_is_later_than_under_the_rule_of_thumb_and_order_does_not_matter() => Shops.Sample((shop, jar, _, _) =>
    {
        TestedOn[] turned = [.. shop.Skip(jar % shop.Length), .. shop.Take(jar % shop.Length)];
        var (uncertain, convention, other) = (Learned(shop), Learned(shop, new KeepingSettings(2)), Learned([.. turned.Select(j => j with { Tests = [.. j.Tests.Reverse()] })]));
        return Places().All(p =>
        {
            var months = uncertain.Of(p.Class, p.Shelf).Months;
            return months <= convention.Of(p.Class, p.Shelf).Months * (1 + 1e-9) && Math.Abs(months - other.Of(p.Class, p.Shelf).Months) < 1e-6;
        });
    }, iter: 8);

    [Fact]
    public void Tests_at_twenty_degrees_say_nothing_of_warmth_and_what_they_say_of_twenty_degrees_does_not_hang_on_it()
    {
        TestedOn[] shop = [new(Garnet, 20, [new(60, true), new(120, false)]), new(Garnet, 20, [new(200, true)])];
        var (uncertain, settled) = (Learned(shop), Learned(shop, new KeepingSettings(2)));
        var (one, other) = (settled.Of(Garnet), uncertain.Of(Garnet));
        Assert.Equal(one.Lives, other.Lives);
        Assert.All([(one.Months, other.Months), (one.Low, other.Low), (one.High, other.High), (one.Shape, other.Shape)], pair => Assert.Equal(pair.Item1, pair.Item2, 1e-9));
        Assert.Equal(new AgingEstimate(Aging.Middle, Aging.Low, Aging.High, false), uncertain.Pace);
        Assert.Equal(new AgingEstimate(2, 2, 2, true), settled.Pace);
    }

    /// <summary>A shop whose truth is known: sixty jars on each of two shelves, tested every three weeks.</summary>
    [Theory]
    [InlineData(1.7)]
    [InlineData(3.1)]
    public void Many_tests_on_two_shelves_tell_how_warmth_ages(double q10)
    {
        var random = new Random(3);
        var source = new Drawn(3, 500, random);
        var lives = Learned([.. Enumerable.Range(0, 120).Select(i => Watched(source.Sample(), i % 2 == 0 ? 20 : 30, q10, 21, 1500, [Drying.Hard]))]);
        Assert.InRange(lives.Pace.Q10, q10 / 1.15, q10 * 1.15);
        Assert.InRange(q10, lives.Pace.Low, lives.Pace.High);
        Assert.True(lives.Pace.High / lives.Pace.Low < 1.5, "3.1 / 1.7 = 1.82 before");
        var truth = TenthGone(3, 500) / MonthDays;
        Assert.InRange(truth, lives.Of(Garnet).Low, lives.Of(Garnet).High);
        Assert.InRange(truth / q10, lives.Of(Garnet, Temperature.FromDegreesCelsius(30)).Low, lives.Of(Garnet, Temperature.FromDegreesCelsius(30)).High);
    }

    /// <summary>Shops are drawn as the model says shops are: keeping time, shape and Q10 each lognormal. Jars stand on all three shelves.</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(30)]
    public void In_simulated_shops_the_band_of_a_shelf_holds_the_truth_about_nine_times_of_ten(double celsius) =>
        Assert.InRange(Coverage(celsius, jars: 6, [Drying.Hard]), 0.85, 0.95);

    /// <summary>When drops begin to dry slowly differs from jar to jar, between half and nine tenths of its life: what is read off that keeps the band.</summary>
    [Fact]
    public void Where_benches_tell_fresh_slow_and_soft_the_band_still_holds() => Assert.InRange(Coverage(20, jars: 6, [Drying.Fresh, Drying.Slow]), 0.85, 0.96);

    /// <summary>The age by which a tenth has failed, as the reference library's distribution function gives it.</summary>
    private static double TenthGone(double shape, double scale)
    {
        var reference = new Drawn(shape, scale);
        return MathNet.Numerics.RootFinding.Bisection.FindRoot(t => reference.CumulativeDistribution(t) - 0.1, 1e-9, 10 * scale, 1e-12, 200);
    }

    private static double Coverage(double celsius, int jars, Drying[] told)
    {
        const int Rounds = 300;
        var held = 0;
        Parallel.For(0, Rounds, round =>
        {
            var random = new Random(1000 + round);
            var q10 = Math.Exp(Normal.Sample(random, Math.Log(1.7 * 3.1) / 2, Math.Log(3.1 / 1.7) / 2 / NinetyPercent));
            var shape = 3 * Math.Exp(Normal.Sample(random, 0, 0.35));
            var truth = 8 * Math.Exp(Normal.Sample(random, 0, Math.Log(2) / NinetyPercent));
            var source = new Drawn(shape, truth * MonthDays / TenthGone(shape, 1), random);
            var lives = Learned([.. Enumerable.Range(0, jars).Select(i => Watched(source.Sample(), Shelves[i % 3], q10, 20 + random.Next(60), 700, told, 0.5 + (0.4 * random.NextDouble())))]);
            var estimate = lives.Of(Garnet, Temperature.FromDegreesCelsius(celsius));
            if (truth * Math.Pow(q10, (20 - celsius) / 10) is var there && there >= estimate.Low && there <= estimate.High)
            {
                Interlocked.Increment(ref held);
            }
        });
        return (double)held / Rounds;
    }

    /// <summary>A jar that is tested every so many days until it fails or is given up.</summary>
    private static TestedOn Watched(double life, double celsius, double q10, double every, double longest, Drying[] told, double slowFrom = 1)
    {
        var (tests, there) = (new List<DryingTest>(), life * Math.Pow(q10, (20 - celsius) / 10));
        for (var age = every; age <= longest && tests.LastOrDefault() is not { Age: > 0, Dried: Drying.Soft }; age += every)
        {
            tests.Add(new DryingTest(age, age >= there ? Drying.Soft : age >= slowFrom * there ? told[^1] : told[0]));
        }

        return new(Garnet, celsius, [.. tests]);
    }

    private static IEnumerable<(LifeClass Class, Temperature Shelf)> Places() =>
        Shelves.SelectMany(s => ((LifeClass[])[Garnet, Blonde]).Select(c => (c, Temperature.FromDegreesCelsius(s))));

    private static LearnedLives Learned(TestedOn[] jars, KeepingSettings? settings = null)
    {
        var warmth = settings ?? KeepingSettings.Usual;
        LifeObservation Life(TestedOn jar, double q10) => DryingTests.Life(jar.Tests.Select(t => t with { Age = t.Age * Math.Pow(q10, (jar.Celsius - 20) / 10) }))!.Value;
        return new(
            jars.GroupBy(j => j.Class).ToDictionary(g => g.Key, g => new ClassTests([.. g.Select(j => Life(j, warmth.WarmingQ10))], g.Sum(j => j.Tests.Length))
            {
                AtPaces = g.All(j => j.Celsius == 20) ? null : [.. warmth.Paces.Select(p => (LifeObservation[])[.. g.Select(j => Life(j, p.Q10))])],
            }),
            ShopCatalog.Ours.Keeping,
            LearningSettings.Usual,
            warmth);
    }

    private static readonly Gen<(TestedOn[] Shop, int Jar, double Age, bool Unused)> Shops = Gen.Select(
        Gen.Select(
            Gen.Bool,
            Gen.Int[0, 2],
            Gen.Select(Gen.Double[1, 600], Gen.Int[0, 3], (age, dried) => new DryingTest(age, (Drying)dried)).Array[1, 4],
            (garnet, shelf, tests) => new TestedOn(garnet ? Garnet : Blonde, Shelves[shelf], tests)).Array[1, 5],
        Gen.Int[0, 4],
        Gen.Double[1, 600],
        Gen.Bool);

    /// <summary>A jar that was tested.</summary>
    /// <param name="Class">What it is.</param>
    /// <param name="Celsius">How warm it stood.</param>
    /// <param name="Tests">Its tests, ages in days there.</param>
    private sealed record TestedOn(LifeClass Class, double Celsius, DryingTest[] Tests);
}
