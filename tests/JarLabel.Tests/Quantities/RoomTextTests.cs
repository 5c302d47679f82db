namespace JarLabel.Tests.Quantities;

public class RoomTextTests
{
    [Theory]
    [InlineData("50 m3", 50)]
    [InlineData("1 m³", 1)]
    [InlineData("1800 cu ft", 50.970324)] // a foot is 0.3048 m
    [InlineData("1000 L", 1)]
    [InlineData("20 x 15 x 9 ft", 76.455485798)] // 2700 cubic feet
    [InlineData("6 m × 5 m × 250 cm", 75)]
    [InlineData("6 by 5 by 2,5 m", 75)]
    public void A_room_is_read_in_any_measure_of_volume(string written, double cubicMeters) =>
        Assert.Equal(cubicMeters, RoomText.Read(written, "room").Require().CubicMeters, 1e-6);

    [Theory]
    [InlineData("", "JL105")]
    [InlineData("0", "JL102")]
    [InlineData("0 m3", "JL105")]
    [InlineData("0.9 m3", "JL105")]
    [InlineData("1 fl oz", "JL105")]
    [InlineData("1000001 m3", "JL105")]
    [InlineData("50 foo", "JL102")]
    [InlineData("large", "JL101")]
    [InlineData("4 oz", "JL103")]
    [InlineData("20 x 15 ft", "JL476")]
    [InlineData("1 x 1 x 0.5 m", "JL105")]
    public void What_is_no_room_is_told_with_rooms_and_not_with_jars(string written, string code)
    {
        var problem = Assert.Single(RoomText.Read(written, "room").Problems);
        Assert.Equal(code, problem.Code);
        Assert.Contains("\"50 m3\", \"1800 cu ft\"", problem.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("mL", problem.Message, StringComparison.Ordinal);
    }
}
