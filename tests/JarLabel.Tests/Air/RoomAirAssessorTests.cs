namespace JarLabel.Tests.Air;

public class RoomAirAssessorTests
{
    private static readonly ShopCatalog Ours = ShopCatalog.Ours;

    /// <summary>By hand: a litre of ethanol is 0.412 m³ of vapour; in 50 m³ 0.825 %, a quarter of 3.3 %.</summary>
    [Theory, Cites(References.NioshPocketGuide, "ethyl alcohol: LEL 3.3 %, REL 1000 ppm")]
    [InlineData(1.00, 8246, 0.2499, false)]
    [InlineData(0.121, 998, 0.0302, true)]
    public void Ethanol_in_fifty_cubic_metres_of_still_air(double liters, double ppm, double fractionOfLel, bool clear)
    {
        var answer = Pure("ethanol", Question(liters, room: 50));
        Assert.Equal(ppm, answer.PeakPpm, 5.0);
        Assert.Equal(fractionOfLel, answer.FractionOfLel, 0.0005);
        Assert.Equal(ppm / 1000, answer.FractionOfLimit, 0.005);
        Assert.Equal(1000, answer.LimitPpm);
        Assert.Equal(clear ? Duration.Zero : null, answer.ClearAfter);
    }

    /// <summary>By hand: 0.4123 m³/h over 1000 ppm is 412 m³/h; over a quarter of 3.3 %, 50 m³/h.</summary>
    [Fact, Cites(References.AcgihVentilation, "Q = K G / C")]
    public void A_litre_an_hour_needs_far_more_air_for_breathing_than_against_fire()
    {
        var answer = Pure("ethanol", Question(1, room: 50, hours: 1));
        Assert.Equal(412.3, answer.AirForLimit!.Value.CubicMetersPerHour, 0.5);
        Assert.Equal(49.98, answer.AirForQuarterLel.CubicMetersPerHour, 0.1);
        Assert.True(answer.HealthGoverns);
    }

    [Fact, Cites(References.AcgihVentilation, "the mixing factor multiplies the air")]
    public void Bad_mixing_multiplies_the_air() =>
        Assert.Equal(5 * 412.3, Pure("ethanol", Question(1, room: 50, hours: 1, mixing: 5)).AirForLimit!.Value.CubicMetersPerHour, 2.5);

    /// <summary>By hand: G/(nV) (1 - e^-n) with G 0.4123 m³/h, n 6, V 50 m³ is 1371 ppm; to 1000 ppm another ln(1.371)/6 h, 3.2 min.</summary>
    [Fact, Cites(References.AcgihVentilation, "build-up and purge")]
    public void Fresh_air_keeps_the_peak_down_and_clears_the_room()
    {
        var answer = Pure("ethanol", Question(1, room: 50, hours: 1, changes: 6));
        Assert.Equal(1371, answer.PeakPpm, 2.0);
        Assert.Equal(3.15, answer.ClearAfter!.Value.Minutes, 0.03);
    }

    /// <summary>By hand for half methanol, half ethanol by weight: 78.95 moles in 3 kg ... the vapours stand as 1/32.04 to 1/46.07, so the
    /// limit is 1 / (0.5898/200 + 0.4102/1000) = 297.7 ppm.</summary>
    [Fact, Cites(References.Osha1000, "(d)(2): like effects add up")]
    public void Mixed_vapours_have_a_limit_between_their_own()
    {
        var half = Composition.FromWeights([(Named("methanol"), 1), (Named("ethanol"), 1)]);
        Assert.Equal(297.7, RoomAirAssessor.Assess(half, Question(1, room: 50), RuleSet.Osha)!.LimitPpm!.Value, 0.3);
    }

    [Theory, Cites(References.NioshPocketGuide, "RELs: the lowest listed limit governs; lower than the ceiling of 50 ppm for 1-butanol is its TLV of 20, than 400 of isopropyl alcohol its TLV of 200 (memory)")]
    [Cites(References.NioshIdlh, "methyl alcohol: REL 200 ppm")]
    [Cites(References.PrudentPractices, "methyl ethyl ketone: PEL 200 ppm")]
    [InlineData("ethanol", 1000)]
    [InlineData("propan-2-ol", 200)]
    [InlineData("methanol", 200)]
    [InlineData("butanone", 200)]
    [InlineData("acetone", 250)]
    [InlineData("1-butanol", 20)]
    public void American_limits(string id, int ppm) => Assert.Equal(ppm, GoverningLimit.Of(Named(id), RuleSet.Osha)!.Ppm);

