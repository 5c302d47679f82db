using JarLabel.Layout.Rules;

namespace JarLabel.Tests.Layout.Rules;

public class LabelRulesTests
{
    private const string Sizes = "CLP Annex I table 1.3, label size";
    private const string Pictograms = "CLP Annex I table 1.3, pictogram size";

    // Table 1.3: to 3 L 52 x 74 mm, 10 mm, if possible 16; to 50 L 74 x 105 mm, 23 mm; to 500 L 105 x 148 mm, 32 mm. The card is 101 x 148 mm with pictograms of 10 to 13 mm.
    [Theory, Cites(References.Clp, "Annex I 1.2.1.4 table 1.3")]
    [InlineData("card", 0.5, true, false)]
    [InlineData("card", 3, true, false)]
    [InlineData("card", 3.1, true, false)]
    [InlineData("card", 50, true, false)]
    [InlineData("card", 51, false, false)]
    [InlineData("small", 0.5, false, false)]
    [InlineData("full", 3, true, true)]
    public void Sizes_follow_the_capacity(string design, double liters, bool label, bool pictogram)
    {
        var report = Report(design, design == "full" ? "shortest" : "typical", RuleSet.Clp, liters);
        Assert.Equal((label, pictogram), (report.Satisfies.Contains(Sizes), report.Satisfies.Contains(Pictograms)));
        Assert.Equal((!label, !pictogram), (Lacks(report, Sizes), Lacks(report, Pictograms)));
    }

    [Theory, Cites(References.Clp, "Annex I 1.2.1.4 table 1.3: to 3 L not under 10 mm, if possible at least 16")]
    [InlineData(0.5, "if possible")]
    [InlineData(3.1, "23.0 mm is asked")]
    public void A_pictogram_between_the_least_and_the_wish_is_said_to_be_so(double liters, string said) => Assert.EndsWith(
        said, Report("card", "typical", RuleSet.Clp, liters).Lacks.Single(lack => lack.StartsWith(Pictograms, StringComparison.Ordinal)), StringComparison.Ordinal);

    // (f)(6): the name and words, pictures or symbols that tell the hazards in general.
    [Theory, Cites(References.Osha1200, "(f)(6)")]
    [InlineData("card")]
    [InlineData("standard")]
    [InlineData("small")]
    public void Every_design_meets_the_workplace_rule(string design) =>
        Assert.Contains("29 CFR 1910.1200(f)(6)", Report(design, "typical", RuleSet.Osha, 0.5).Satisfies);

    // (f)(6)(ii): words, pictures or symbols with "at least general information" on the hazards. A signal word alone has none: the words are taken off.
    [Theory, Cites(References.Osha1200, "(f)(6)(ii)")]
    [InlineData("tag", "dangers", true)]
    [InlineData("tag", "grade", false)]
    [InlineData("lid", "dangers", true)]
    public void A_signal_word_alone_does_not_meet_the_workplace_rule(string id, string box, bool lacks)
    {
        var (design, text, ruler) = (LayoutFiles.Design(id), SampleLabels.For(id)["typical"], new SkiaRuler());
        var label = Composer.Place(text, design, new LabelArea(design.Shape, 0, 0, design.Width, design.Height, 300), ruler).Require();
        Assert.Contains("29 CFR 1910.1200(f)(6)", LabelRules.Of(label, text, null, RuleSet.Osha, ruler).Satisfies);
        var found = LabelRules.Of(label with { Marks = [.. label.Marks.Where(mark => mark.Box != box)] }, text, null, RuleSet.Osha, ruler).Lacks;
        Assert.Equal(lacks, found.Any(lack => lack.StartsWith("29 CFR 1910.1200(f)(6):", StringComparison.Ordinal) && lack.Contains("that tell the hazards", StringComparison.Ordinal)));
    }

    // 16 CFR 1500.3(b)(14)(i): name and place of business, and the common name of what contributes substantially to the hazard.
    [Theory, Cites(References.Cfr16, "1500.3(b)(14)(i)")]
    [InlineData("Alder Lane Lutherie", true)]
    [InlineData("Alder Lane Lutherie · tel. 555 0100", true)]
    [InlineData("Alder Lane Lutherie · 4 Alder Lane, Millbrook", false)]
    public void A_household_label_wants_the_place_of_the_maker(string owner, bool lacks) =>
        Assert.Equal(lacks, Household(owner, "methanol 30 %").Contains("place of business", StringComparison.Ordinal));

    [Theory, Cites(References.Cfr16, "1500.3(b)(14)(i)")]
    [InlineData("denatured alcohol", true)]
    [InlineData("methanol 30 %", false)]
    public void A_household_label_wants_methanol_by_its_name(string contents, bool lacks) =>
        Assert.Equal(lacks, Household("Alder Lane Lutherie", contents).Contains("methanol by its name", StringComparison.Ordinal));

    // (f)(12): up to 100 mL name, pictograms, signal word, maker, and a line about the outer package, which our labels do not have; to 3 mL the name alone.
    [Theory, Cites(References.Osha1200, "(f)(12)")]
    [InlineData(0.003, true, false)]
    [InlineData(0.1, false, true)]
    [InlineData(0.101, false, false)]
    public void The_rule_for_small_packages_holds_for_small_packages_only(double liters, bool met, bool lacking)
    {
        var report = Report("card", "typical", RuleSet.Osha, liters);
        Assert.Equal((met, lacking), (report.Satisfies.Contains("29 CFR 1910.1200(f)(12)"), Lacks(report, "29 CFR 1910.1200(f)(12)")));
    }

