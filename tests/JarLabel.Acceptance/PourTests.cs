namespace JarLabel.Acceptance;

/// <summary>Jars poured together or off: what stands on the shelf afterwards is counted once, and the new jars are dated by what the shop's tests say.</summary>
public sealed class PourTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    // TRGS 510: 20 kg of highly flammable liquid outside a store. 12 and 8 L of alcohol weigh 16.2 kg, their flakes 2.4.
    [Theory]
    [InlineData("blend", "1", "2")]
    [InlineData("decant", "1", "--into", "10 L,all")]
    public void What_is_poured_is_not_counted_twice_against_the_shelf(params string[] step)
    {
        Mix("12 L");
        Mix("8 L");
        Assert.DoesNotContain("JL177", Codes(shop.Json([.. step, "--rules", "clp", "--no-label", "--at", "2026-03-10"])));
        Mix("30 L");
        Assert.Contains("JL177", Codes(shop.Json(["decant", "3", "--into", "1 L", "--rules", "clp", "--no-label", "--at", "2026-03-11"])));
    }

    [Fact]
    public void Every_new_jar_says_what_should_be_known_of_it_and_of_the_shelf_it_goes_to()
    {
        shop.Run("shop", "set", "shelf", "cellar=14 C");
        Mix("45 L", "--shelf", "cellar");
        Mix("20 L");
        Assert.Contains("JL177", Codes(shop.Json("decant", "2", "--into", "1 L,12 L", "--shelf", "cellar", "--rules", "clp", "--no-label", "--at", "2026-03-10")));
    }

    [Fact]
    public void What_is_poured_off_is_dated_as_the_shops_tests_say()
    {
        Mix("350 mL");
        Mix("350 mL");
        shop.Json("test", "1", "fail", "--at", "2026-05-01");
        var poured = shop.Json("decant", "2", "--into", "100 mL", "--at", "2026-05-02");
        var made = poured["made"]![0]!;
        Assert.DoesNotContain("JL124", Codes(made));
        Assert.True(string.CompareOrdinal(made["jar"]!["useBy"]!.GetValue<string>(), "2026-11-09") < 0, "eight months are claimed");
        Assert.DoesNotContain("JL124", Codes(shop.Json("jar", "3", "--at", "2026-05-02")));
        Assert.DoesNotContain("JL124", Codes(shop.Json("thin", "2", "--to", "0.5", "--at", "2026-05-02")));
    }

    private static IEnumerable<string> Codes(JsonNode answer) => answer["warnings"]!.AsArray().Select(w => w!["code"]!.GetValue<string>());

    private void Mix(string pour, params string[] more) =>
        shop.Json(["mix", "--grade", "garnet", "--cut", "1", "--pour", pour, "--solvent", "ethanol-95", "--no-label", "--at", "2026-03-09", .. more]);

    /// <summary>350 mL of alcohol and 1.5 lb a gallon make 402 mL.</summary>
    [Fact]
    public void More_than_there_is_is_told_of_the_whole_and_not_of_what_the_first_jars_leave()
    {
        using var shop = new Shop();
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label");
        var run = shop.Run("decant", "1", "--into", "3 x 150 mL", "--no-label");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("Read 450 mL (15.2 fl oz), and jar 1-9 holds 402 mL", run.Errors, StringComparison.Ordinal);
    }
}