    /// <summary>A limit that lasts minutes governs where there is no other; what kills at once never does.</summary>
    [Theory, CommonPractice]
    [InlineData("400 shift, 200 shift everywhere, 100 shift clp", 200)]
    [InlineData("400 shift, 300 ceiling, 250 shortTerm", 250)]
    [InlineData("400 shortTerm, 50 idlh", 400)]
    [InlineData("100 shift clp, 90 idlh", 100)]
    public void The_lowest_of_the_limits_that_are_listed_governs(string listed, int ppm)
    {
        var substance = Named("ethanol") with { ExposureLimits = [.. listed.Split(", ").Select(Limit)] };
        Assert.Equal(ppm, GoverningLimit.Of(substance, RuleSet.Osha)!.Ppm);

        static ExposureLimit Limit(string said)
        {
            var words = said.Split(' ');
            return new(said, Enum.Parse<ExposureKind>(words[1], ignoreCase: true), decimal.Parse(words[0], System.Globalization.CultureInfo.InvariantCulture),
                words.Length < 3 ? RuleSet.Osha : words[2] == "clp" ? RuleSet.Clp : null, false, "test");
        }
    }

    [Fact]
    public void The_limits_that_govern_are_named() => Assert.Equal(
        ["methanol: OSHA PEL, 200 ppm", "ethanol: OSHA PEL, 1000 ppm"],
        JarLabel.Core.Labels.AirWords.Limits(RoomAirAssessor.Assess(
            Composition.FromWeights([(Named("methanol"), 1), (Named("ethanol"), 1)]), Question(1, room: 50), RuleSet.Osha)!));

    [Fact]
    public void An_unverified_limit_is_said_to_be_one()
    {
        var remembered = Named("ethanol") with { ExposureLimits = [new("a limit", ExposureKind.Shift, 5, null, false, "memory")] };
        var answer = RoomAirAssessor.Assess(Composition.FromWeights([(remembered, 1)]), Question(1, 50), RuleSet.Clp)!;
        Assert.True(answer.LimitUnverified);
        Assert.Contains(answer.Doubts, d => d.Contains("was not looked up", StringComparison.Ordinal));
    }

    [Fact]
    public void An_unknown_alcohol_is_reckoned_as_its_worst()
    {
        var answer = RoomAirAssessor.Assess(Ours.Solvents.Named("denatured-unknown").Require(), Question(1, 50), RuleSet.Osha).Require();
        Assert.Equal("methanol", answer.Parts[0].Substance.Id);
        Assert.Contains("The composition is not known: breathing and fire are each answered for the worst it may be.", answer.Doubts);
    }

    /// <summary>By hand: methanol is the worst to breathe, but ethanol burns from 3.3 % and methanol only from 6. Of 1.1 L of the 92.5 % by
    /// weight, 892 g, 825 g are ethanol: 0.431 m³ of vapour, 0.862 % of 50 m³, 26.1 % of the limit; in an hour 52.2 m³ keep a quarter of it.</summary>
    [Fact, Cites(References.NioshPocketGuide, "ethyl alcohol: LEL 3.3 %")]
    [Cites(References.PrudentPractices, "methanol: LEL 6.0 %")]
    public void An_unknown_alcohol_burns_as_its_worst_too()
    {
        var answer = RoomAirAssessor.Assess(Ours.Solvents.Named("denatured-unknown").Require(), Question(1.1, 50), RuleSet.Osha).Require();
        Assert.Equal(0.261, answer.FractionOfLel, 0.001);
        Assert.Equal(52.2, answer.AirForQuarterLel.CubicMetersPerHour, 0.2);
    }

    /// <summary>By hand, a litre of 80 % methanol, 17 % ethanol and 3 % of the ketone, 791.3 g, in 50 m³: methanol 19.76 mol, 9506 ppm, 47.5 times its 200; ethanol 2.92 mol, 1405 ppm, 1.4 times
    /// its 1000; the ketone 0.237 mol, 114 ppm, 5.7 times its 20.</summary>
    [Fact, Cites(References.NioshIdlh, "methyl alcohol: REL 200 ppm"), Cites(References.Ontario, "methyl isobutyl ketone, 20 ppm")]
    public void An_unknown_alcohol_is_breathed_as_the_worst_that_was_reported()
    {
        var answer = RoomAirAssessor.Assess(Ours.Solvents.Named("denatured-unknown").Require(), Question(1, 50), RuleSet.Osha).Require();
        Assert.Equal(54.6, answer.FractionOfLimit, 0.3);
        Assert.Equal(9506, answer.Parts[0].PeakPpm, 10.0);
    }

