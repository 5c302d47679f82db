namespace JarLabel.Tests.Quantities;

public class VolumeTextTests
{
    [Theory, Cites(References.NistHandbook44, "appendix C: one US gallon is 231 cubic inches, 3.785411784 L; one imperial gallon 4.54609 L")]
    [InlineData("1 gal", 3785.411784)]
    [InlineData("½ gal", 1892.705892)]
    [InlineData("5 gals", 18927.05892)]
    [InlineData("2 pts", 946.352946)]
    [InlineData("473.176 mL", 473.176)]
    [InlineData("1 qt", 946.352946)]
    [InlineData("1/2 qt", 473.176473)]
    [InlineData("1 pt", 473.176473)]
    [InlineData("1 US pt", 473.176473)]
    [InlineData("1 1/2 pt", 709.7647095)]
    [InlineData("1½ pints", 709.7647095)]
    [InlineData("1-1/2 Pt.", 709.7647095)]
    [InlineData("3⁄4 pt", 354.88235475)]
    [InlineData("1 cup", 236.5882365)]
    [InlineData("half pint", 236.5882365)]
    [InlineData("Half a pint", 236.5882365)]
    [InlineData("a half pint", 236.5882365)]
    [InlineData("half of a gallon", 1892.705892)]
    [InlineData("quarter cup", 59.147059125)]
    [InlineData("a quarter of a cup", 59.147059125)]
    [InlineData("two thirds cup", 157.725491)]
    [InlineData("three quarters of a pint", 354.88235475)]
    [InlineData("half an imp pt", 284.130625)]
    [InlineData("0.5 mL", 0.5)]
    [InlineData("16 fl oz", 473.176473)]
    [InlineData("16 fl. oz.", 473.176473)]
    [InlineData("16floz", 473.176473)]
    [InlineData("2 tbsp", 29.5735295625)]
    [InlineData("1 imp pt", 568.26125)]
    [InlineData("1 imperial pint", 568.26125)]
    [InlineData("20 imp fl oz", 568.26125)]
    [InlineData("1 qt 1 pt", 1419.529419)]
    [InlineData("473 mL", 473)]
    [InlineData("473ml", 473)]
    [InlineData("0.5 L", 500)]
    [InlineData(".5 l", 500)]
    [InlineData("0,5 L", 500)]
    [InlineData("1,5 l", 1500)]
    [InlineData("0,125 L", 125)]
    [InlineData("  2   litres ", 2000)]
    public void A_volume_is_read_as_people_write_it(string written, double milliliters) =>
        Assert.Equal(milliliters, VolumeText.Read(written, "pour").Require().Milliliters, 1e-6);

    [Theory]
    [InlineData("4 oz", "JL103", "fl oz")]
    [InlineData("1 lb", "JL103", "volume")]
    [InlineData("1,500 mL", "JL104", "1500 mL or 1.5 mL")]
    [InlineData("1,000 ml", "JL104", "1000 ml or 1 ml")]
    [InlineData("1.000 ml", "JL104", "1000 ml or 1 ml")]
    [InlineData("1.250 mL", "JL104", "1250 mL or 1.25 mL")]
    [InlineData("200 mL 300 mL", "JL475", "\"200 mL, 300 mL\"")]
    [InlineData("4 fl oz 1 pt", "JL475", "large to small")]
    [InlineData("3 ft", "JL103", "length")]
    [InlineData(" ", "JL105", "Read nothing")]
    [InlineData("-1 pt", "JL101", "above zero")]
    [InlineData("\u22121 pt", "JL101", "above zero")]
    [InlineData("0", "JL102", "no unit")]
    [InlineData("0 pt", "JL105", "more than zero")]
    [InlineData("12", "JL102", "no unit")]
    [InlineData("1e999", "JL102", "e")]
    [InlineData("1e999 mL", "JL102", "not known")]
    [InlineData("1/0 pt", "JL101", "divisions by zero")]
    [InlineData("0/0 pt", "JL101", "divisions by zero")]
    [InlineData("", "JL105", "350 mL")]
    [InlineData("pt", "JL101", "number")]
    [InlineData("1.2.3 L", "JL101", "number")]
    [InlineData("1 firkin", "JL102", "gal, qt, pt")]
    [InlineData("1 imp cup", "JL102", "not known")]
    [InlineData("2000 L", "JL105", "at most 1000 L")]
    [InlineData("999999999999999999999 mL", "JL101", "number")]
    [InlineData("NaN mL", "JL101", "number")]
    [InlineData("1 pt -", "JL101", "number")]
    public void What_is_no_volume_is_told_with_what_would_be(string written, string code, string says)
    {
        var problem = Assert.Single(VolumeText.Read(written, "pour").Problems);
        Assert.Equal(code, problem.Code);
        Assert.Equal("pour", problem.Where);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_spellings_stand_in_the_message_about_ounces()
    {
        var message = VolumeText.Read("4 oz", "pour").Problems[0].Message;
        Assert.Contains("\"oz\"", message, StringComparison.Ordinal);
        Assert.Contains("\"fl oz\"", message, StringComparison.Ordinal);
    }
}
