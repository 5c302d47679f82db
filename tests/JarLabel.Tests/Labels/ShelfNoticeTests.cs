using static JarLabel.Tests.Hazards.Mixtures;

namespace JarLabel.Tests.Labels;

public class ShelfNoticeTests
{
    [Fact]
    public void At_most_five_sentences_stand_large() => Assert.All(
        (LabelText[])[Notice(RuleSet.Osha), Notice(RuleSet.Clp, ("denatured-methanol-50", 1))],
        text => Assert.InRange(text.Lists["sentences"].Count, 1, 5));

    // 29 CFR 1926.152(b)(1): 25 US gallons are 94.6 L. HSE L138: 50 L. TRGS 510: 20 kg, about 24.6 L of 95 % ethanol at 0.8114 kg/L.
    [Theory]
    [Cites(References.Osha1926, "(b)(1)")]
    [Cites(References.HseL138, "workrooms")]
    [Cites(References.Trgs510, "small amounts")]
    [InlineData(RuleSet.Osha, 94, "")]
    [InlineData(RuleSet.Osha, 95, "25 US gallons")]
    [InlineData(RuleSet.Clp, 24, "")]
    [InlineData(RuleSet.Clp, 26, "20 kg")]
    [InlineData(RuleSet.Clp, 51, "20 kg, 50 L")]
    public void A_passed_limit_says_so_and_comes_first(RuleSet rules, double liters, string passed)
    {
        var limits = Notice(rules, ("ethanol-95", liters)).Tables["limits"];
        Assert.Equal(passed, string.Join(", ", limits.Skip(1).TakeWhile(row => row[1].StartsWith("PASSED NOW", StringComparison.Ordinal)).Select(row => row[0])));
        Assert.All(limits.Skip(1), row => Assert.Matches(@"29 CFR 19|HSE L138|TRGS 510", row[1]));
    }

    [Fact]
    public void American_limits_stand_on_american_notices_only()
    {
        Assert.Contains(Notice(RuleSet.Osha, ("ethanol-95", 1)).Tables["limits"], row => row[0] == "1 US quart");
        Assert.DoesNotContain(Notice(RuleSet.Clp, ("ethanol-95", 1)).Tables["limits"], row => row[0].Contains("US", StringComparison.Ordinal));
    }

    // NIOSH and GisChem: signs of methanol poisoning may be delayed; the reference sheet gives 10 to 48 hours.
    [Theory, Cites(References.GisChem, "methanol, first aid")]
    [InlineData("ethanol-95", false)]
    [InlineData("denatured-sda3a", true)]
    [InlineData("denatured-unknown", true)]
    [InlineData("methanol", true)]
    public void Methanol_brings_its_first_aid_and_the_sign_for_poison(string solvent, bool poison)
    {
        var text = Notice(RuleSet.Osha, ("ethanol-95", 1), (solvent, 1));
        Assert.Equal(poison, text.Tables["duties"].Single(row => row[0] == "First aid")[1].Contains("10 to 48 h", StringComparison.Ordinal));
        Assert.Equal(poison ? ["W021", "W016"] : ["W021"], text.Pictograms);
        Assert.Equal(poison, text.Tables["stock"].Any(row => row[0].Contains("methanol", StringComparison.Ordinal)));
    }

    [Theory]
    [Cites(References.PoisonHelp, "1-800-222-1222; 911")]
    [Cites(References.Osha106, "(e)(6)(ii): nozzle and container electrically interconnected, no lower size")]
    [InlineData(RuleSet.Osha, "1-800-222-1222|911|1910.106(e)(6)(ii)", "112|centre")]
    [InlineData(RuleSet.Clp, "(112)|112.|centre", "1-800|911|1910.106")]
    public void Its_advice_is_what_a_fire_officer_and_a_poison_center_would_say(RuleSet rules, string says, string never)
    {
        var duties = Notice(rules, ("ethanol-95", 1)).Tables["duties"];
        var all = string.Join('\n', duties.Select(row => $"{row[0]}: {row[1]}"));
        Assert.Equal("First aid", duties[0][0]);
        Assert.All(says.Split('|').Concat(["Touch no switch; cut the power from outside", "bonded and grounded at any size", "15 minutes", "wet clothing off", "no stove, blender or grinder", "Do not cause vomiting"]), part => Assert.Contains(part, all, StringComparison.Ordinal));
        Assert.All(never.Split('|').Concat(["switches off", "5 L"]), part => Assert.DoesNotContain(part, all, StringComparison.Ordinal));
    }

