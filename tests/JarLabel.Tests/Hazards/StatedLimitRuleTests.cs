namespace JarLabel.Tests.Hazards;

/// <summary>A shop adds an ingredient with a hazard class of its own, for which no rule has a limit.</summary>
[Cites(References.Clp, "Annex I table 3.4.5: a skin sensitiser counts from 1 %")]
public class StatedLimitRuleTests
{
    private const string Class = """
        [{ "id": "odd-allergy", "code": "Skin Sens. 1", "ladder": "odd-allergy", "statement": "H317", "signal": "Warning", "pictogram": "GHS07",
           "precautions": ["P280"], "source": "practice" }]
        """;

    private const string Phrase = """[{ "id": "H317", "text": "May cause an allergic skin reaction", "source": "practice" }]""";

    private const string Substance = """
        [{ "id": "rosin", "name": "rosin", "hazards": [{ "class": "odd-allergy", "atLeastPercent": 1, "source": "practice" }],
           "acuteToxicity": [], "source": "practice" }]
        """;

    [Theory]
    [InlineData("0.99", "99.01", "H225 H319")]
    [InlineData("1", "99", "H225 H317 H319")]
    public void The_class_holds_from_the_stated_share(string rosin, string ethanol, string statements)
    {
        var shop = ShopCatalog.Load([File("classes.json", Class), File("phrases.json", Phrase), File("substances.json", Substance)]).Require();
        var mixture = ContentsText.Parse($"rosin={rosin},ethanol={ethanol}", shop).Require();
        Assert.Equal(statements, string.Join(' ', MixtureClassifier.Classify(mixture, RuleSet.Clp, shop).Statements));
    }

    [Fact]
    public void Without_a_share_it_is_refused()
    {
        var unlimited = Substance.Replace("\"atLeastPercent\": 1, ", "", StringComparison.Ordinal);
        var problem = Assert.Single(
            ShopCatalog.Load([File("classes.json", Class), File("phrases.json", Phrase), File("substances.json", unlimited)]).Problems);
        Assert.Equal("JL210", problem.Code);
    }

    [Theory]
    [InlineData("""{ "class": "odd-allergy", "clp": 0.5, "osha": 2 }""", RuleSet.Clp, "H225 H317 H319")]
    [InlineData("""{ "class": "odd-allergy", "clp": 0.5, "osha": 2 }""", RuleSet.Osha, "H225 H319")]
    public void A_class_may_bring_limits_of_its_own(string limit, RuleSet rules, string statements)
    {
        var unlimited = Substance.Replace("\"atLeastPercent\": 1, ", "", StringComparison.Ordinal);
        var shop = ShopCatalog.Load([File("classes.json", Limited(limit)), File("phrases.json", Phrase), File("substances.json", unlimited)]).Require();
        var mixture = ContentsText.Parse("rosin=0.5,ethanol=99.5", shop).Require();
        Assert.Equal(statements, string.Join(' ', MixtureClassifier.Classify(mixture, rules, shop).Statements));
    }

    [Theory]
    [InlineData("""{ "class": "odd-allergy" }""", "JL202", "needs \"clp\", \"osha\" or both")]
    [InlineData("""{ "class": "odd-alergy", "clp": 1 }""", "JL204", "the ingredient's class \"odd-alergy\"")]
    public void A_limit_that_cannot_be_meant_is_refused(string limit, string code, string says)
    {
        var problem = Assert.Single(ShopCatalog.Load([File("classes.json", Limited(limit)), File("phrases.json", Phrase), File("substances.json", Substance)]).Problems);
        Assert.Equal(code, problem.Code);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    private static string Limited(string limit) =>
        Class.Replace("\"source\": \"practice\" }]", $$"""
            "limits": { "of": [{{limit}}], "source": "practice" }, "source": "practice" }]
            """, StringComparison.Ordinal);

    private static (string, ReadOnlyMemory<byte>) File(string name, string text) => (name, Encoding.UTF8.GetBytes(text));
}
