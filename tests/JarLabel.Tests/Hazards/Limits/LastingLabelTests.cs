namespace JarLabel.Tests.Hazards.Limits;

/// <summary>What a label says for allergy, cancer, reproduction and organs.</summary>
public class LastingLabelTests
{
    private static readonly ShopCatalog Shop = LimitTable.Shop();

    /// <summary>The same under both rule sets, but for what is only named in Europe.</summary>
    [Theory]
    [Cites(References.Clp, "Article 26(1)(d): respiratory sensitisation drops the exclamation mark of skin sensitisation and of skin and eye irritation")]
    [Cites(References.Osha1200, "Appendix C.2.1.4")]
    [InlineData("is-skin-sens-1=1", "GHS07", "GHS07")]
    [InlineData("is-resp-sens-1=1,is-skin-sens-1=1,is-eye-irrit-2=10,is-skin-irrit-2=10", "GHS08", "GHS08")]
    [InlineData("is-resp-sens-1=1,is-skin-sens-1=1,is-stot-se-3-narcosis=20", "GHS07 GHS08", "GHS07 GHS08")]
    [InlineData("is-resp-sens-1=0.5,is-skin-sens-1=1", "GHS07", "GHS08")]
    [InlineData("is-carc-2=1,is-skin-sens-1=1", "GHS07 GHS08", "GHS07 GHS08")]
    [InlineData("is-skin-corr-1=5,is-eye-irrit-2=10", "GHS05", "GHS05")]
    [InlineData("is-lact=1", "", "")]
    public void Pictograms(string contents, string clp, string osha)
    {
        Assert.Equal(clp, string.Join(' ', Assess(contents, RuleSet.Clp).Pictograms));
        Assert.Equal(osha, string.Join(' ', Assess(contents, RuleSet.Osha).Pictograms));
    }

    [Theory, Cites(References.Clp, "Annex I tables 3.4.7, 3.6.3, 3.9.5, 3.10.2")]
    [InlineData("is-asp-1=10", "Danger", "P301+P310 P331 P405 P501")]
    [InlineData("is-carc-2=1", "Warning", "P201 P202 P280 P308+P313 P405 P501")]
    [InlineData("is-stot-re-1=10", "Danger", "P260 P264 P270 P314 P501")]
    [InlineData("is-stot-re-2=10", "Warning", "P260 P314 P501")]
    [InlineData("is-skin-sens-1=1", "Warning", "P261 P272 P280 P302+P352 P321 P333+P313 P362+P364 P501")]
    [InlineData("is-resp-sens-1=1", "Danger", "P261 P284 P304+P340 P342+P311 P501")]
    public void Signal_word_and_precautions(string contents, string signal, string precautions)
    {
        var found = Assess(contents, RuleSet.Clp);
        Assert.Equal(signal, found.SignalText);
        Assert.Equal(precautions, string.Join(' ', found.Precautions.Order(StringComparer.Ordinal)));
    }

    [Fact, Cites(References.Clp, "Article 28(1): a call to a poison centre says more than advice")]
    public void The_stronger_advice_takes_the_place_of_the_weaker()
    {
        var found = Assess("is-stot-se-1=10,is-carc-2=1,is-skin-irrit-2=10,is-skin-sens-1=1", RuleSet.Clp).Precautions;
        Assert.Contains("P308+P311", found);
        Assert.DoesNotContain("P308+P313", found);
        Assert.Contains("P333+P313", found);
        Assert.DoesNotContain("P332+P313", found);
    }

    [Fact, Cites(References.Clp, "Annex II 2.8: EUH208 names the substance")]
    public void A_trace_of_what_sensitises_is_named() => Assert.Equal(
        ["Contains is-resp-sens-1, is-skin-sens-1. May produce an allergic reaction."],
        Assess("is-resp-sens-1=0.5,is-skin-sens-1=0.5", RuleSet.Clp).StatementTexts(Shop));

    [Theory, Cites(References.Clp, "Annex III")]
    [InlineData("is-carc-2=1", "Suspected of causing cancer")]
    [InlineData("is-stot-re-2=10", "May cause damage to organs through prolonged or repeated exposure (liver)")]
    [InlineData("is-repr-1b=1", "May damage fertility or the unborn child")]
    public void Statements_in_words(string contents, string text) => Assert.Equal([text], Assess(contents, RuleSet.Clp).StatementTexts(Shop));

    [Fact, Cites(References.Clp, "Annex I 3.10.3.3.1.2: up to 20.5 mm²/s at 40 °C")]
    public void That_a_jar_counts_as_thin_is_said() => Assert.Equal(
        ["Asp. Tox. 1, H304: This reaches the limit: is-asp-1 10 % (limit 10 %). Whether it is thin enough (up to 20.5 mm²/s at 40 °C) nobody measures at a bench, so every jar counts as thin."],
        Assess("is-asp-1=10", RuleSet.Clp).Why);

    private static HazardAssessment Assess(string contents, RuleSet rules) => LimitTable.Assess(contents, rules, Shop);
}
