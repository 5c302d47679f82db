using static JarLabel.Tests.Hazards.Mixtures;

namespace JarLabel.Tests.Hazards;

public class PoisonCenterTests
{
    // HRSA: one number for the whole US. Europe's 112 is the emergency number; the centers' own numbers differ, so a shop sets it.
    [Theory, Cites(References.PoisonHelp, "1-800-222-1222")]
    [InlineData(RuleSet.Osha, null, "1-800-222-1222")]
    [InlineData(RuleSet.Clp, null, "112")]
    [InlineData(RuleSet.Clp, "030 19240", "030 19240")]
    [InlineData(RuleSet.Osha, "555 0142", "555 0142")]
    public void The_number_follows_the_rules_unless_the_shop_set_its_own(RuleSet rules, string? own, string number) =>
        Assert.Equal(number, PoisonCenter.Number(rules, own));

    [Fact]
    public void The_number_stands_behind_the_first_statement_that_names_the_center()
    {
        var said = HazardWords.PrecautionTexts(["P210", "P301+P310", "P308+P311"], RuleSet.Clp, Ours, "030 19240");
        Assert.Equal("IF SWALLOWED: Immediately call a POISON CENTER (030 19240)/doctor.", said[1]);
        Assert.Equal("IF exposed or concerned: Call a POISON CENTER/doctor.", said[2]);
    }

    [Theory, Cites(References.Cfr16, "1700.14(a)(8)")]
    [InlineData("ethanol=96.1,methanol=3.9", false)]
    [InlineData("ethanol=96,methanol=4", true)]
    public void A_lid_that_children_open_is_told(string contents, bool told)
    {
        var cautions = BatchCautions.OfLid(Assess(contents, RuleSet.Osha));
        Assert.Equal(told ? ["JL385"] : [], cautions.Select(caution => caution.Code));
        Assert.All(cautions, caution => Assert.Contains("16 CFR 1700.14(a)(8)", caution.Message, StringComparison.Ordinal));
    }

    [Fact]
    public void A_lid_is_told_for_its_class_where_there_is_no_methanol()
    {
        var caution = Assert.Single(BatchCautions.OfLid(Assess("toluene=10,ethanol=90", RuleSet.Clp)));
        Assert.Equal("JL385", caution.Code);
        Assert.Contains("Asp. Tox. 1 (CLP Annex II 3.1.1)", caution.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("methanol", caution.Message, StringComparison.Ordinal);
    }
}
