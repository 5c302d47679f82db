using Normal = MathNet.Numerics.Distributions.Normal;

namespace JarLabel.Tests.Keeping;

/// <summary>How much faster dissolved shellac ages in warmth: not known, and the more careful for it.</summary>
public class AgingTests
{
    private const double GasConstant = 8.314462618;

    /// <summary>Reactions of acids with alcohols take 50 to 80 kJ/mol; from 20 to 30 °C that makes them 2.0 to 3.0 times faster.</summary>
    [Theory, Cites(References.Arrhenius, "k = A exp(-E / RT), R = 8.314 J/(mol K)")]
    [InlineData(50_000, 2.0)]
    [InlineData(80_000, 3.0)]
    public void What_is_thought_possible_reaches_beyond_what_such_reactions_do(double joulesPerMole, double times)
    {
        var faster = Math.Exp(joulesPerMole / GasConstant * ((1 / 293.15) - (1 / 303.15)));
        Assert.Equal(times, faster, 0.05);
        Assert.InRange(faster, Aging.Low, Aging.High);
        Assert.InRange(faster / Aging.Middle, 1 / 1.3, 1.3);
    }

    [Fact]
    public void The_paces_weigh_as_the_lognormal_they_stand_for()
    {
        var paces = Aging.Thought;
        var all = paces.Sum(p => p.Weight);
        var reference = new Normal(Math.Log(2.2956), Math.Log(3.1 / 1.7) / 3.28970725);
        foreach (var (pace, next) in paces.Zip(paces.Skip(1)))
        {
            var edge = Math.Log(pace.Q10 * next.Q10) / 2;
            Assert.Equal(reference.CumulativeDistribution(edge), paces.Where(p => p.Q10 <= pace.Q10).Sum(p => p.Weight) / all, 0.013);
        }

        Assert.Equal(2, paces[Aging.ConventionOfThought].Q10);
        Assert.Equal(2.2956, paces[Aging.MiddleOfThought].Q10, 1e-4);
    }

    [Theory]
    [InlineData(20, 1)]
    [InlineData(30, 1 / 2.29565)]
    [InlineData(35, 0.28750)]
    [InlineData(45, 0.28750)]
    [InlineData(10, 2)]
    [InlineData(5, 2.82843)]
    [InlineData(-10, 2.82843)]
    public void Without_a_test_a_warm_shelf_costs_more_than_a_cool_one_gives(double celsius, double times)
    {
        Assert.Equal(times, Warmth.Keeping(Temperature.FromDegreesCelsius(celsius), KeepingSettings.Usual), 1e-4);
        Assert.Equal(Math.Pow(2.5, (20 - Math.Clamp(celsius, 5, 35)) / 10), Warmth.Keeping(Temperature.FromDegreesCelsius(celsius), new KeepingSettings(2.5)), 1e-9);
    }

    /// <summary>The rule of thumb of chemistry, which every date stood on before.</summary>
    [Fact, CommonPractice]
    public void No_date_is_later_than_the_rule_of_thumb_gives() =>
        Gen.Select(Gen.Double[-10, 45], Gen.Int[0, 3000]).Sample((celsius, age) =>
        {
            var (kind, form) = (ShopCatalog.Ours.Keeping.Find("dewaxed")!, ShopCatalog.Ours.Forms.Find("flake")!);
            var mixed = new DateTime(2026, 3, 9, 10, 0, 0);
            DateOnly UseBy(KeepingSettings settings) => KeepingEstimate.Of(
                mixed, kind, form, Warmth.Reference, Temperature.FromDegreesCelsius(celsius), DateOnly.FromDateTime(mixed).AddDays(-age), settings).UseBy;
            var (uncertain, convention) = (UseBy(KeepingSettings.Usual), UseBy(new KeepingSettings(2)));
            return celsius <= 20 ? uncertain == convention : uncertain <= convention && (celsius < 24 || uncertain < convention);
        });

    /// <summary>What a cloudy pinch leaves of 8 months is 4; of flakes so old that a quarter is left, it takes no more.</summary>
    [Theory]
    [InlineData(null, true, "2026-07-09")]
    [InlineData("2010-01-01", true, "2026-05-09")]
    [InlineData(null, false, "2026-11-09")]
    public void Flakes_that_dissolved_cloudy_leave_half(string? made, bool cloudy, string useBy)
    {
        DateOnly? flakes = made is null ? null : DateOnly.Parse(made, System.Globalization.CultureInfo.InvariantCulture);
        var dates = KeepingEstimate.Of(
            new DateTime(2026, 3, 9, 10, 0, 0), ShopCatalog.Ours.Keeping.Find("dewaxed")!, ShopCatalog.Ours.Forms.Find("flake")!, Warmth.Reference, Warmth.Reference, flakes, KeepingSettings.Usual, cloudy: cloudy);
        Assert.Equal(DateOnly.Parse(useBy, System.Globalization.CultureInfo.InvariantCulture), dates.UseBy);
    }
}
