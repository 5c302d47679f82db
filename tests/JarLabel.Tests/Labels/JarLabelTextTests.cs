namespace JarLabel.Tests.Labels;

public class JarLabelTextTests
{
    private static readonly DateTime At = new(2026, 3, 9, 10, 0, 0);
    private static readonly ShopCatalog Catalog = ShopCatalog.Ours;

    [Fact]
    public void The_words_of_a_fresh_jar()
    {
        var text = Text("garnet", "ethanol-95", 1.5, 350);
        Assert.Equal("1½", text.Words["cut"][0]);
        Assert.Equal("180 g/L", text.Words["cutMetric"][0]);
        Assert.Equal("Garnet", text.Words["grade"][0]);
        Assert.Equal("142-5", text.Words["jar"][0]);
        Assert.Equal("350 mL + 62.9 g flakes = 402 mL", text.Words["batch"][0]);
        Assert.Equal("9 Mar 2026", text.Tables["dates"][0][1]);
        Assert.Equal(["use by ≈", "9 Nov 2026"], text.Tables["dates"][1]);
        Assert.Equal("DANGER", text.Words["signal"][0]);
        Assert.Equal("SHELLAC 1.5 LB GARNET. MIXED 2026-03-09. USE BY 2026-11-09. DANGER FLAMMABLE. JAR 142-5.1", text.Code);
    }

    [Fact]
    public void With_a_base_address_the_code_is_the_jars_page_in_capitals() =>
        Assert.Equal("HTTP://192.168.1.20:5080/J/142-5.1", Text("garnet", "ethanol-95", 1.5, 350, "http://192.168.1.20:5080").Code);

    [Fact]
    public void Percentages_are_of_the_whole_jar_by_weight()
    {
        // By hand: 350 mL at 0.81138 kg/L is 283.98 g, 92.41 % of it ethanol; with 62.90 g of shellac the jar weighs 346.88 g.
        Assert.Equal("Shellac 18.1 %, ethanol 75.7 %, water 6.2 % by weight", Text("garnet", "ethanol-95", 1.5, 350).Words["contents"][0]);
    }

    [Theory]
    [InlineData(1.5, "½ lb cut|1 lb cut")]
    [InlineData(2, "½ lb cut|1 lb cut|1½ lb cut")]
    [InlineData(0.5, "")]
    public void The_thinning_table_leads_to_the_common_weaker_cuts(double cut, string rows) =>
        Assert.Equal(rows, string.Join('|', Text("garnet", "ethanol-95", cut, 350).Tables["thinning"].Skip(1).Select(r => r[0])));

    [Fact]
    public void The_thinning_table_names_its_columns() =>
        Assert.Equal(["to cut", "add to 100 mL", "add to this jar"], Text("garnet", "ethanol-95", 2, 350).Tables["thinning"][0]);

    [Fact, Cites(References.Cfr16, "1500.14(b)(4): \"danger\", \"poison\" and three sentences on 4 % of methanol by weight and more")]
    public void Much_methanol_brings_the_poison_wording()
    {
        Assert.Equal("DANGER · POISON", Text("garnet", "denatured-methanol-50", 1.5, 350).Words["signal"].Single());
        Assert.Contains("Cannot be made nonpoisonous", Text("garnet", "denatured-methanol-50", 1.5, 350).Words["poison"][0], StringComparison.Ordinal);
        Assert.False(Text("garnet", "ethanol-95", 1.5, 350).Words.ContainsKey("poison"));
    }

    [Theory, CommonPractice]
    [InlineData("French polish, viola top", true)]
    [InlineData("polishing the table", true)]
    [InlineData("pad on the last coats", true)]
    [InlineData("Schellackpolitur", true)]
    [InlineData("Politur, Deckel", true)]
    [InlineData("padauk box", false)]
    [InlineData("viola top", false)]
    [InlineData(null, false)]
    public void A_french_polishers_label_tells_of_oily_rags(string? job, bool told) =>
        Assert.Equal(told, Text("garnet", "ethanol-95", 1.5, 350, job: job).Words.ContainsKey("rags"));

    // The same number behind the first statement that names the center, and the first aid in full.
    [Theory, Cites(References.PoisonHelp, "1-800-222-1222; rinse eyes for 15 to 20 minutes; 911 for the unconscious")]
    [InlineData("denatured-methanol-50", true)]
    [InlineData("ethanol-95", false)]
    public void The_card_of_methanol_says_whom_to_call_at_once(string solvent, bool methanol)
    {
        var text = Text("garnet", solvent, 1.5, 350);
        var aid = string.Join(' ', text.Lists["firstAid"]);
        Assert.Equal(methanol, aid.Contains("at once, even when well", StringComparison.Ordinal) && aid.Contains("10 to 48 h", StringComparison.Ordinal));
        Assert.All((string[])["(1-800-222-1222)", "Do not cause vomiting", "15 minutes", "wet clothing off", "911"], part => Assert.Contains(part, aid, StringComparison.Ordinal));
        Assert.Equal(methanol ? 1 : 0, text.Lists["precautions"].Count(p => p.Contains("POISON CENTER (1-800-222-1222)/doctor", StringComparison.Ordinal)));
        Assert.DoesNotContain(text.Lists["precautions"], p => p.Contains("SWALLOWED", StringComparison.Ordinal) && p.Contains("feel unwell", StringComparison.Ordinal));
        Assert.Equal(methanol, text.Words.ContainsKey("lid"));
    }

    [Fact]
    public void An_unknown_solvent_is_said_to_be_unknown_and_labelled_for_the_worst()
    {
        var text = Text("garnet", "denatured-unknown", 1.5, 350);
        Assert.Contains("composition unknown", text.Words["contents"][0], StringComparison.Ordinal);
        Assert.Contains("GHS06", text.Pictograms);
        Assert.Contains(text.Lists["handling"], line => line.Contains("not known", StringComparison.Ordinal));
    }

    [Fact, CommonPractice]
    public void A_waxy_grade_warns_of_varnish_on_top()
    {
        Assert.Contains(Text("seedlac", "ethanol-95", 1.5, 350).Lists["handling"], line => line.Contains("wax", StringComparison.Ordinal));
        Assert.DoesNotContain(Text("blonde", "ethanol-95", 1.5, 350).Lists["handling"], line => line.Contains("wax", StringComparison.Ordinal));
    }

    private static LabelText Text(string grade, string solvent, double cut, double milliliters, string? baseUrl = null, string? job = null)
    {
        var alcohol = Catalog.Solvents.Find(solvent)!;
        var order = new BatchRequest(PoundCut.FromPoundsPerUsGallon(cut), Pour: Volume.FromMilliliters(milliliters));
        var recipe = RecipeSolver.Solve(order, alcohol.DensityAt(Warmth.Reference)).Require();
        var dates = new KeepingDates(At.AddDays(1), new DateOnly(2026, 7, 9), new DateOnly(2026, 11, 9));
        var container = new Container(ContainerMaterial.Glass, Volume.FromMilliliters(500));
        var mixed = new Mixed(At, Contents.Of(recipe, grade, solvent, null), container, dates, "main", Warmth.Reference, Job: job);
        var jar = Jar.Fold(JarNumber.From(142), [mixed]).Require();
        var possible = JarComposition.Possible([(alcohol, recipe.PourWeight)], recipe.Flakes, Catalog);
        var hazards = MixtureClassifier.Classify(possible, RuleSet.Osha, Catalog);
        return JarLabelText.For(new LabelFacts(jar, [mixed], hazards, Catalog, "Alder Lane Lutherie", null, baseUrl));
    }
}
