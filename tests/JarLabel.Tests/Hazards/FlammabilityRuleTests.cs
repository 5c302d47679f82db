using static JarLabel.Tests.Hazards.Mixtures;

namespace JarLabel.Tests.Hazards;

public class FlammabilityRuleTests
{
    [Theory, Cites(References.EngineeringToolBox, "flash points of ethanol-water solutions, 10 to 96 %")]
    [Cites(References.Clp, "Annex I 2.6.4.2: what is calculated is category 3 from 5 °C above 23 °C")]
    [InlineData(10, 49, "H226")]
    [InlineData(20, 36, "H226")]
    [InlineData(30, 29, "H226")]
    [InlineData(40, 26, "H225")]
    [InlineData(50, 24, "H225")]
    [InlineData(60, 22, "H225")]
    [InlineData(70, 21, "H225")]
    [InlineData(80, 20, "H225")]
    [InlineData(96, 17, "H225")]
    public void Watered_ethanol_flashes_as_the_table_says(int percentByVolume, double celsius, string statement)
    {
        var weight = (decimal)JarLabel.Core.Mixing.EthanolWater.MassFraction(percentByVolume) * 100;
        var found = Assess(FormattableString.Invariant($"ethanol={weight},water={100 - weight}"), RuleSet.Clp);
        Assert.Equal(celsius, found.FlashPointCelsius!.Value, 0.01);
        Assert.Contains(statement, found.Statements);
    }

    [Theory, Cites(References.NioshPocketGuide, "ethyl alcohol 55 °F, isopropyl alcohol 53 °F")]
    [Cites(References.PrudentPractices, "methanol, methyl ethyl ketone sheets: flash points")]
    [InlineData("ethanol", 13)]
    [InlineData("propan-2-ol", 11.7)]
    [InlineData("methanol", 11)]
    [InlineData("butanone", -9)]
    public void A_pure_liquid_flashes_as_published_with_or_without_resin(string id, double celsius)
    {
        Assert.Equal(celsius, Assess($"{id}=100", RuleSet.Osha).FlashPointCelsius);
        Assert.Equal(celsius, Assess($"{id}=60,shellac-resin=40", RuleSet.Osha).FlashPointCelsius);
    }

    [Fact, CommonPractice]
    public void A_mixture_of_two_alcohols_flashes_between_them()
    {
        var celsius = Assess("ethanol=50,methanol=50", RuleSet.Clp).FlashPointCelsius!.Value;
        Assert.InRange(celsius, 11.2, 12.8);
    }

    [Fact, CommonPractice]
    public void A_little_of_what_flashes_cold_pulls_the_mixture_down()
    {
        var before = Assess("ethanol=100", RuleSet.Clp).FlashPointCelsius!.Value;
        var after = Assess("ethanol=90,butanone=10", RuleSet.Clp).FlashPointCelsius!.Value;
        Assert.InRange(after, 0, before - 2);
    }

    /// <summary>One made-up liquid with the flash and boiling points of the row.</summary>
    [Theory, Cites(References.Clp, "Annex I table 2.6.1")]
    [Cites(References.Osha1200, "Appendix B.6: category 4 besides")]
    [InlineData(22.9, 35, "H224", "H224")]
    [InlineData(22.9, 35.1, "H225", "H225")]
    [InlineData(23, 80, "H226", "H226")]
    [InlineData(60, 120, "H226", "H226")]
    [InlineData(60.1, 120, "", "H227")]
    [InlineData(93, 150, "", "H227")]
    [InlineData(93.1, 150, "", "")]
    public void The_category_goes_by_flash_point_and_boiling_point(double flash, double boils, string clp, string osha)
    {
        var liquid = new Substance("liquid", "liquid", "test") { Flash = new((decimal)flash, "test"), Boils = new((decimal)boils, "test") };
        var pure = Composition.FromPercentages([new(liquid, 100)]);
        Assert.Equal(clp, string.Join(' ', MixtureClassifier.Classify(pure, RuleSet.Clp, Ours).Statements));
        Assert.Equal(osha, string.Join(' ', MixtureClassifier.Classify(pure, RuleSet.Osha, Ours).Statements));
    }

    [Fact]
    public void What_nobody_has_declared_may_burn()
    {
        var found = Assess("unknown=30,water=70", RuleSet.Osha);
        Assert.Contains("H225", found.Statements);
        Assert.Equal(2, found.FlammableCategory);
        Assert.Null(found.FlashPointCelsius);
        Assert.Equal(3, found.Doubts.Count);
    }
}
