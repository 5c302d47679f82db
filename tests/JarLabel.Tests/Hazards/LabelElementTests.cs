using static JarLabel.Tests.Hazards.Mixtures;

namespace JarLabel.Tests.Hazards;

public class LabelElementTests
{
    [Theory, Cites(References.Clp, "Article 26(1)(b) and (c): the skull drops every exclamation mark")]
    [InlineData("ethanol=60,methanol=40", "GHS02 GHS06 GHS08")]
    [InlineData("ethanol=80,methanol=20", "GHS02 GHS07 GHS08")]
    [InlineData("1-butanol=5,water=95", "GHS02 GHS05")]
    [InlineData("1-butanol=100", "GHS02 GHS05 GHS07")]
    public void European_pictograms(string contents, string pictograms) =>
        Assert.Equal(pictograms, string.Join(' ', Assess(contents, RuleSet.Clp).Pictograms));

    [Theory, Cites(References.Osha1200, "Appendix C.2.1.2 and C.2.1.3: the skull drops the exclamation mark of acute toxicity only")]
    [InlineData("ethanol=60,methanol=40", "GHS02 GHS06 GHS07 GHS08")]
    [InlineData("methanol=40,water=60", "GHS02 GHS06 GHS08")]
    [InlineData("1-butanol=5,water=95", "GHS02 GHS05")]
    public void American_pictograms(string contents, string pictograms) =>
        Assert.Equal(pictograms, string.Join(' ', Assess(contents, RuleSet.Osha).Pictograms));