    [Fact]
    public void A_home_is_told_to_ask_before_any_workplace_figure()
    {
        var limits = Notice(RuleSet.Osha, ("ethanol-95", 1)).Tables["limits"];
        Assert.Equal("At home", limits[0][0]);
        Assert.Contains("ask the fire department", limits[0][1], StringComparison.Ordinal);
        Assert.Equal(["1 US quart", "5 US gallons", "25 US gallons", "120 US gallons", "60 US gallons"], limits.Skip(1).Select(row => row[0]));
    }

    [Theory, Cites(References.Cfr16, "1500.14(b)(4): the wording stands with the skull, here the warning sign")]
    [InlineData("denatured-methanol-50", RuleSet.Osha, true)]
    [InlineData("denatured-methanol-50", RuleSet.Clp, false)]
    [InlineData("ethanol-95", RuleSet.Osha, false)]
    public void The_poison_wording_stands_on_the_notice_with_its_sign(string solvent, RuleSet rules, bool wanted)
    {
        var text = Notice(rules, (solvent, 1));
        Assert.Equal(wanted, text.Tables["duties"].Any(row => row[1].Contains("Cannot be made nonpoisonous", StringComparison.Ordinal)));
        Assert.True(!wanted || text.Pictograms.Contains("W016"));
    }

    [Fact]
    public void What_stands_there_is_added_up_by_category()
    {
        var stock = Notice(RuleSet.Clp, ("ethanol-95", 1), ("ethanol-95", 0.5), ("isopropanol-99", 2)).Tables["stock"];
        Assert.Equal(["highly flammable (cat. 2)", "3", "3.50 L (3.7 qt)"], [stock[1][0], stock[1][1], stock[1][2].Replace("118.3 fl oz", "3.7 qt", StringComparison.Ordinal)]);
    }

    [Fact]
    public void An_empty_shelf_gets_the_careful_notice()
    {
        var text = Notice(RuleSet.Osha);
        Assert.Equal(["DANGER"], text.Words["danger"]);
        Assert.Contains("nothing", text.Tables["stock"][1]);
    }

    // 250 mL of ethanol at 0.7893 g/mL and 46.07 g/mol give 0.103 m3 of vapour at 20 °C: 2060 ppm in 50 m3, limit 1000 ppm.
    [Fact, Cites(References.NioshPocketGuide, "ethyl alcohol")]
    public void The_air_is_told_for_the_stated_room()
    {
        var air = Notice(RuleSet.Osha, ("ethanol-99", 1)).Tables["air"];
        Assert.InRange(double.Parse(air[1][1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 2020, 2070);
        Assert.Equal("1000 ppm", air[2][1]);
    }

    [Theory]
    [InlineData(RuleSet.Osha, "Vapor is")]
    [InlineData(RuleSet.Clp, "Vapour is")]
    public void Vapour_is_spelt_as_the_rules_spell_it(RuleSet rules, string begins) =>
        Assert.StartsWith(begins, Notice(rules).Tables["duties"].Single(row => row[0] == "Flame")[1], StringComparison.Ordinal);

    [Fact]
    public void It_ends_by_deferring_to_local_rules() =>
        Assert.Contains("local fire code", Notice(RuleSet.Clp).Words["closing"][0], StringComparison.Ordinal);

    private static LabelText Notice(RuleSet rules, params (string Solvent, double Liters)[] jars)
    {
        var stock = new ShelfStock([.. jars.Select(jar => Jar(rules, Ours.Solvents.Find(jar.Solvent)!, Volume.FromLiters(jar.Liters)))]);
        var question = AirQuestion.Of(Volume.FromMilliliters(250), Volume.FromCubicMeters(50), Duration.FromHours(1)).Require();
        var air = RoomAirAssessor.Assess(Ours.Solvents.Find(jars.Length > 0 ? jars[0].Solvent : "ethanol-95")!, question, rules).Require();
        return ShelfNotice.For(new NoticeFacts("main", new DateOnly(2026, 3, 9), stock, air, rules, Ours, true, "Larkwood", null));
    }

    private static StockedLiquid Jar(RuleSet rules, Solvent solvent, Volume liquid) => new(
        MixtureClassifier.Classify(JarComposition.Possible([(solvent, Mass.FromGrams(800))], Mass.FromGrams(100), Ours), rules, Ours),
        liquid,
        liquid * solvent.DensityAt(Temperature.FromDegreesCelsius(20)));
}
