namespace JarLabel.Tests.Quantities;

public class MassTextTests
{
    [Theory, Cites(References.NistHandbook44, "appendix C: one avoirdupois pound is 453.59237 g, 16 ounces")]
    [InlineData("1 lb", 453.59237)]
    [InlineData("1/4 lb", 113.3980925)]
    [InlineData("4 oz", 113.3980925)]
    [InlineData("1 lb 4 oz", 566.9904625)]
    [InlineData("2#", 907.18474)]
    [InlineData("113 g", 113)]
    [InlineData("0,25 kg", 250)]
    public void A_weight_is_read_as_people_write_it(string written, double grams) =>
        Assert.Equal(grams, MassText.Read(written, "flakes").Require().Grams, 1e-9);

    [Theory]
    [InlineData("4 fl oz", "JL103")]
    [InlineData("1 pt", "JL103")]
    [InlineData("4", "JL102")]
    [InlineData("-4 oz", "JL101")]
    public void What_is_no_weight_is_refused(string written, string code) =>
        Assert.Equal(code, Assert.Single(MassText.Read(written, "flakes").Problems).Code);
}
