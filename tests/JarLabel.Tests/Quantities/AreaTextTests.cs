namespace JarLabel.Tests.Quantities;

public class AreaTextTests
{
    [Theory, Cites(References.NistHandbook44, "appendix C: one inch is 2.54 cm, one foot 30.48 cm, one yard 91.44 cm")]
    [InlineData("14 sq ft", 13006.4256)]
    [InlineData("30 x 20 in", 3870.96)] // 76.2 cm by 50.8 cm
    [InlineData("30x20in", 3870.96)]
    [InlineData("30 in x 20", 3870.96)]
    [InlineData("30\" x 20\"", 3870.96)]
    [InlineData("2 1/2 x 3 ft", 6967.728)] // 76.2 cm by 91.44 cm
    [InlineData("1 yd x 3 ft", 8361.2736)]
    [InlineData("2 ft 6 in x 1 yd", 6967.728)]
    [InlineData("1.2 m × 80 cm", 9600)]
    [InlineData("1,2 by 0,8 m", 9600)]
    public void An_area_is_read_as_a_size_or_by_its_sides(string written, double squareCentimeters) =>
        Assert.Equal(squareCentimeters, AreaText.Read(written, "area").Require().SquareCentimeters, 1e-6);

    [Theory]
    [InlineData("30 x 20", "JL102", "no unit")]
    [InlineData("30 x 20 x 3 in", "JL476", "length by width")]
    [InlineData("30 x 20 lb", "JL103", "a weight")]
    [InlineData("0 x 20 in", "JL105", "more than zero")]
    [InlineData("900 x 900 m", "JL105", "10000 m2")]
    [InlineData("30 in", "JL103", "a length")]
    public void What_is_no_area_is_told_with_what_would_be(string written, string code, string says)
    {
        var problem = Assert.Single(AreaText.Read(written, "area").Problems.DistinctBy(one => one.Code));
        Assert.Equal(code, problem.Code);
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }
}
