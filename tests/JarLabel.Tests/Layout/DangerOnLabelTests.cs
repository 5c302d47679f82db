using JarLabel.Layout.Rules;

namespace JarLabel.Tests.Layout;

/// <summary>Real jars on every design for jars: what must be readable on the label itself, however small it is.</summary>
public class DangerOnLabelTests
{
    private const string UsNumber = "1-800-222-1222";
    private static readonly string[] Designs = ["tag", "slip", "small", "standard", "tall", "long", "wide", "lid", "pillar", "full"];
    private static readonly string[] Hazards = ["hazards", "dangers", "symbols"];
    private static readonly DateTime At = new(2026, 3, 9, 10, 0, 0);

    public static TheoryData<string, RuleSet> Places() => [.. Designs.SelectMany(design => Enum.GetValues<RuleSet>().Select(rules => (design, rules)))];

    // P301+P310 stands on the label of what is a poison when swallowed. The one US number of all poison centers: HRSA, Poison Help; in Europe 112.
    [Theory, Cites(References.Osha1200, "Appendix C.4.1: P301 + P310, immediately call")]
    [MemberData(nameof(Places))]
    public void With_methanol_a_label_says_whom_to_call_and_why(string design, RuleSet rules)
    {
        foreach (var solvent in (string[])["denatured-unknown", "denatured-methanol-50", "methanol"])
        {
            var (label, _) = Place(design, solvent, rules);
            var line = Read(label, "swallowed");
            Assert.Contains(rules == RuleSet.Osha ? UsNumber : "112", line, StringComparison.Ordinal);
            Assert.Contains("methanol", line, StringComparison.OrdinalIgnoreCase);
            Assert.Contains("call", line, StringComparison.Ordinal);
        }
    }

