namespace JarLabel.Tests.Catalog;

/// <summary>A data sheet that gives ranges: the middle stands for weights, the worst corner for every question.</summary>
public class DataSheetRangeTests
{
    private static readonly ShopCatalog Ours = ShopCatalog.Ours;

    /// <summary>Of two that both go from 30 to 60 each leaves the other at least 40, so both stand from 40 to 60 and meet at 50.</summary>
    [Fact]
    public void Two_ranges_narrow_each_other_and_meet_in_the_middle()
    {
        var can = Can("""{ "byWeight": [{ "of": "ethanol", "from": 30, "to": 60 }, { "of": "methanol", "from": 30, "to": 60 }] }""");
        Assert.Equal([(50m, 50m), (60m, 40m), (40m, 60m)], can.Compositions.Select(c => (c.PercentOf("ethanol"), c.PercentOf("methanol"))).OrderBy(c => c.Item1 != 50).ThenByDescending(c => c.Item1));
        Assert.True(can.CompositionKnown);
        Assert.Equal(50m, can.Composition.PercentOf("methanol"));
    }

    /// <summary>By hand: 60 to 80, 5 to 20 and the rest of 0 to 35. Corners: 60+5+35, 60+20+20, 80+5+15, 80+20+0. In the middle 70, 12.5 and 17.5.</summary>
    [Fact]
    public void The_corners_of_three_are_those_found_by_hand()
    {
        var can = Can("""{ "byWeight": [{ "of": "ethanol", "from": 60, "to": 80 }, { "of": "methanol", "from": 5, "to": 20 }, { "of": "water", "rest": true }] }""");
        Assert.Equal((70m, 12.5m, 17.5m), Shares(can.Composition));
        Assert.Equal([(60m, 5m, 35m), (60m, 20m, 20m), (80m, 5m, 15m), (80m, 20m, 0m)], can.Compositions.Skip(1).Select(Shares).Order());
    }

    /// <summary>One part of 60 % by volume at 789.24 and one of 40 % at 791.4 kg/m³: 473.54 and 316.56, 59.93 and 40.07 % by weight.</summary>
    [Fact, Cites(References.OimlR22, "ethanol 789.24 kg/m³"), Cites(References.SupplierSheet, "methanol 0.791 to 0.793")]
    public void Ranges_by_volume_become_weights_corner_by_corner()
    {
        var can = Can("""{ "byVolume": [{ "of": "ethanol", "from": 30, "to": 60 }, { "of": "methanol", "from": 30, "to": 60 }] }""");
        Assert.Equal(59.93, (double)can.Compositions.Max(c => c.PercentOf("ethanol")), 0.01);
        Assert.Equal(50.07, (double)can.Composition.PercentOf("methanol"), 0.01);
    }

    /// <summary>Methanol 30 to 60 % of what is 40 to 60 % ethanol: at 60 % it is toxic by mouth (from 33.3 %), through the skin and by breathing (from 30 %);
    /// ethanol at 60 % irritates eyes from 50 %. No one mixture is both.</summary>
    [Fact, Cites(References.Clp, "Annex I 3.1.3.6 and table 3.1.2")]
    public void Every_class_is_answered_by_its_worst_corner()
    {
        var can = Can("""{ "byWeight": [{ "of": "ethanol", "from": 30, "to": 60 }, { "of": "methanol", "from": 30, "to": 60 }] }""");
        var found = MixtureClassifier.Classify(can.Compositions, RuleSet.Clp, Ours);
        Assert.Superset(new HashSet<string> { "H225", "H301", "H311", "H319", "H331", "H370" }, found.Statements.ToHashSet());
        Assert.Equal(60m, found.MethanolPercent);
        Assert.True(found.CompositionKnown);
        Assert.Contains("The data sheet gives ranges: every class is answered for the worst that they allow.", found.Doubts);
        Assert.DoesNotContain("H319", MixtureClassifier.Classify(can.Compositions.Where(c => c.PercentOf("methanol") == 60).ToArray(), RuleSet.Clp, Ours).Statements);
    }

    /// <summary>A litre at 60 % methanol, 790.5 g, gives 14.80 mol and 0.356 m³, 7.12 times 1000 ppm of 50 m³, 36 times 200; at 60 % ethanol, 790.1 g, ethanol 10.29 and
    /// methanol 9.86 mol are 0.1500 + 0.0791 of their lower limits.</summary>
    [Fact, Cites(References.NioshPocketGuide, "ethyl alcohol: LEL 3.3 %"), Cites(References.PrudentPractices, "methanol: LEL 6.0 %")]
    public void Air_is_answered_by_the_corner_that_is_worst_to_breathe_and_the_one_that_burns_soonest()
    {
        var can = Can("""{ "byWeight": [{ "of": "ethanol", "from": 30, "to": 60 }, { "of": "methanol", "from": 30, "to": 60 }] }""");
        var air = RoomAirAssessor.Assess(can, AirQuestion.Of(Volume.FromLiters(1), Volume.FromCubicMeters(50)).Require(), RuleSet.Osha).Require();
        Assert.Equal(38.9, air.FractionOfLimit, 0.1);
        Assert.Equal(0.229, air.FractionOfLel, 0.001);
        Assert.Contains(air.Doubts, doubt => doubt.StartsWith("The data sheet gives ranges", StringComparison.Ordinal));
    }

