namespace JarLabel.Acceptance;

public sealed class RuleReportTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    // 29 CFR 1910.1200(f)(6) and CLP Annex I table 1.3; a roll printer of 203 dpi has black ink only.
    [Theory]
    [InlineData("osha", "letter-2x5-101.6x50.8", "29 CFR 1910.1200(f)(6)", null)]
    [InlineData("clp", "a4-2x4-99.1x67.7", "CLP Annex I table 1.3, label size", "CLP Annex I table 1.3, pictogram size: 11.3 mm a side; 16.0 mm is asked, if possible")]
    [InlineData("clp", "roll-101.6x152.4", "CLP Annex I table 1.3, label size", "CLP Annex I 1.2.1.1, red frames")]
    public void A_label_says_which_rules_it_meets(string rules, string sheet, string meets, string? lacks)
    {
        var label = shop.Json(
            "mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--container", "500 mL", "--rules", rules, "--sheet", sheet)["label"]!.AsObject();
        Assert.Contains(meets, Texts(label, "satisfies"));
        Assert.Equal(lacks is not null, lacks is not null && Texts(label, "lacks").Any(l => l.StartsWith(lacks, StringComparison.Ordinal)));
        Assert.NotNull(label["movedToCard"]);
    }

    // A tag has no box for the statements: they stand on the card, and the answer counts them.
    [Theory]
    [InlineData("a4-5x13-38.1x21.2")]
    [InlineData("roll-round-50")]
    public void The_smallest_labels_say_what_stands_on_the_card(string sheet)
    {
        shop.Run("shop", "set", "base-url", "http://192.168.1.20:5080");
        string[] mix = ["mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "denatured-unknown", "--rules", "osha", "--sheet", sheet];
        Assert.Matches("on the card +[1-9][0-9]* that had no room here", shop.Run(mix).Result);
        var label = shop.Json(mix)["label"]!.AsObject();
        Assert.Contains(Texts(label, "movedToCard"), text => text.StartsWith("POISON.", StringComparison.Ordinal));
        Assert.Contains(Texts(label, "movedToCard"), text => text.Contains("POISON CENTER", StringComparison.Ordinal));
        Assert.Contains("29 CFR 1910.1200(f)(6)", Texts(label, "satisfies"));
    }

    [Fact]
    public void The_air_says_what_a_window_and_a_fan_do()
    {
        var run = shop.Run("calc", "air", "--solvent", "ethanol-95", "--evaporate", "250 mL", "--room", "50 m3", "--over", "1 h");
        Assert.Contains("a window", run.Result, StringComparison.Ordinal);
        Assert.Contains("540 m3/h", run.Result, StringComparison.Ordinal); // 0.3 x 0.5 m2 x 1 m/s x 3600 s
        Assert.Contains("a fan", run.Result, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Texts(JsonObject label, string key) => label[key]!.AsArray().Select(text => text!.GetValue<string>());
}
