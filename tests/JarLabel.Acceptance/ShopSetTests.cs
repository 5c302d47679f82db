namespace JarLabel.Acceptance;

/// <summary>What a shop settles once: what labels could not use later is refused at once, and "none" takes anything back.</summary>
public sealed class ShopSetTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("sheet", "letter-2x5-101.6x50", "JL303", "Did you mean \"letter-2x5-101.6x50.8\"?")]
    [InlineData("sheet", "nonsense", "JL303", "For example: \"jarlabel shop set sheet ")]
    [InlineData("design", "standrd", "JL304", "For example: \"jarlabel shop set design standard")]
    [InlineData("name", "Скрипки 😀", "JL312", "Write it in Latin letters")]
    [InlineData("contact", "ring 😀", "JL312", "read in \"ring 😀\"")]
    public void What_labels_could_not_use_is_refused_at_once(string setting, string value, string code, string says)
    {
        var run = shop.Run("shop", "set", setting, value);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"error {code}: VALUE: ", run.Errors, StringComparison.Ordinal);
        Assert.Contains(says, run.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(shop.Folder, "shop.json")));
        Assert.Equal(0, shop.Run(Mix).ExitCode);
    }

    [Fact]
    public void A_sheet_that_is_gone_is_told_as_the_shops_own_choice_and_not_as_something_typed()
    {
        File.WriteAllText(Path.Combine(shop.Folder, "shop.json"), """{ "sheet": "gone" }""");
        foreach (var line in (string[][])[Mix, ["check"]])
        {
            var run = shop.Run(line);
            Assert.Equal(2, run.ExitCode);
            Assert.StartsWith("error JL303: shop.json#/sheet: ", run.Errors, StringComparison.Ordinal);
            Assert.Contains("jarlabel shop set sheet", run.Errors, StringComparison.Ordinal);
        }

        Assert.Equal(0, shop.Run("shop", "set", "sheet", "none").ExitCode);
        Assert.Equal(0, shop.Run(Mix).ExitCode);
    }

    [Theory]
    [InlineData("name", "Alder Lane", "name")]
    [InlineData("rules", "clp", "rules")]
    [InlineData("units", "metric", "units")]
    [InlineData("sheet", "letter-3x10-66.7x25.4", "sheet")]
    [InlineData("design", "tall", "design")]
    [InlineData("aging", "2.5", "agingPerTenKelvin")]
    [InlineData("still-good", "95", "stillGood")]
    [InlineData("keeping-spread", "3", "keepingSpread")]
    [InlineData("base-url", "http://192.168.1.20:5080", "baseUrl")]
    public void None_takes_any_setting_back(string setting, string value, string key)
    {
        var usual = shop.Json("shop", "show")[key]?.ToJsonString();
        Assert.NotEqual(usual, shop.Json("shop", "set", setting, value)[key]?.ToJsonString());
        Assert.Equal(usual, shop.Json("shop", "set", setting, "none")[key]?.ToJsonString());
    }

    [Fact]
    public void A_shelf_is_taken_away_once_nothing_stands_on_it()
    {
        shop.Json("shop", "set", "shelf", "cellar=14 C");
        shop.Json([.. Mix, "--shelf", "cellar"]);
        shop.Json("bottle", "add", "--solvent", "ethanol-95", "--volume", "1 gal", "--date", "2026-03-01", "--shelf", "cellar", "--no-label");
        Refused("cellar=none", "JL426", "1 jar and 1 bottle");
        shop.Json("move", "1", "--shelf", "main", "--no-label");
        Refused("cellar=none", "JL426", "0 jars and 1 bottle");
        shop.Json("bottle", "move", "1", "--shelf", "main");
        var run = shop.Run("shop", "set", "shelf", "cellar=none");
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("caution: How warm shelf \"cellar\" was is forgotten", run.Result, StringComparison.Ordinal);
        Assert.Equal(["main"], Shelves());
        Assert.Equal(0, shop.Run("jar", "1").ExitCode);
        Refused("cellar=none", "JL409", "this shop has: main");
        Refused("main=none", "JL427", "only one");
    }

    /// <summary>New jars go on the first shelf, and a new temperature must not make another shelf the first.</summary>
    [Fact]
    public void A_shelf_keeps_its_place_when_its_temperature_changes()
    {
        shop.Json("shop", "set", "shelf", "cellar=14 C");
        shop.Json("shop", "set", "shelf", "main=19 C");
        Assert.Equal(["main", "cellar"], Shelves());
    }

    private static string[] Mix => ["mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95"];

    private IEnumerable<string> Shelves() => shop.Json("shop", "show")["shelves"]!.AsArray().Select(shelf => shelf!["name"]!.GetValue<string>());

    private void Refused(string shelf, string code, string says)
    {
        var run = shop.Run("shop", "set", "shelf", shelf);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"error {code}", run.Errors, StringComparison.Ordinal);
        Assert.Contains(says, run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ask Bob", false)]
    [InlineData("12", false)]
    [InlineData("112", true)]
    [InlineData("+49 30 19240", true)]
    public void Who_is_called_for_poison_has_a_number_that_can_be_dialled(string number, bool taken)
    {
        using var shop = new Shop();
        Assert.Equal(taken ? "" : "error JL231", shop.Run("shop", "set", "poison-center", number).Errors.Split(':')[0]);
    }
}
