namespace JarLabel.Acceptance;

public sealed class CalcTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("thin --from 3 --to 1 --of|1000 mL", "addMilliliters", 1540.95, 0.01)]          // (3/1 - 1) / 1.2979, by hand
    [InlineData("thin --from 3 --to 1 --of|1000 mL", "makesMilliliters", 2540.95, 0.01)]
    [InlineData("thicken --from 1 --to 2 --of|1 gal", "addGrams", 412.620, 0.001)]              // 1 lb / 1.0993
    [InlineData("blend --jar|200 mL@2|--jar|100 mL@1", "cutPoundsPerGallon", 1.6472, 0.0001)]   // (2 x 200/1.1986 + 100/1.0993) / (200/1.1986 + 100/1.0993)
    [InlineData("solids --cut 2 --solvent ethanol-95", "poundsPerGallonOfLiquid", 1.6686, 0.0001)] // 2 lb in 1.1986 gal
    [InlineData("solids --cut 3 --solvent ethanol-95", "solidsByVolume", 0.229525, 1e-6)]        // 0.2979 / 1.2979
    [InlineData("solids --percent 30.65 --solvent ethanol-95", "cutPoundsPerGallon", 2.993, 0.01)]
    [InlineData("density --solvent ethanol --strength 95 --temp|20 C", "kilogramsPerCubicMeter", 811.38, 0.01)]
    [InlineData("purge --changes 6 --to 0.01", "minutes", 46, 0.1)]                             // CDC 2003, table B.1
    [InlineData("purge --changes 12 --to 0.001", "minutes", 35, 0.5)]
    [InlineData("coverage --cut 2 --area|400 sqft|--coats 1 --spread|400 sqft/gal", "liquidMilliliters", 3785.41, 0.01)]
    [InlineData("coverage --cut 2 --area|400 sqft|--coats 1 --spread|400 sqft/gal", "dryMicrometersPerCoat", 16.88, 0.01)] // 1 gal over 400 sq ft is 101.86 µm wet, 0.1986 in 1.1986 of it solid
    public void Sums_agree_with_those_done_by_hand(string typed, string key, double value, double tolerance)
    {
        var words = typed.Split('|').SelectMany((part, i) => i % 2 == 0 ? part.Split(' ') : [part]);
        Assert.Equal(value, shop.Json(["calc", .. words])[key]!.GetValue<double>(), tolerance);
    }

    [Fact]
    public void Hazards_of_a_mixture_are_told_with_the_reason()
    {
        var hazards = shop.Json("calc", "hazards", "--contents", "ethanol=90,methanol=5,water=5")["hazards"]!;
        Assert.Equal("Danger", hazards["signalWord"]!.GetValue<string>());
        Assert.Contains(hazards["hStatements"]!.AsArray(), h => h!.GetValue<string>() == "H225");
        Assert.Equal(2000, hazards["oralAte"]!.GetValue<decimal>()); // 100 / (5/100), CLP Annex I 3.1.3.6.1
        Assert.NotEmpty(hazards["why"]!.AsArray());
    }

    [Theory]
    [InlineData("ethanol=90,methanol=5", "95")]
    [InlineData("ethanol=90,phlogiston=10", "phlogiston")]
    [InlineData("ethanol=-1,water=101", "ethanol=-1")]
    public void Contents_that_are_no_whole_are_told(string contents, string says)
    {
        var run = shop.Run("calc", "hazards", "--contents", contents);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(says, run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_closed_room_reaches_the_health_limit_long_before_fire()
    {
        var air = shop.Json("calc", "air", "--solvent", "ethanol-99", "--evaporate", "1 L", "--room", "50 m3");
        Assert.Equal(0.25, air["fractionOfLel"]!.GetValue<double>(), 0.01); // 1 L of ethanol in 50 m3 is a quarter of the LEL of 3.3 %
        Assert.True(air["peakPpm"]!.GetValue<double>() > 8 * air["limitPpm"]!.GetValue<double>());
        Assert.True(air["healthGoverns"]!.GetValue<bool>());
    }

    [Fact]
    public void A_room_of_no_size_is_refused() =>
        Assert.Equal(2, shop.Run("calc", "air", "--solvent", "ethanol-99", "--evaporate", "1 L", "--room", "0 m3").ExitCode);
}
