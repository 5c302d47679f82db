namespace JarLabel.Tests.Quantities;

public class TemperatureTextTests
{
    [Theory]
    [InlineData("68F", 20)]
    [InlineData("68 °F", 20)]
    [InlineData("20 C", 20)]
    [InlineData("20°c", 20)]
    [InlineData("-5 C", -5)]
    [InlineData("23 F", -5)]
    public void A_temperature_is_read_with_its_scale(string written, double celsius) =>
        Assert.Equal(celsius, TemperatureText.Read(written, "temp").Require().DegreesCelsius, 1e-9);

    [Theory]
    [InlineData("20", "JL121")]
    [InlineData("20 K", "JL121")]
    [InlineData("warm", "JL121")]
    [InlineData("120F", "JL122")]
    [InlineData("-21 C", "JL122")]
    public void What_is_no_bench_temperature_is_told(string written, string code) =>
        Assert.Equal(code, Assert.Single(TemperatureText.Read(written, "temp").Problems).Code);
}
