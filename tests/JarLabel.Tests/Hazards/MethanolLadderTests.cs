using static JarLabel.Tests.Hazards.Mixtures;

namespace JarLabel.Tests.Hazards;

/// <summary>Methanol in ethanol from none to all: every point at which the label changes, on both sides.</summary>
[Cites(References.Clp, "Annex I tables 3.1.1 and 3.1.2: converted point estimates 100, 300, 3; limits worked out by hand")]
[Cites(References.GisChem, "methanol: H225 H301 H311 H331 H370, specific limits H370 from 10 %, H371 from 3 %")]
[Cites(References.Osha1200, "Appendix A, tables A.1.1, A.1.2 and A.8.2: 1.0 % of a category 1 organ toxicant")]
public class MethanolLadderTests
{
    [Theory]
    [InlineData("0", "H225 H319")]
    [InlineData("2.9999999999999999", "H225 H319")]
    [InlineData("3", "H225 H319 H371")]
    [InlineData("4.9999999999999999", "H225 H319 H371")]
    [InlineData("5", "H225 H302 H319 H371")]
    [InlineData("9.9999999999999999", "H225 H302 H319 H371")]
    [InlineData("10", "H225 H302 H319 H370")]
    [InlineData("14.9999999999999999", "H225 H302 H319 H370")]
    [InlineData("15", "H225 H302 H312 H319 H332 H370")]
    [InlineData("29.9999999999999999", "H225 H302 H312 H319 H332 H370")]
    [InlineData("30", "H225 H302 H311 H319 H331 H370")]
    [InlineData("33.3333333333333333", "H225 H302 H311 H319 H331 H370")]
    [InlineData("33.3333333333333334", "H225 H301 H311 H319 H331 H370")]
    [InlineData("50", "H225 H301 H311 H319 H331 H370")]
    [InlineData("50.0000000000000001", "H225 H301 H311 H331 H370")]
    [InlineData("100", "H225 H301 H311 H331 H370")]
    public void Under_the_european_rules(string methanol, string statements) => Assert.Equal(statements, Rung(methanol, RuleSet.Clp));

    [Theory]
    [InlineData("0.9999999999999999", "H225 H319")]
    [InlineData("1", "H225 H319 H370")]
    [InlineData("4.9999999999999999", "H225 H319 H370")]
    [InlineData("5", "H225 H302 H319 H370")]
    [InlineData("15", "H225 H302 H312 H319 H332 H370")]
    [InlineData("30", "H225 H302 H311 H319 H331 H370")]
    [InlineData("33.3333333333333334", "H225 H301 H311 H319 H331 H370")]
    [InlineData("100", "H225 H301 H311 H331 H370")]
    public void Under_the_us_rules(string methanol, string statements) => Assert.Equal(statements, Rung(methanol, RuleSet.Osha));

    [Fact]
    public void One_part_of_methanol_in_three_stands_exactly_on_the_limit_of_category_3()
    {
        var third = Composition.FromWeights([(Ours.Substances.Named("methanol").Require(), 1), (Ours.Substances.Named("ethanol").Require(), 2)]);
        Assert.Contains("H301", MixtureClassifier.Classify(third, RuleSet.Clp, Ours).Statements);
    }

    [Theory]
    [InlineData("5", 2000)]
    [InlineData("50", 200)]
    [InlineData("100", 100)]
    public void The_oral_estimate_is_a_hundredth_of_methanol_turned_over(string methanol, int ate) =>
        Assert.Equal(ate, Assess(InEthanol(methanol), RuleSet.Clp).OralAte);

    [Theory, Cites(References.Cfr16, "1500.14(a)(4) and (b)(4): mixtures of 4 % or more by weight")]
    [InlineData("3.9999999999999999", false)]
    [InlineData("4", true)]
    public void The_poison_wording_starts_at_four_percent(string methanol, bool wanted)
    {
        Assert.Equal(wanted, Assess(InEthanol(methanol), RuleSet.Osha).PoisonWording);
        Assert.False(Assess(InEthanol(methanol), RuleSet.Clp).PoisonWording);
    }

    [Theory]
    [InlineData(RuleSet.Clp, "Causes damage to organs (optic nerve, central nervous system)")]
    [InlineData(RuleSet.Osha, "Causes damage to organs (optic nerve, central nervous system)")]
    public void The_harmed_organs_are_named(RuleSet rules, string text) =>
        Assert.Contains(text, Assess("methanol=100", rules).StatementTexts(Ours));

    [Fact]
    public void Every_class_says_why()
    {
        var why = Assess("ethanol=88,methanol=5,water=7", RuleSet.Clp).Why;
        Assert.Equal(4, why.Count);
        Assert.Contains("Acute Tox. 4, H302: The acute toxicity estimate by mouth is 2000 mg/kg (methanol 5 %); category 4 goes from over 300 up to 2000.", why);
        Assert.Contains("STOT SE 2, H371: methanol 5 % (limit 3 %); it harms: optic nerve, central nervous system.", why);
        Assert.Contains("Eye Irrit. 2, H319: This reaches the limit: ethanol 88 % (limit 50 %).", why);
    }

    private static string InEthanol(string methanol) =>
        FormattableString.Invariant($"methanol={methanol},ethanol={100 - decimal.Parse(methanol, System.Globalization.CultureInfo.InvariantCulture)}");

    private static string Rung(string methanol, RuleSet rules) => Statements(InEthanol(methanol), rules);
}
