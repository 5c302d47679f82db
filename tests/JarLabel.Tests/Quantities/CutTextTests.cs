namespace JarLabel.Tests.Quantities;

public class CutTextTests
{
    [Theory, CommonPractice]
    [InlineData("2", 2)]
    [InlineData("2 lb", 2)]
    [InlineData("2-lb", 2)]
    [InlineData("2-lb cut", 2)]
    [InlineData("2#", 2)]
    [InlineData("1.5lb", 1.5)]
    [InlineData("1,5", 1.5)]
    [InlineData("1½", 1.5)]
    [InlineData("1 1/2 lb", 1.5)]
    [InlineData("1/2", 0.5)]
    [InlineData("4 oz/qt", 1)]
    [InlineData("2 oz/pt", 1)]
    [InlineData("2 oz per pint", 1)]
    [InlineData("6 oz / 1 pt", 3)]
    [InlineData("1 lb in 1/2 gal", 2)]
    public void A_cut_is_read_as_people_write_it(string written, double pounds) =>
        Assert.Equal(pounds, CutText.Read(written, "cut").Require().PoundsPerUsGallon, 1e-12);

    [Fact, Cites(References.NistHandbook44, "appendix C: 453.59237 g and 3.785411784 L make 1 lb/gal = 119.826427 g/L")]
    public void Grams_per_litre_are_a_cut_too() =>
        Assert.Equal(240 / 119.826427, CutText.Read("240 g/L", "cut").Require().PoundsPerUsGallon, 1e-8);

    [Fact, Cites(References.NistHandbook44, "appendix C: 1 lb in an imperial gallon of 4.54609 L is 0.8327 lb in a US gallon")]
    public void An_imperial_gallon_makes_a_weaker_cut() =>
        Assert.Equal(0.8327, CutText.Read("1 lb/imp gal", "cut").Require().PoundsPerUsGallon, 0.00005);

    [Fact, CommonPractice]
    public void Two_pounds_in_three_gallons_is_two_thirds_and_not_one_and_a_half() =>
        Assert.Equal(2.0 / 3, CutText.Read("2 lb in 3 gal", "cut").Require().PoundsPerUsGallon, 1e-12);

    [Theory]
    [InlineData("0", "JL112")]
    [InlineData("13", "JL112")]
    [InlineData("2 lb in 1 tsp", "JL112")]
    [InlineData("-2", "JL111")]
    [InlineData("strong", "JL111")]
    [InlineData("2 kg", "JL111")]
    [InlineData("1e999", "JL111")]
    [InlineData("1/0", "JL111")]
    [InlineData("2 pt/lb", "JL103")]
    [InlineData("2 oz/fl", "JL102")]
    public void What_is_no_cut_is_told(string written, string code)
    {
        var problem = Assert.Single(CutText.Read(written, "cut").Problems);
        Assert.Equal(code, problem.Code);
        Assert.Contains(written, problem.Message, StringComparison.Ordinal);
    }
}