    /// <summary>Formula 1 with methyl n-butyl ketone, by hand: of a litre, 810.5 g, 0.953 % are 0.0771 mol and 37.1 ppm of 50 m³, 37.1 times the 1 ppm; ethanol, 7457 ppm, and methanol, 453, are 9.7 more.</summary>
    [Fact, Cites(References.NioshPocketGuide, "2-hexanone: REL 1 ppm; ethyl alcohol: REL 1000 ppm"), Cites(References.Cfr27, "21.32: or 1 gallon of methyl n-butyl ketone")]
    public void Formula_1_is_breathed_as_its_worst_alternative()
    {
        var answer = RoomAirAssessor.Assess(Ours.Solvents.Named("denatured-sda1").Require(), Question(1, 50), RuleSet.Osha).Require();
        Assert.Equal(37.1, answer.Parts.Single(p => p.Substance.Id == "methyl-n-butyl-ketone").PeakPpm, 0.2);
        Assert.Equal(46.8, answer.FractionOfLimit, 0.3);
    }

    /// <summary>By hand, a litre in 50 m³: methanol 24.70 mol, 1.188 %, 59 times its 200 ppm but 0.198 of 6 %; isopropanol 13.07 mol, 0.629 %, 31 times
    /// its 200 ppm but 0.314 of 2 %.</summary>
    [Fact, Cites(References.NioshPocketGuide, "isopropyl alcohol: LEL 2.0 %, REL 400 ppm")]
    public void Of_two_liquids_breathing_and_fire_are_each_answered_by_the_worse()
    {
        var worst = RoomAirAssessor.Worst([Pure("propan-2-ol", Question(1, 50)), Pure("methanol", Question(1, 50))])!;
        Assert.Equal("methanol", worst.Parts[0].Substance.Id);
        Assert.Equal(59.4, worst.FractionOfLimit, 0.2);
        Assert.Equal(0.314, worst.FractionOfLel, 0.002);
    }

    [Theory]
    [Cites(References.GisChem, "methanol: AGW 100 ppm, 130 mg/m³")]
    [Cites(References.SupplierSheet, "isopropyl alcohol: German limit 200 ppm, 500 mg/m³; the other rows from memory")]
    [InlineData("methanol", 100)]
    [InlineData("propan-2-ol", 200)]
    [InlineData("ethanol", 200)]
    [InlineData("butanone", 200)]
    [InlineData("acetone", 250)]
    public void European_limits(string id, int ppm) => Assert.Equal(ppm, GoverningLimit.Of(Named(id), RuleSet.Clp)!.Ppm);

    [Fact, Cites(References.NistWebBook, "ethanol 5.87 kPa at 20 °C: air holds at most 5.79 %")]
    public void Air_holds_no_more_than_saturated_vapour()
    {
        var answer = Pure("ethanol", Question(20, room: 10));
        Assert.True(answer.Saturated);
        Assert.Equal(57_930, answer.PeakPpm, 200.0);
    }

    /// <summary>3.3 % by volume are 33 000 ppm; a quarter of it, which fire rules work with, 8250.</summary>
    [Theory, Cites(References.NioshPocketGuide, "ethyl alcohol: LEL 3.3 %")]
    [InlineData(0.9, "long before fire")]
    [InlineData(1.0, "Too near to fire: 25 %")]
    [InlineData(3.9, "Too near to fire: 97")]
    [InlineData(4.1, "THE AIR CAN BURN")]
    public void Air_that_can_burn_or_nearly_is_told_and_health_is_no_all_clear(double liters, string says)
    {
        var answer = Pure("ethanol", Question(liters, room: 50));
        Assert.Equal(answer.PeakPpm >= 33_000, answer.CanBurn);
        Assert.Equal(answer.PeakPpm >= 8250 - 17, answer.PassesWorkingLel); // 24.95 % is told as 25.0 %
        string[] told = [.. AirCautions.Of(answer).Where(caution => caution.Code == "JL160").Select(caution => caution.Message), AirWords.Governs(answer)];
        Assert.Contains(says, told[0], StringComparison.Ordinal);
        Assert.Equal(!answer.PassesWorkingLel, told[^1].Contains("long before fire", StringComparison.Ordinal));
    }

    /// <summary>The limit of ethanol is 1000 ppm: 0.121 L in 50 m³ stay just under it.</summary>
    [Theory, Cites(References.NioshPocketGuide, "ethyl alcohol: REL 1000 ppm")]
    [InlineData(0.121, 0, null)]
    [InlineData(0.15, 0, "TOO MUCH TO BREATHE: 1.2 times the exposure limit of 1000 ppm, the room closed. Let in more fresh air")]
    [InlineData(0.9, 1, "TOO MUCH TO BREATHE: 4.7 times the exposure limit of 1000 ppm. Let in more fresh air")]
    public void Air_over_the_exposure_limit_is_told_with_what_to_do(double liters, double changes, string? says)
    {
        var told = AirCautions.Of(Pure("ethanol", Question(liters, room: 50, hours: 1, changes))).Where(caution => caution.Code == "JL237").Select(caution => caution.Message).ToList();
        Assert.Equal(says is null ? 0 : 1, told.Count);
        Assert.All(told, words => Assert.StartsWith(says!, words, StringComparison.Ordinal));
        Assert.All(told, words => Assert.All(["out of doors", "section 8 of the safety data sheet", "dust mask"], part => Assert.Contains(part, words, StringComparison.Ordinal)));
    }

