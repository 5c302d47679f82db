namespace JarLabel.Tests.Air;

/// <summary>Denatured alcohol, the main case: two liquids that evaporate at once, in a room that is not always at 20 °C.</summary>
public class TwoVolatilesTests
{
    /// <summary>Half methanol, half ethanol by weight, one litre, in 50 m³. By hand at each temperature: the density is that of half at 791.4 / (1 + 0.00119 (t - 20)) and half at the
    /// table's 797.7, 789.24 or 780.7 kg/m³; moles by 32.04 and 46.07; a mole is R T / 101325 Pa: 0.023235, 0.024055 and 0.024876 m³.
    /// At 20 °C: 790.32 g, 12.333 and 8.577 mol, 0.29668 and 0.20633 m³, 5934 and 4127 ppm. Over the lower limits 0.0989 + 0.1250; over 200 and 1000 ppm 29.67 + 4.13;
    /// in an hour 1483.4 + 206.3 m³ of air for breathing, 19.78 + 25.01 against fire.</summary>
    [Theory, Cites(References.OimlR22, "ethanol at 10, 20 and 30 °C"), Cites(References.SolventsHandbook, "methanol: growth of 0.00119")]
    [Cites(References.NioshPocketGuide, "ethyl alcohol: LEL 3.3 %, REL 1000 ppm"), Cites(References.PrudentPractices, "methanol: PEL 200 ppm, LEL 6.0 %")]
    [Cites(References.Osha1000, "(d)(2): sum of Ci over Li"), Cites(References.LeChatelier, "sum of yi over LELi"), Cites(References.AcgihVentilation, "Q = K G / C")]
    [InlineData(10, 5796, 4031, 0.2188, 33.01, 1650.7, 43.75)]
    [InlineData(20, 5934, 4127, 0.2239, 33.79, 1689.7, 44.79)]
    [InlineData(30, 6067, 4219, 0.2290, 34.55, 1727.6, 45.79)]
    public void A_litre_of_two_alcohols(double celsius, double methanol, double ethanol, double ofLel, double ofLimit, double forLimit, double forFire)
    {
        var air = Half(1, 50, celsius);
        Assert.Equal(["methanol", "ethanol"], air.Parts.Select(p => p.Substance.Id));
        Assert.Equal(methanol, air.Parts[0].PeakPpm, 4.0);
        Assert.Equal(ethanol, air.Parts[1].PeakPpm, 4.0);
        Assert.Equal(ofLel, air.FractionOfLel, 0.0002);
        Assert.Equal(ofLimit, air.FractionOfLimit, 0.03);
        Assert.Equal(forLimit, air.AirForLimit!.Value.CubicMetersPerHour, 1.0);
        Assert.Equal(forFire, air.AirForQuarterLel.CubicMetersPerHour, 0.05);
        Assert.False(air.Saturated);
    }

    /// <summary>Of that vapour 0.5898 is methanol, 0.4102 ethanol: 1 / (0.5898/6 + 0.4102/3.3) is 4.49 %, 1 / (0.5898/36 + 0.4102/19) 26.3 %.</summary>
    [Fact, Cites(References.LeChatelier, "the same rule for both limits"), Cites(References.Nfpa497, "ethanol 3.3 to 19 %, methanol 6 to 36 %")]
    public void Mixed_vapours_burn_between_the_limits_of_both()
    {
        var air = Half(1, 50, 20);
        Assert.Equal(4.492, air.LowerExplosivePercent, 0.003);
        Assert.Equal(26.33, air.UpperExplosivePercent, 0.02);
    }

    [Fact, Cites(References.Nfpa497, "methanol 6 to 36 %")]
    public void A_vapour_of_unknown_upper_limit_is_taken_to_burn_at_any_richness()
    {
        var unknown = Named("methanol") with { Id = "other", Uel = null };
        Assert.Equal(100, Assess(Composition.FromWeights([(unknown, 1)]), 1, 50, 20).UpperExplosivePercent, 1e-9);
        Assert.Equal(36, Assess(Composition.FromWeights([(Named("methanol"), 1)]), 1, 50, 20).UpperExplosivePercent, 1e-9);
    }

    /// <summary>Thirty litres in 10 m³ are more than air holds: at 10 °C 3.13 kPa of ethanol and 7.41 of methanol, at 30 °C 10.47 and 21.87, of 101.325.</summary>
    [Theory, Cites(References.Poling, "Antoine parameters of ethanol and methanol, other than the catalog's")]
    [InlineData(10, 30_900, 73_100)]
    [InlineData(30, 103_300, 215_800)]
    public void Air_holds_of_each_what_its_own_vapour_pressure_gives(double celsius, double ethanol, double methanol)
    {
        var air = Half(30, 10, celsius);
        Assert.True(air.Saturated);
        Assert.Equal(methanol, air.Parts.Single(p => p.Substance.Id == "methanol").PeakPpm, methanol * 0.01);
        Assert.Equal(ethanol, air.Parts.Single(p => p.Substance.Id == "ethanol").PeakPpm, ethanol * 0.01);
    }

    /// <summary>Where the catalog has only the pressure at 20 °C and the boiling point, the curve between is Clausius and Clapeyron's.</summary>
    [Theory, Cites(References.Poling, "Antoine parameters")]
    [InlineData("propan-2-ol", 10, 2.277)]
    [InlineData("propan-2-ol", 30, 8.112)]
    [InlineData("butanone", 10, 5.606)]
    [InlineData("butanone", 30, 15.209)]
    public void Vapour_pressures_away_from_20_degrees_are_the_published_ones(string id, double celsius, double kilopascals) =>
        Assert.Equal(kilopascals, Vapor.PressureOver(Named(id), Temperature.FromDegreesCelsius(celsius))!.Value.Kilopascals, kilopascals * 0.03);

    private static AirAssessment Half(double liters, double room, double celsius) =>
        Assess(Composition.FromWeights([(Named("methanol"), 1), (Named("ethanol"), 1)]), liters, room, celsius);

    private static AirAssessment Assess(Composition liquid, double liters, double room, double celsius) => RoomAirAssessor.Assess(
        liquid,
        AirQuestion.Of(Volume.FromLiters(liters), Volume.FromCubicMeters(room), mixingFactor: 1, temperature: Temperature.FromDegreesCelsius(celsius)).Require(),
        RuleSet.Osha)!;

    private static Substance Named(string id) => ShopCatalog.Ours.Substances.Named(id).Require();
}
