namespace JarLabel.Tests.Hazards;

/// <summary>Alcohol of which nobody says which of several it is: every class is that of the alternative which is worst for it.</summary>
public class AlternativesTests
{
    /// <summary>One gallon in 105 is 0.94 % of the isobutyl ketone, 1.16 % of 2-nitropropane, 0.95 % of the n-butyl ketone by weight. A carcinogen of category 1B counts from 0.1 % under both rules;
    /// what may harm fertility from 0.1 % under US rules and from 3 % under CLP; repeated harm of category 1 from 1 %, which none reaches.</summary>
    [Theory, Cites(References.Cfr27, "21.32: formula no. 1 and its alternatives"), Cites(References.Clp, "Annex I tables 3.6.2, 3.7.2 and 3.9.4"), Cites(References.Osha1200, "tables A.6.1, A.7.1 and A.9.4")]
    [InlineData(RuleSet.Osha, true)]
    [InlineData(RuleSet.Clp, false)]
    public void Formula_1_answers_for_all_its_alternatives(RuleSet rules, bool fertility)
    {
        var found = MixtureClassifier.Classify(Solvent("denatured-sda1").Compositions, rules, ShopCatalog.Ours);
        Assert.Contains("H350", found.Statements);
        Assert.Equal(fertility, found.Statements.Any(s => s.StartsWith("H361", StringComparison.Ordinal)));
        Assert.DoesNotContain("H372", found.Statements);
        Assert.False(found.CompositionKnown);
        Assert.Contains(found.Unverified, line => line.StartsWith("2-nitropropane: class carc-1b", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(RuleSet.Osha)]
    [InlineData(RuleSet.Clp)]
    public void Unknown_alcohol_answers_for_the_worst_of_all(RuleSet rules)
    {
        var found = MixtureClassifier.Classify(Solvent("denatured-unknown").Compositions, rules, ShopCatalog.Ours);
        Assert.Superset(new HashSet<string> { "H225", "H301", "H311", "H331", "H350", "H370" }, found.Statements.ToHashSet());
        Assert.Equal(80m, found.MethanolPercent);
    }

    /// <summary>3 % of the isobutyl ketone: suspected of causing cancer from 1 % under CLP, from 0.1 % under US rules.</summary>
    [Theory, Cites(References.Clp, "Annex I table 3.6.2"), Cites(References.Osha1200, "table A.6.1: 0.1 %, with a note on the data sheet below 1 %")]
    [InlineData("0.09", RuleSet.Osha, false)]
    [InlineData("0.1", RuleSet.Osha, true)]
    [InlineData("0.99", RuleSet.Clp, false)]
    [InlineData("1", RuleSet.Clp, true)]
    public void The_isobutyl_ketone_is_a_suspected_carcinogen_from_its_limit(string percent, RuleSet rules, bool told) =>
        Assert.Equal(told, Mixtures.Assess($"ethanol=rest,mibk={percent}".Replace("rest", (100 - decimal.Parse(percent, System.Globalization.CultureInfo.InvariantCulture)).ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal), rules).Statements.Contains("H351"));

    /// <summary>10 % of heptane, or of heptane and toluene together, may be fatal in the airways; 9.9 % not.</summary>
    [Theory, Cites(References.Clp, "Annex I 3.10.3.3.1.1: 10 %")]
    [InlineData("ethanol=90,heptane=10", true)]
    [InlineData("ethanol=90,heptane=5,toluene=5", true)]
    [InlineData("ethanol=90.1,heptane=9.9", false)]
    public void Thin_hydrocarbons_are_an_aspiration_hazard_from_ten_percent(string contents, bool told) =>
        Assert.Equal(told, Mixtures.Assess(contents, RuleSet.Clp).Statements.Contains("H304"));

    private static Solvent Solvent(string id) => ShopCatalog.Ours.Solvents.Named(id).Require();
}
