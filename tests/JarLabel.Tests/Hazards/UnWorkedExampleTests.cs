using static JarLabel.Tests.Hazards.Mixtures;

namespace JarLabel.Tests.Hazards;

public class UnWorkedExampleTests
{
    // The paper counts ingredients of up to 5000 mg/kg, as US rules do; CLP leaves them out.
    private static readonly Substance Harmless = new("harmless", "harmless", "test");

    [Fact, Cites(References.UnGhsPaper, "annex 2, example 1 (a): ATE 1,880 mg/kg, category 4")]
    public void Three_ingredients_of_known_oral_toxicity()
    {
        var found = Assess(
            RuleSet.Osha, (Toxic("one", (Route.Oral, 1600)), 16), (Toxic("two", (Route.Oral, 200)), 4), (Toxic("three", (Route.Oral, 3450)), 80));
        Assert.Equal(1880m, Math.Round(found.OralAte!.Value));
        Assert.Equal(["H302"], found.Statements);
    }

    [Fact, Cites(References.UnGhsPaper, "annex 2, example 3: ATE 43,425 mg/kg, not classified")]
    public void Only_the_ingredient_that_falls_in_a_category_counts()
    {
        var found = Assess(RuleSet.Clp, (Toxic("one", (Route.Oral, 1737)), 4), (Harmless, 96));
        Assert.Equal(43_425m, Math.Round(found.OralAte!.Value));
        Assert.Empty(found.Hazards);
        Assert.Null(found.SignalText);
    }

    [Fact, Cites(References.UnGhsPaper, "annex 2, example 1 (d): oral 873 mg/kg category 4; vapour 6.6 mg/L category 3; Danger; 11 % unknown")]
    public void Two_routes_and_a_share_of_unknown_vapour_toxicity()
    {
        var third = new Substance("three", "three", "test") { UnknownToxicity = [Route.Dermal, Route.Vapor] };
        var found = Assess(
            RuleSet.Osha,
            (Toxic("one", (Route.Oral, 2737), (Route.Vapor, 11)), 26),
            (Toxic("two", (Route.Oral, 4500), (Route.Vapor, 19)), 23),
            (third, 11),
            (Toxic("four", (Route.Oral, 400), (Route.Vapor, 4)), 40));
        Assert.Equal(873m, Math.Round(found.OralAte!.Value));
        Assert.Equal(6.6m, Math.Round(found.VaporAte!.Value, 1));
        Assert.Null(found.DermalAte);
        Assert.Equal(["H302", "H331"], found.Statements);
        Assert.Equal("Danger", found.SignalText);
        Assert.Equal(["GHS06"], found.Pictograms);
        Assert.Contains("11 % of the mixture consists of ingredients of unknown acute toxicity by breathing.", found.Doubts);
    }

    [Theory, Cites(References.Clp, "Annex I 3.1.3.6.1 and 3.1.3.6.2.3: the sum over the known share when more than 10 % is unknown")]
    [InlineData(10, 1000)]
    [InlineData(20, 800)]
    public void Up_to_ten_percent_unknown_does_not_change_the_sum(int unknown, int expected)
    {
        var found = Assess(RuleSet.Clp, (Toxic("one", (Route.Oral, 500)), 50), (Harmless, 50 - unknown), (Ours.Substances.Named("unknown").Require(), unknown));
        Assert.Equal(expected, found.OralAte);
    }

    [Theory, Cites(References.Clp, "Annex I 3.1.3.3 (a) and table 1.1: categories 1 to 3 count from 0.1 %, category 4 from 1 %")]
    [InlineData("0.5", "0.099", null)]
    [InlineData("0.5", "0.1", "500")]
    [InlineData("500", "0.99", null)]
    [InlineData("500", "1", "50000")]
    public void The_more_poisonous_the_smaller_the_share_that_counts(string ate, string percent, string? estimate)
    {
        var share = decimal.Parse(percent, System.Globalization.CultureInfo.InvariantCulture);
        var toxic = Toxic("one", (Route.Oral, decimal.Parse(ate, System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal(estimate, Assess(RuleSet.Clp, (toxic, share), (Harmless, 100 - share)).OralAte?.ToString("0.###", System.Globalization.CultureInfo.InvariantCulture));
    }

    [Theory, Cites(References.Clp, "Annex I table 3.1.1: each upper end belongs to its category")]
    [InlineData(Route.Oral, "5", "H300")]
    [InlineData(Route.Oral, "5.0000001", "H300")]
    [InlineData(Route.Oral, "50", "H300")]
    [InlineData(Route.Oral, "50.0000001", "H301")]
    [InlineData(Route.Oral, "300", "H301")]
    [InlineData(Route.Oral, "300.0000001", "H302")]
    [InlineData(Route.Oral, "2000", "H302")]
    [InlineData(Route.Oral, "2000.0000001", "")]
    [InlineData(Route.Dermal, "200", "H310")]
    [InlineData(Route.Dermal, "1000", "H311")]
    [InlineData(Route.Dermal, "2000", "H312")]
    [InlineData(Route.Vapor, "2", "H330")]
    [InlineData(Route.Vapor, "10", "H331")]
    [InlineData(Route.Vapor, "20", "H332")]
    [InlineData(Route.Vapor, "20.0000001", "")]
    public void Limits_of_the_categories(Route route, string ate, string statement)
    {
        var value = decimal.Parse(ate, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(statement, string.Join(' ', Assess(RuleSet.Clp, (Toxic("one", (route, value)), 100)).Statements));
    }
}