    // 4 parts of methanol to 100: the limit of 16 CFR 1500.14(b)(4), and over 1 %, from which US rules see damage to organs.
    [Theory, Cites(References.Cfr16, "1500.3(b)(14)(i)(B): the common name of what contributes substantially to the hazard")]
    [MemberData(nameof(Places))]
    public void Four_percent_of_methanol_are_named_like_fifty(string design, RuleSet rules)
    {
        var line = Read(Place(design, "denatured-sda1", rules).Label, "swallowed");
        Assert.Contains("methanol", line, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(rules == RuleSet.Osha ? UsNumber : "112", line, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void Without_methanol_no_label_speaks_of_it(string design, RuleSet rules)
    {
        var (label, _) = Place(design, "ethanol-95", rules);
        Assert.DoesNotContain(label.Marks.OfType<TextMark>(), mark => mark.Text.Contains("methanol", StringComparison.OrdinalIgnoreCase) || mark.Text.Contains("at once", StringComparison.Ordinal));
    }

    // A signal word alone says how bad it is, not what.
    [Theory, Cites(References.Osha1200, "(f)(6)(ii): words, pictures or symbols that give at least general information on the hazards")]
    [MemberData(nameof(Places))]
    public void Every_label_tells_that_it_burns(string design, RuleSet rules)
    {
        foreach (var solvent in (string[])["ethanol-95", "denatured-sda1", "denatured-unknown"])
        {
            var (label, report) = Place(design, solvent, rules);
            Assert.Contains(label.Marks, mark => Hazards.Contains(mark.Box));
            Assert.Contains("flammable", Read(label, "hazards") + Read(label, "dangers"), StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain(report.Lacks, lack => lack.StartsWith("29 CFR 1910.1200(f)(6):", StringComparison.Ordinal));
        }
    }

    // Acute toxicity of category 3 is said on the smallest label too: as a word, or as the word POISON.
    [Theory]
    [MemberData(nameof(Places))]
    public void What_is_toxic_is_called_so(string design, RuleSet rules)
    {
        var said = string.Join(' ', Place(design, "denatured-unknown", rules).Label.Marks.OfType<TextMark>().Select(mark => mark.Text));
        Assert.Matches("(?i)toxic|poison", said);
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void What_is_not_on_the_label_is_told_and_where_it_stands(string design, RuleSet rules)
    {
        var (label, report) = Place(design, "denatured-unknown", rules);
        Assert.Contains("card", Read(label, "moreOnCard") + Read(label, "cardBelow"), StringComparison.Ordinal);
        Assert.Contains(report.MovedToCard, text => text.StartsWith("IF SWALLOWED", StringComparison.OrdinalIgnoreCase) || text.StartsWith("Dispose", StringComparison.Ordinal));
        Assert.DoesNotContain(report.MovedToCard, text => text.Contains("jar card", StringComparison.Ordinal)); // the line that sends to the card is not on it
    }

    [Theory]
    [InlineData("slip")]
    [InlineData("small")]
    [InlineData("tall")]
    [InlineData("standard")]
    public void Where_there_is_room_the_alcohol_is_named(string design) => Assert.Equal("in ethanol 95 %", Read(Place(design, "ethanol-95", RuleSet.Osha).Label, "solvent"));

    // The shop's own number stands in the place of the region's.
    [Theory]
    [MemberData(nameof(Places))]
    public void The_shops_own_number_is_the_one_to_call(string design, RuleSet rules) =>
        Assert.Contains("030 19240", Read(Place(design, "denatured-unknown", rules, "030 19240").Label, "swallowed"), StringComparison.Ordinal);

    // A number as long as a shop may set it (40 characters) never keeps a jar from its label.
    [Theory]
    [MemberData(nameof(Places))]
    public void A_long_number_stops_no_label(string design, RuleSet rules)
    {
        var (label, report) = Place(design, "denatured-unknown", rules, "Poison line of the coast +1 555 010 0142");
        Assert.True(Read(label, "swallowed").Length > 0 || report.MovedToCard.Any(text => text.Contains("555 010 0142", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("DANGER · POISON", 25, "DANGER|POISON")]
    [InlineData("DANGER · POISON", 40, "DANGER · POISON")]
    [InlineData("one · two · three", 25, "one · two|three")]
    public void No_line_begins_or_ends_with_a_dot(string words, double width, string lines)
    {
        var design = LayoutFiles.DesignOf($$"""{ "kind": "columns", "boxes": [{ "kind": "text", "word": "signal", "voice": "say", "lines": 3, "width": {{width}} }] }""").Require();
        var text = new LabelText(SampleLabels.Words(("signal", [words])), SampleLabels.Lists(), SampleLabels.Tables(), [], null, null);
        var label = Composer.Place(text, design, LayoutFiles.Area(), new FakeRuler()).Require();
        Assert.Equal(lines, string.Join('|', label.Marks.OfType<TextMark>().Select(mark => mark.Text)));
    }

    private static string Read(PlacedLabel label, string box) => string.Join(' ', label.Marks.OfType<TextMark>().Where(mark => mark.Box == box).Select(mark => mark.Text));

    private static (PlacedLabel Label, LabelRuleReport Report) Place(string id, string solvent, RuleSet rules, string? poisonCenter = null)
    {
        var (design, text, ruler) = (LayoutFiles.Design(id), Text(solvent, rules, poisonCenter), new SkiaRuler());
        var label = Composer.Place(text, design, new LabelArea(design.Shape, 0, 0, design.Width, design.Height, 300), ruler).Require();
        Assert.Empty(new Preflight(ruler, QrCheck.Read).Check(label, design.Width, design.Height));
        return (label, LabelRules.Of(label, text, null, rules, ruler));
    }

    private static LabelText Text(string solvent, RuleSet rules, string? poisonCenter)
    {
        var catalog = ShopCatalog.Ours;
        var alcohol = catalog.Solvents.Find(solvent)!;
        var recipe = RecipeSolver.Solve(new BatchRequest(PoundCut.FromPoundsPerUsGallon(1.5), Pour: Volume.FromMilliliters(350)), alcohol.DensityAt(Warmth.Reference)).Require();
        var dates = new KeepingDates(At.AddDays(1), new DateOnly(2026, 7, 9), new DateOnly(2026, 11, 9));
        var mixed = new Mixed(At, Contents.Of(recipe, "garnet", solvent, null), new Container(ContainerMaterial.Glass, Volume.FromMilliliters(500)), dates, "main", Warmth.Reference);
        var jar = Jar.Fold(JarNumber.From(142), [mixed]).Require();
        var hazards = MixtureClassifier.Classify(JarComposition.Possible([(alcohol, recipe.PourWeight)], recipe.Flakes, catalog), rules, catalog);
        return JarLabelText.For(new LabelFacts(jar, [mixed], hazards, catalog, "Alder Lane Lutherie", null, "http://192.168.1.20:5080") { PoisonCenter = poisonCenter });
    }
}
