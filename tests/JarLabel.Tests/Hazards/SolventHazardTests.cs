using static JarLabel.Tests.Hazards.Mixtures;

namespace JarLabel.Tests.Hazards;

/// <summary>What the label of every solvent of the catalog says, and of the substances in them.</summary>
public class SolventHazardTests
{
    /// <summary>Per solvent: statements and pictograms under both rule sets, worked out by hand from the tables cited.</summary>
    public static TheoryData<string, string, string> Solvents { get; } = new()
    {
        { "ethanol-95", "H225 H319 GHS02 GHS07", "H225 H319 GHS02 GHS07" },
        { "ethanol-96", "H225 H319 GHS02 GHS07", "H225 H319 GHS02 GHS07" },
        { "ethanol-99", "H225 H319 GHS02 GHS07", "H225 H319 GHS02 GHS07" },
        { "ethanol-absolute", "H225 H319 GHS02 GHS07", "H225 H319 GHS02 GHS07" },
        { "denatured-sda1", "H225 H319 H350 H371 GHS02 GHS07 GHS08", "H225 H319 H350 H361 H370 GHS02 GHS07 GHS08" },
        { "denatured-sda3a", "H225 H319 H371 GHS02 GHS07 GHS08", "H225 H319 H370 GHS02 GHS07 GHS08" },
        { "denatured-eu", "H225 H319 GHS02 GHS07", "H225 H319 GHS02 GHS07" },
        { "denatured-methanol-50", "H225 H301 H311 H331 H370 GHS02 GHS06 GHS08", "H225 H301 H311 H331 H370 GHS02 GHS06 GHS08" },
        { "denatured-unknown", "H225 H301 H311 H319 H331 H350 H370 GHS02 GHS06 GHS08", "H225 H301 H311 H319 H331 H350 H361 H370 GHS02 GHS06 GHS07 GHS08" },
        { "isopropanol-99", "H225 H319 H336 GHS02 GHS07", "H225 H319 H336 GHS02 GHS07" },
        { "isopropanol-91", "H225 H319 H336 GHS02 GHS07", "H225 H319 H336 GHS02 GHS07" },
        { "isopropanol-70", "H225 H319 H336 GHS02 GHS07", "H225 H319 H336 GHS02 GHS07" },
        { "methanol", "H225 H301 H311 H331 H370 GHS02 GHS06 GHS08", "H225 H301 H311 H331 H370 GHS02 GHS06 GHS08" },
    };

    [Theory, MemberData(nameof(Solvents))]
    [Cites(References.Clp, "Annex I tables 2.6.1, 3.1.1, 3.3.3, 3.8.3; Article 26")]
    [Cites(References.Osha1200, "Appendix A.1, A.3, A.8; Appendix C.2.1")]
    [Cites(References.EchaInventory, "ethanol, propan-2-ol: harmonised classification")]
    public void Every_solvent_carries_what_the_tables_say(string id, string clp, string osha)
    {
        Assert.Equal(clp, Elements(id, RuleSet.Clp));
        Assert.Equal(osha, Elements(id, RuleSet.Osha));
    }

    [Fact]
    public void Every_solvent_has_its_check_row() =>
        Assert.Equal(Ours.Solvents.Ids.Order(StringComparer.Ordinal), Solvents.Select(row => row.Data.Item1).Order(StringComparer.Ordinal));

    /// <summary>The harmonised entries of CLP Annex VI, as the inventory and national sheets show them.</summary>
    [Theory, Cites(References.EchaInventory, "Annex VI entries")]
    [Cites(References.GisChem, "methanol")]
    [Cites(References.NiteGhs, "1-butanol: flammable liquid category 3, flash point 29 °C")]
    [InlineData("ethanol", "H225")]
    [InlineData("propan-2-ol", "H225 H319 H336")]
    [InlineData("methanol", "H225 H301 H311 H331 H370")]
    [InlineData("butanone", "H225 H319 H336 EUH066")]
    [InlineData("acetone", "H225 H319 H336 EUH066")]
    [InlineData("1-butanol", "H226 H302 H315 H318 H335 H336")]
    public void A_pure_substance_has_its_harmonised_classification(string id, string statements)
    {
        var pure = Of($"{id}=100");
        var found = MixtureClassifier.Classify(pure, RuleSet.Clp, Ours, new HazardSettings(CountSelfClassifications: false));
        Assert.Equal(statements, string.Join(' ', found.Statements));
    }

    /// <summary>The supplemental statement is European and has no signal word; from what share a mixture has it, 20 %, is a common judgement.</summary>
    [Theory, CommonPractice]
    [InlineData("ethanol=80.1,acetone=19.9", RuleSet.Clp, false)]
    [InlineData("ethanol=80,acetone=20", RuleSet.Clp, true)]
    [InlineData("acetone=100", RuleSet.Osha, false)]
    public void What_dries_the_skin_says_so_under_european_rules(string contents, RuleSet rules, bool said) =>
        Assert.Equal(said, Assess(contents, rules).StatementTexts(Ours).Contains("Repeated exposure may cause skin dryness or cracking"));

    [Theory, CommonPractice]
    [InlineData("water")]
    [InlineData("shellac-resin")]
    public void Water_and_resin_have_no_hazard(string id)
    {
        var found = Assess($"{id}=100", RuleSet.Osha);
        Assert.Empty(found.Hazards);
        Assert.Empty(found.Pictograms);
        Assert.Empty(found.Precautions);
        Assert.Null(found.FlashPointCelsius);
    }

    [Fact]
    public void An_unknown_composition_says_so_and_answers_for_the_worst()
    {
        var found = MixtureClassifier.Classify(Ours.Solvents.Named("denatured-unknown").Require().Compositions, RuleSet.Osha, Ours);
        Assert.False(found.CompositionKnown);
        Assert.StartsWith("The composition is not known.", found.Doubts[0], StringComparison.Ordinal);
        Assert.True(found.PoisonWording);
        Assert.Equal("Danger", found.SignalText);
    }

    [Theory, CommonPractice]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(5)]
    public void Shellac_dissolved_in_an_unknown_alcohol_never_makes_it_mild(int poundCut)
    {
        var solvent = Ours.Solvents.Named("denatured-unknown").Require();
        var jar = JarComposition.Possible(
            [(solvent, UnitsNet.Mass.FromPounds(6.78))], UnitsNet.Mass.FromPounds(poundCut), Ours);
        Assert.Equal(["H225", "H301", "H311", "H319", "H331", "H350", "H370"], MixtureClassifier.Classify(jar, RuleSet.Clp, Ours).Statements);
    }

    private static string Elements(string id, RuleSet rules)
    {
        var found = MixtureClassifier.Classify(Ours.Solvents.Named(id).Require().Compositions, rules, Ours);
        return string.Join(' ', [.. found.Statements, .. found.Pictograms]);
    }
}
