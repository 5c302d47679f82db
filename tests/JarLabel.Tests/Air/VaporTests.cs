namespace JarLabel.Tests.Air;

public class VaporTests
{
    /// <summary>Cubic metres of vapour from a litre at 20 °C, by hand: density / molar mass x 24.055 L/mol.</summary>
    [Theory, Cites(References.PrudentPractices, "molar masses and densities; ideal gas worked by hand")]
    [InlineData("ethanol", 0.412)]
    [InlineData("propan-2-ol", 0.314)]
    [InlineData("methanol", 0.594)]
    [InlineData("butanone", 0.269)]
    [InlineData("acetone", 0.327)]
    public void A_litre_of_liquid_gives_so_much_vapour(string id, double cubicMeters)
    {
        var substance = Named(id);
        var liter = Density.FromKilogramsPerCubicMeter((double)substance.Density!.Value) * Volume.FromLiters(1);
        Assert.Equal(cubicMeters, Vapor.Of(liter, substance, Temperature.FromDegreesCelsius(20)).CubicMeters, 0.0006);
    }

    [Fact, Cites(References.AcgihVentilation, "403 cubic feet of vapour from a pint at specific gravity 1 and molar mass 1, 70 °F")]
    public void A_pint_gives_the_manuals_403_cubic_feet()
    {
        var unit = new Substance("unit", "unit", "test") { MolarMass = new(1, "test") };
        var pint = Density.FromGramsPerCubicCentimeter(1) * Volume.FromUsQuarts(0.5);
        Assert.Equal(403, Vapor.Of(pint, unit, Temperature.FromDegreesFahrenheit(70)).CubicFeet, 1.0);
    }

    [Theory, Cites(References.NistWebBook, "Antoine parameters of ethanol, methanol and acetone; normal boiling points")]
    [InlineData("ethanol", 20, 5.87, 0.02)]
    [InlineData("methanol", 20, 13.0, 0.05)]
    [InlineData("acetone", 20, 24.6, 0.3)]
    [InlineData("ethanol", 78.3, 101.325, 1)]
    [InlineData("methanol", 64.6, 101.325, 1.2)]
    [InlineData("acetone", 56.08, 101.325, 1)]
    [InlineData("1-butanol", 117.7, 101.325, 1.2)]
    public void Vapour_pressures_are_the_published_ones(string id, double celsius, double kilopascals, double tolerance) =>
        Assert.Equal(kilopascals, Vapor.PressureOver(Named(id), Temperature.FromDegreesCelsius(celsius))!.Value.Kilopascals, tolerance);

    [Theory, Cites(References.Atsdr, "acetone 30.8 kPa at 25 °C")]
    [InlineData("acetone", 25, 30.8, 0.5)]
    public void Vapour_pressures_agree_with_other_books(string id, double celsius, double kilopascals, double tolerance) =>
        Assert.Equal(kilopascals, Vapor.PressureOver(Named(id), Temperature.FromDegreesCelsius(celsius))!.Value.Kilopascals, tolerance);

    [Theory, Cites(References.PrudentPractices, "vapour pressures against the explosive limits")]
    [InlineData("ethanol")]
    [InlineData("propan-2-ol")]
    [InlineData("methanol")]
    public void The_head_space_of_a_half_full_jar_can_burn(string id)
    {
        var percent = Vapor.SaturatedPpm(Named(id), Temperature.FromDegreesCelsius(20))!.Value / 1e4;
        Assert.InRange(percent, (double)Named(id).Lel!.Value, (double)Named(id).Uel!.Value);
    }

    private static Substance Named(string id) => ShopCatalog.Ours.Substances.Named(id).Require();
}