    // 16 CFR 1500.14(b)(4): skull and crossbones, "danger", "poison" and the three sentences, all of them or the rule is not met.
    [Theory, Cites(References.Cfr16, "1500.14(b)(4)")]
    [InlineData("full", "")]
    [InlineData("wide", "")]
    [InlineData("pillar", "")]
    [InlineData("card", "")]
    [InlineData("bottle", "")]
    [InlineData("small", "the poison wording")]
    [InlineData("slip", "the poison wording")]
    [InlineData("tag", "the poison wording")]
    [InlineData("tall", "the poison wording")]
    [InlineData("lid", "the poison wording")]
    public void The_poison_rule_is_met_with_sign_and_wording_or_what_is_lacking_is_told(string design, string lacking)
    {
        const string rule = "16 CFR 1500.14(b)(4), 4 % methanol and more";
        var report = Report(design, "longest", RuleSet.Osha, 0.5);
        Assert.Equal(lacking.Length == 0, report.Satisfies.Contains(rule));
        Assert.Equal(lacking.Length > 0, report.Lacks.Any(lack => lack.StartsWith(rule, StringComparison.Ordinal) && lack.Contains(lacking, StringComparison.Ordinal)));
        Assert.DoesNotContain(report.Lacks, lack => lack.Contains("skull", StringComparison.Ordinal));
        Assert.DoesNotContain(Report(design, "shortest", RuleSet.Osha, 0.5).Satisfies.Concat(Report(design, "shortest", RuleSet.Osha, 0.5).Lacks), found => found.Contains("1500.14", StringComparison.Ordinal));
    }

    // Wording without its sign does not meet the rule: the sign is taken off a label that has both.
    [Theory, Cites(References.Cfr16, "1500.14(b)(4)")]
    [InlineData("skull", "the skull and crossbones")]
    [InlineData("signal", "the signal word")]
    [InlineData("poison", "the poison wording")]
    public void Taken_off_any_part_of_it_is_missed(string box, string lacking)
    {
        var (design, text, ruler) = (LayoutFiles.Design("full"), SampleLabels.For("full")["longest"] with { Pictograms = ["GHS02", "GHS08"] }, new SkiaRuler());
        var label = Composer.Place(text, design, new LabelArea(design.Shape, 0, 0, design.Width, design.Height, 300), ruler).Require();
        Assert.Contains(label.Marks, mark => mark.Box == box);
        var lacks = LabelRules.Of(label with { Marks = [.. label.Marks.Where(mark => mark.Box != box)] }, text, null, RuleSet.Osha, ruler).Lacks;
        Assert.Contains(lacks, lack => lack.StartsWith("16 CFR 1500.14(b)(4)", StringComparison.Ordinal) && lack.Contains(lacking, StringComparison.Ordinal));
    }

    [Fact]
    public void What_had_no_room_is_named_and_the_rule_that_misses_it()
    {
        var report = Report("small", "longest", RuleSet.Clp, 0.5);
        Assert.NotEmpty(report.MovedToCard);
        Assert.True(Lacks(report, "CLP Article 17"));
    }

    // CLP Annex I 1.2.1.1: a red frame. One ink cannot print it.
    [Theory, Cites(References.Clp, "Annex I 1.2.1.1")]
    [InlineData(false)]
    [InlineData(true)]
    public void One_ink_cannot_meet_the_red_frame(bool blackOnly)
    {
        var report = Report("card", "typical", RuleSet.Clp, 0.5, blackOnly);
        Assert.Equal(blackOnly, report.Lacks.Any(lack => lack.Contains("asks for colour", StringComparison.Ordinal)));
        Assert.Equal(!blackOnly, report.Satisfies.Contains("CLP Annex I 1.2.1.1, red frames"));
    }

    private static string Household(string owner, string contents)
    {
        var (design, sample, ruler) = (LayoutFiles.Design("card"), SampleLabels.For("card")["longest"], new SkiaRuler());
        string[] owners = owner.Contains('·', StringComparison.Ordinal) ? [owner, "Alder Lane Lutherie"] : [owner];
        var text = sample with
        {
            Words = new Dictionary<string, IReadOnlyList<string>>(sample.Words, StringComparer.Ordinal) { ["owner"] = owners, ["contents"] = [contents] },
            Lists = sample.Lists.Where(list => list.Key != "contents").ToDictionary(StringComparer.Ordinal),
        };
        var label = Composer.Place(text, design, new LabelArea(design.Shape, 0, 0, design.Width, design.Height, 300), ruler).Require();
        return string.Concat(LabelRules.Of(label, text, null, RuleSet.Osha, ruler).Lacks.Where(lack => lack.StartsWith("16 CFR 1500.3(b)(14)", StringComparison.Ordinal)));
    }

    private static bool Lacks(LabelRuleReport report, string rule) => report.Lacks.Any(lack => lack.StartsWith(rule + ":", StringComparison.Ordinal));

    private static LabelRuleReport Report(string id, string sample, RuleSet rules, double liters, bool blackOnly = false)
    {
        var design = LayoutFiles.Design(id);
        var text = SampleLabels.For(id)[sample];
        var ruler = new SkiaRuler();
        var label = Composer.Place(text, design, new LabelArea(design.Shape, 0, 0, design.Width, design.Height, 300), ruler).Require();
        return LabelRules.Of(label, text, Volume.FromLiters(liters), rules, ruler, blackOnly);
    }
}
