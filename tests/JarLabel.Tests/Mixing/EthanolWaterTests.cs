namespace JarLabel.Tests.Mixing;

public class EthanolWaterTests
{
    [Theory, Cites(References.OimlR22, "general formula; OIML table Ia values at 20 °C")]
    [InlineData(1.0, 20, 789.24)]
    [InlineData(0.0, 20, 998.20)]
    public void The_pure_liquids_have_the_densities_of_the_tables(double massFraction, double celsius, double expected) =>
        Assert.Equal(expected, EthanolWater.KilogramsPerCubicMeter(massFraction, celsius), 0.005);

    [Theory, Cites(References.OimlR22, "general formula, computed by hand from the printed coefficients")]
    [InlineData(95, 20, 811.38)]
    [InlineData(95, 15.556, 815.22)]
    public void Alcohol_of_95_percent_by_volume_weighs(double strength, double celsius, double expected) =>
        Assert.Equal(expected, EthanolWater.KilogramsPerCubicMeter(EthanolWater.MassFraction(strength), celsius), 0.01);

    [Fact, Cites(References.Cfr27, "19.1: absolute ethanol, specific gravity 0.7939 at 60/60 °F")]
    public void Absolute_ethanol_has_the_specific_gravity_of_the_regulation()
    {
        const double sixtyFahrenheit = 15.5556;
        var gravity = EthanolWater.KilogramsPerCubicMeter(1, sixtyFahrenheit) / EthanolWater.KilogramsPerCubicMeter(0, sixtyFahrenheit);
        Assert.Equal(0.7939, gravity, 0.0001);
    }

    [Fact, Cites(References.Cfr27, "30.44: 10 gallons of 190 proof weigh 68.00 lb, rounded up to whole ounces")]
    public void Ten_gallons_of_190_proof_weigh_as_in_the_gauging_table()
    {
        var density = EthanolWater.DensityAt(EthanolWater.MassFraction(95), Temperature.FromDegreesFahrenheit(60));
        var trueWeight = (density * Volume.FromUsGallons(10)).Pounds;
        var weightInAir = trueWeight * (1 - (1.2 * ((1 / density.KilogramsPerCubicMeter) - (1 / 8000.0))));
        Assert.Equal(68.00, Math.Ceiling(weightInAir * 16) / 16);
    }

    [Fact, Cites(References.OimlR22, "general formula, differentiated by hand at 95 % vol, 20 °C")]
    public void Alcohol_grows_by_about_a_thousandth_per_kelvin() =>
        Assert.Equal(1.068e-3, EthanolWater.ExpansionPerKelvin(EthanolWater.MassFraction(95), Temperature.FromDegreesCelsius(20)), 1e-6);

    [Theory]
    [InlineData(0)]
    [InlineData(12.5)]
    [InlineData(95)]
    [InlineData(100)]
    public void Strength_comes_back_from_its_mass_fraction(double strength) =>
        Assert.Equal(strength, EthanolWater.PercentByVolume(EthanolWater.MassFraction(strength)), 1e-9);

    [Theory]
    [InlineData(-0.01, 20)]
    [InlineData(1.01, 20)]
    [InlineData(0.9, -20.5)]
    [InlineData(0.9, 40.5)]
    public void Outside_its_range_the_formula_refuses(double massFraction, double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => EthanolWater.KilogramsPerCubicMeter(massFraction, celsius));
}
