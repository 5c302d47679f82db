namespace JarLabel.Tests.Air;

public class RoomAirTests
{
    [Theory, Cites(References.CdcTable, "minutes to remove 99 % and 99.9 %, table B.1 of 2003")]
    [InlineData(2, 138, 207)]
    [InlineData(4, 69, 104)]
    [InlineData(6, 46, 69)]
    [InlineData(8, 35, 52)]
    [InlineData(10, 28, 41)]
    [InlineData(12, 23, 35)]
    [InlineData(15, 18, 28)]
    [InlineData(20, 14, 21)]
    [InlineData(50, 6, 8)]
    public void Airing_takes_as_long_as_the_table_says(double changes, double minutesTo1Percent, double minutesToTenthPercent)
    {
        Assert.Equal(minutesTo1Percent, Purge.Until(changes, 0.01, 1).Require().Time.Minutes, 0.5);
        Assert.Equal(minutesToTenthPercent, Purge.Until(changes, 0.001, 1).Require().Time.Minutes, 0.5);
    }

    [Theory, Cites(References.CdcTable, "MMWR 1994, table S3-1: minutes to remove 90 %")]
    [InlineData(1, 138)]
    [InlineData(5, 28)]
    [InlineData(25, 6)]
    public void A_tenth_is_left_after_the_tables_minutes(double changes, double minutes)
    {
        Assert.Equal(minutes, Purge.Until(changes, 0.1, 1).Require().Time.Minutes, 0.5);
        Assert.InRange(Purge.After(changes, Duration.FromMinutes(minutes), 1).Require().FractionLeft, 0.08, 0.12);
    }

    [Fact, Cites(References.CdcTable, "MMWR 1994: multiply by the mixing factor, up to 10 where air is badly distributed")]
    public void Bad_mixing_multiplies_the_time() =>
        Assert.Equal(460, Purge.Until(6, 0.01, mixingFactor: 10).Require().Time.Minutes, 1.0);

    [Fact, Cites(References.AcgihVentilation, "dilution, build-up: G 1.2 cfm, Q' 2000 cfm, V 100 000 cubic feet, 200 ppm after 20.3 minutes")]
    public void Vapour_gathers_as_in_the_manuals_example()
    {
        var room = Volume.FromCubicFeet(100_000);
        var changes = VolumeFlow.FromCubicFeetPerMinute(2000).CubicMetersPerHour / room.CubicMeters;
        var ppm = 1e6 * RoomAir.FractionAfter(VolumeFlow.FromCubicFeetPerMinute(1.2), room, changes, Duration.FromMinutes(20.3));
        Assert.Equal(200, ppm, 0.5);
    }

    [Fact, Cites(References.EngineeringToolBox, "concentration in a ventilated room: q 1, V 1, n 1 an hour, 0.2835 after 20 minutes")]
    public void Vapour_gathers_as_in_the_engineers_table() =>
        Assert.Equal(0.2835, RoomAir.FractionAfter(VolumeFlow.FromCubicMetersPerHour(1), Volume.FromCubicMeters(1), 1, Duration.FromMinutes(20)), 0.0001);

    [Fact]
    public void With_no_fresh_air_it_only_adds_up() =>
        Assert.Equal(0.5, RoomAir.FractionAfter(VolumeFlow.FromCubicMetersPerHour(2), Volume.FromCubicMeters(8), 0, Duration.FromHours(2)), 1e-12);

    [Theory, Cites(References.AcgihVentilation, "methyl chloroform, 1.5 pints in 60 minutes, SG 1.32, MW 133.4, 350 ppm, K 5: 285 and 1425 cfm")]
    [InlineData(1, 285)]
    [InlineData(5, 1425)]
    public void Dilution_air_for_breathing_as_in_the_manual(double mixing, double cubicFeetPerMinute)
    {
        var air = RoomAir.AirFor(VaporPerHour(pints: 1.5, gravity: 1.32, gramsPerMole: 133.4m), 350, mixing);
        Assert.Equal(cubicFeetPerMinute, air.CubicFeetPerMinute, cubicFeetPerMinute * 0.006);
    }

    [Fact, Cites(References.AcgihVentilation, "xylol, 2 pints in 60 minutes, SG 0.88, MW 106, LEL 1.0, Sf 10, B 0.7: 159 cfm")]
    public void Dilution_air_against_fire_as_in_the_manual()
    {
        const double tenthOfLelPpm = 1000, hotAirBurnsSooner = 0.7;
        var air = RoomAir.AirFor(VaporPerHour(pints: 2, gravity: 0.88, gramsPerMole: 106m), tenthOfLelPpm, 1) / hotAirBurnsSooner;
        Assert.Equal(159, air.CubicFeetPerMinute, 1.0);
    }

    [Fact, Cites(References.Osha1000, "(d)(1)(ii): 2 h at 150, 2 h at 75, 4 h at 50 ppm")]
    public void Average_of_a_shift() => Assert.Equal(81.25, MixedVapors.EightHourAverage([(2, 150), (2, 75), (4, 50)]));

    [Fact, Cites(References.Osha1000, "(d)(2)(ii): 500/1000 + 45/200 + 40/200")]
    public void Sum_over_the_limits() => Assert.Equal(0.925, MixedVapors.SumOverLimits([(500, 1000), (45, 200), (40, 200)]), 12);

    [Fact, Cites(References.MixtureExposure, "methanol 150 of 200 ppm with ethyl acetate 300 of 400 ppm is 1.5")]
    public void Two_vapours_each_below_its_limit_can_be_too_much_together() =>
        Assert.Equal(1.5, MixedVapors.SumOverLimits([(150, 200), (300, 400)]));

    /// <summary>By hand: 1 / (0.5/3.3 + 0.5/6.0) = 4.258; a vapour by itself keeps its limit.</summary>
    [Fact, Cites(References.LeChatelier, "1 / sum of fraction over limit")]
    public void Mixed_vapours_burn_from_a_limit_between_their_own()
    {
        Assert.Equal(4.258, MixedVapors.LowerExplosiveLimit([(0.5, 3.3), (0.5, 6.0)]), 0.001);
        Assert.Equal(3.3, MixedVapors.LowerExplosiveLimit([(1, 3.3)]), 1e-12);
    }

    [Theory]
    [InlineData(0, 0.01, 1, "JL164")]
    [InlineData(6, 0, 1, "JL166")]
    [InlineData(6, 1, 1, "JL166")]
    [InlineData(6, 0.01, 0.5, "JL165")]
    [InlineData(double.NaN, 0.01, 1, "JL164")]
    public void Airing_that_makes_no_sense_is_refused(double changes, double fraction, double mixing, string code) =>
        Assert.Equal(code, Assert.Single(Purge.Until(changes, fraction, mixing).Problems).Code);

    private static VolumeFlow VaporPerHour(double pints, double gravity, decimal gramsPerMole)
    {
        var liquid = new Substance("liquid", "liquid", "test") { MolarMass = new(gramsPerMole, "test") };
        var mass = Density.FromGramsPerCubicCentimeter(gravity) * Volume.FromUsQuarts(pints / 2);
        return Vapor.Of(mass, liquid, Temperature.FromDegreesFahrenheit(70)) / Duration.FromHours(1);
    }
}