    [Fact, CommonPractice]
    public void Against_methanol_no_cartridge_is_advised()
    {
        Assert.Contains("a cartridge mask does not hold methanol", AirWords.Breathing(Pure("methanol", Question(1, 50))), StringComparison.Ordinal);
        Assert.DoesNotContain("cartridge", AirWords.Breathing(Pure("ethanol", Question(1, 50))), StringComparison.Ordinal);
    }

    [Fact, Cites(References.AcgihVentilation, "the mixing factor multiplies the air and the time; 3 is a usual choice")]
    public void The_usual_factor_multiplies_the_air_and_the_time()
    {
        Assert.Equal(3, AirQuestion.UsualMixingFactor);
        Assert.Equal(3 * 412.3, Pure("ethanol", Question(1, room: 50, hours: 1, mixing: AirQuestion.UsualMixingFactor)).AirForLimit!.Value.CubicMetersPerHour, 1.5);
        Assert.Equal(138.2, Purge.Until(6, 0.01, AirQuestion.UsualMixingFactor).Require().Time.Minutes, 0.1); // three times the 46 of CDC's table B.1
    }

    [Fact]
    public void All_that_is_wrong_with_a_question_is_told_at_once() => Assert.Equal(
        ["JL161", "JL162", "JL163", "JL164", "JL165"],
        AirQuestion.Of(Volume.Zero, Volume.Zero, Duration.Zero, -1, 11).Problems.Select(p => p.Code));

    [Fact]
    public void A_liquid_that_gives_no_vapour_is_refused()
    {
        var water = new Solvent("tap", "tap", "tap", [], new(() => [Composition.FromWeights([(Named("water"), 1)])]), null, "practice");
        Assert.Equal("JL167", Assert.Single(RoomAirAssessor.Assess(water, Question(1, 50), RuleSet.Osha).Problems).Code);
    }

    [Fact]
    public void The_curve_rises_to_the_peak_and_falls_to_the_limit_when_the_room_is_clear()
    {
        var answer = Pure("ethanol", Question(1, room: 50, hours: 1, changes: 6));
        var curve = AirCurve.Of(answer, Duration.FromHours(2), 120);
        Assert.Equal(121, curve.Count);
        Assert.Equal(0, curve[0].Ppm);
        Assert.Equal(answer.PeakPpm, curve[60].Ppm, 1e-6);
        Assert.Equal(answer.PeakPpm, curve.Max(p => p.Ppm), 1e-6);
        Assert.Equal(1000, AirCurve.PpmAt(answer, Duration.FromHours(1) + answer.ClearAfter!.Value), 0.01);
        Assert.True(curve[120].Ppm < 5);
    }

    [Fact]
    public void More_air_never_makes_it_worse_and_more_liquid_never_better() =>
        Gen.Select(Gen.Double[0.01, 5], Gen.Double[5, 500], Gen.Double[0.1, 8], Gen.Double[0, 30]).Sample((liters, room, hours, changes) =>
        {
            var plain = Pure("ethanol", Question(liters, room, hours, changes));
            return Pure("ethanol", Question(liters, room, hours, changes + 1)).PeakPpm <= plain.PeakPpm * (1 + 1e-9)
                && Pure("ethanol", Question(liters * 1.1, room, hours, changes)).PeakPpm >= plain.PeakPpm * (1 - 1e-9)
                && Pure("ethanol", Question(liters, room, hours, changes, mixing: 2)).PeakPpm >= plain.PeakPpm * (1 - 1e-9);
        });

    [Fact, CommonPractice]
    public void A_window_lets_in_about_a_third_of_the_wind()
    {
        var air = Draught.ThroughWindow(Area.FromSquareMeters(0.5), Speed.FromMetersPerSecond(2));
        Assert.InRange(air.CubicMetersPerHour, 900, 1260);
        Assert.Equal(air.CubicMetersPerHour / 50, Draught.ChangesPerHour(air, Volume.FromCubicMeters(50)), 1e-9);
    }

    private static Substance Named(string id) => Ours.Substances.Named(id).Require();

    private static AirQuestion Question(double liters, double room, double? hours = null, double changes = 0, double mixing = 1) => AirQuestion.Of(
        Volume.FromLiters(liters), Volume.FromCubicMeters(room), hours is { } h ? Duration.FromHours(h) : null, changes, mixing).Require();

    private static AirAssessment Pure(string id, AirQuestion question) =>
        RoomAirAssessor.Assess(Composition.FromWeights([(Named(id), 1)]), question, RuleSet.Osha)!;
}