    [Fact]
    public void No_mixture_within_the_ranges_is_worse_than_the_answer() =>
        Gen.Select(Gen.Int[0, 60], Gen.Int[0, 40], Gen.Int[0, 60], Gen.Int[0, 40], Gen.Double[0, 1]).Where(g => g.Item1 + g.Item3 <= 100).Sample((ethanol, more, methanol, most, at) =>
        {
            var can = Can(FormattableString.Invariant(
                $$"""{ "byWeight": [{ "of": "ethanol", "from": {{ethanol}}, "to": {{Math.Min(100, ethanol + more)}} }, { "of": "methanol", "from": {{methanol}}, "to": {{Math.Min(100, methanol + most)}} }, { "of": "water", "rest": true }] }"""));
            var mixture = Composition.FromWeights([.. can.Compositions.SelectMany((c, i) => c.Ingredients.Select(part => (part.Substance, part.Percent * (decimal)Math.Pow(at, i))))]);
            foreach (var rules in Enum.GetValues<RuleSet>())
            {
                var (whole, one) = (MixtureClassifier.Classify(can.Compositions, rules, Ours), MixtureClassifier.Classify(mixture, rules, Ours));
                Assert.True(whole.Signal >= one.Signal);
                Assert.All(one.Hazards, h => Assert.Contains(whole.Hazards, w => w.Class.Ladder == h.Class.Ladder && Rung(w) <= Rung(h)));
            }
        }, iter: 60);

    [Fact]
    public void The_label_says_the_ranges()
    {
        var can = Can("""{ "byWeight": [{ "of": "ethanol", "from": 30, "to": 60 }, { "of": "methanol", "from": 30, "to": 60 }] }""");
        Assert.Equal("Ethanol 40 to 60 %, methanol 40 to 60 % by weight", ContentsWords.Of(can, MixtureClassifier.Classify(can.Compositions, RuleSet.Clp, Ours)));
    }

    [Theory]
    [InlineData("""[{ "of": "ethanol", "from": 30, "to": 40 }, { "of": "water", "from": 5, "to": 10 }]""", "add up to 35 to 50")]
    [InlineData("""[{ "of": "ethanol", "from": 60, "to": 40 }, { "of": "water", "rest": true }]""", "smaller percentage first")]
    [InlineData("""[{ "of": "ethanol", "from": 0, "to": 9 }, { "of": "methanol", "to": 9 }, { "of": "butanone", "to": 9 }, { "of": "acetone", "to": 9 }, { "of": "propan-2-ol", "to": 9 }, { "of": "1-butanol", "to": 9 }, { "of": "water", "rest": true }]""", "at most 6")]
    public void Ranges_that_cannot_be_are_refused(string parts, string says) =>
        Assert.Contains(Load($$"""{ "byWeight": {{parts}} }""").Problems, p => p.Code == "JL202" && p.Message.Contains(says, StringComparison.Ordinal));

    /// <summary>A thousandth of a percent of a bitter agent has no density to speak of, and needs none.</summary>
    [Fact]
    public void A_trace_without_a_density_weighs_as_the_rest()
    {
        var can = Can("""{ "byWeight": [{ "of": "ethanol", "parts": 99.999 }, { "of": "denatonium", "parts": 0.001 }] }""");
        Assert.Equal(789.24, can.DensityAt(Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter, 0.01);
    }

    private static int Rung(Hazard hazard) => Ours.Classes.Ids.ToList().IndexOf(hazard.Class.Id);

    private static (decimal Ethanol, decimal Methanol, decimal Water) Shares(Composition c) => (c.PercentOf("ethanol"), c.PercentOf("methanol"), c.PercentOf("water"));

    private static Solvent Can(string contains) => Load(contains).Require().Solvents.Named("own").Require();

    private static JarLabel.Core.Result<ShopCatalog> Load(string contains) => ShopCatalog.Load([("solvents.json", (ReadOnlyMemory<byte>)Encoding.UTF8.GetBytes(
        $$"""[{ "id": "own", "name": "own", "shortName": "own", "contains": [{{contains}}], "source": "practice" }]"""))]);

    /// <summary>Shares that a label prints add up to all there is.</summary>
    [Theory, CommonPractice]
    [InlineData("denatured-sda3a")]
    [InlineData("ethanol-95")]
    [InlineData("isopropanol-91")]
    public void Printed_shares_of_a_known_composition_add_up_to_100(string id)
    {
        var solvent = Ours.Solvents.Find(id)!;
        var printed = ContentsWords.Of(solvent, MixtureClassifier.Classify(solvent.Compositions, RuleSet.Osha, Ours));
        var shares = System.Text.RegularExpressions.Regex.Matches(printed, "([0-9.]+) %").Select(m => decimal.Parse(m.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(100m, shares.Sum());
    }
}