    [Fact, Cites(References.Clp, "Annex I tables 2.6.2, 3.1.3 and 3.8.4; Article 28(1): redundant statements fall away")]
    public void The_card_of_a_methanol_rich_jar_carries_every_precaution()
    {
        string[] expected =
        [
            "P210", "P233", "P240", "P241", "P242", "P243", "P280", "P303+P361+P353", "P370+P378", "P403+P235", "P501",
            "P264", "P270", "P301+P310", "P321", "P330", "P405",
            "P302+P352", "P361+P364",
            "P271", "P304+P340", "P311", "P403+P233",
            "P260", "P308+P311",
        ];
        var found = Assess("methanol=60,water=40", RuleSet.Clp).Precautions;
        Assert.Equal(expected.Except(["P233"]).Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [Theory, Cites(References.Clp, "Article 28(3): not more than six on a label; under US rules our own choice")]
    [InlineData("ethanol=95,water=5", "P210 P280 P305+P351+P338 P233 P403+P235 P303+P361+P353")]
    [InlineData("methanol=100", "P301+P310 P210 P260 P280 P308+P311 P405")]
    public void A_label_carries_the_six_that_matter_most(string contents, string expected) =>
        Assert.Equal(expected, string.Join(' ', Assess(contents, RuleSet.Osha).LabelPrecautions));

    // C.2.4.7 and CLP Article 28(1): of several statements the most stringent. H302 alone asks for "if you feel unwell"; methanol counts from 1 %.
    [Theory]
    [Cites(References.Osha1200, "Appendix C.2.4.7")]
    [Cites(References.Clp, "Article 28(1)")]
    [InlineData("ethanol=99.1,methanol=0.9", false)]
    [InlineData("ethanol=99,methanol=1", true)]
    [InlineData("ethanol=95,methanol=5", true)]
    [InlineData("ethanol=80,methanol=20", true)]
    [InlineData("ethanol=60,methanol=40", true)]
    public void Whoever_swallowed_methanol_calls_at_once_under_both_rules(string contents, bool atOnce)
    {
        foreach (var rules in (RuleSet[])[RuleSet.Osha, RuleSet.Clp])
        {
            var said = Assess(contents, rules).Precautions;
            Assert.Equal(atOnce, said.Contains("P301+P310"));
            Assert.DoesNotContain("P301+P312", said);
        }
    }

    // 20 % of methanol: H312, H332 and H370. "Call" for whoever was exposed outranks "call if you feel unwell".
    [Fact, Cites(References.Osha1200, "Appendix C.2.4.7")]
    public void Call_if_you_feel_unwell_falls_where_call_stands()
    {
        var said = Assess("ethanol=80,methanol=20", RuleSet.Osha).Precautions;
        Assert.Contains("P308+P311", said);
        Assert.DoesNotContain("P312", said);
        Assert.Contains("P312", Assess("propan-2-ol=100", RuleSet.Osha).Precautions);
    }

    // 16 CFR 1700.14(a)(8): liquids of 4 % methanol by weight and more. CLP Annex II 3.1.1.3: 3 %, from memory.
    [Theory, Cites(References.Cfr16, "1700.14(a)(8)")]
    [InlineData("ethanol=96.1,methanol=3.9", false, true)]
    [InlineData("ethanol=96,methanol=4", true, true)]
    [InlineData("ethanol=97,methanol=3", false, true)]
    [InlineData("ethanol=97.1,methanol=2.9", false, false)]
    public void The_lid_keeps_children_out(string contents, bool osha, bool clp) => Assert.Equal(
        (osha, clp), (ChildResistantLid.WantedOn(Assess(contents, RuleSet.Osha)), ChildResistantLid.WantedOn(Assess(contents, RuleSet.Clp))));

    // CLP Annex II 3.1.1.1 and 3.1.1.2: acute toxicity 1 to 3, organs 1 once or again, aspiration; 16 CFR 1700.14(a)(15) and (a)(31): thin hydrocarbons and
    // toluene from 10 %. All from memory. 2-nitropropane: H331 from 11.3 %; methyl n-butyl ketone: H372 from 10 %.
    [Theory]
    [InlineData("2-nitropropane=25,ethanol=75", false, true)]
    [InlineData("2-nitropropane=5,ethanol=95", false, false)]
    [InlineData("methyl-n-butyl-ketone=10,ethanol=90", false, true)]
    [InlineData("methyl-n-butyl-ketone=9.9,ethanol=90.1", false, false)]
    [InlineData("toluene=10,ethanol=90", true, true)]
    [InlineData("toluene=9.9,ethanol=90.1", false, false)]
    [InlineData("kerosene=50,ethanol=50", true, true)]
    public void The_lid_keeps_children_out_of_other_poisons_too(string contents, bool osha, bool clp) => Assert.Equal(
        (osha, clp), (ChildResistantLid.WantedOn(Assess(contents, RuleSet.Osha)), ChildResistantLid.WantedOn(Assess(contents, RuleSet.Clp))));

    // 2 % methanol does not give a class of its own, but is called for at once; butanone of 68 % asks for "call if you feel unwell" (H336).
    [Theory, Cites(References.Osha1200, "Appendix C.2.4.7")]
    [InlineData(RuleSet.Osha)]
    [InlineData(RuleSet.Clp)]
    public void No_call_if_you_feel_unwell_stands_beside_call_at_once(RuleSet rules)
    {
        var said = Assess("butanone=68,methanol=2,ethanol=30", rules).Precautions;
        Assert.Contains("P301+P310", said);
        Assert.Contains("P304+P340", said);
        Assert.DoesNotContain("P312", said);
    }

    [Fact]
    public void Whom_to_call_is_said_first_where_methanol_counts()
    {
        Assert.Equal("P301+P310", Assess("ethanol=50,methanol=50", RuleSet.Osha).Precautions[0]);
        Assert.Equal("P210", Assess("ethanol=95,water=5", RuleSet.Osha).Precautions[0]);
    }

    [Fact, Cites(References.Clp, "Annex III and IV texts")]
    public void The_texts_follow_the_spelling_of_the_rules()
    {
        Assert.Equal("Highly flammable liquid and vapour", Assess("ethanol=95,water=5", RuleSet.Clp).StatementTexts(Ours)[0]);
        Assert.Equal("Highly flammable liquid and vapor", Assess("ethanol=95,water=5", RuleSet.Osha).StatementTexts(Ours)[0]);
        Assert.Equal(
            ["IF SWALLOWED: Immediately call a POISON CENTER/doctor.", "Do not breathe vapors."],
            HazardWords.PrecautionTexts(["P301+P310", "P260"], RuleSet.Osha, Ours));
    }

    [Fact]
    public void Every_phrase_a_class_names_is_there_and_every_organ_class_names_its_organs()
    {
        Assert.All(Ours.Classes.Rows, c => Assert.All(c.Precautions.Append(c.Statement), p => Assert.NotNull(Ours.Phrases.Find(p))));
        Assert.All(
            Ours.Substances.Rows.SelectMany(s => s.Hazards).Where(h => h.Class is "stot-se-1" or "stot-se-2"),
            h => Assert.NotEmpty(h.Organs));
    }
}
