namespace JarLabel.Tests.Store;

public sealed class ShopSettingsTests
{
    [Fact]
    public void A_shop_without_a_file_has_one_shelf_at_twenty_degrees_and_us_rules()
    {
        using var shop = new TempShop();
        var settings = ShopSettingsFile.Read(shop.Folder).Require();
        Assert.Equal(("main", 20, RuleSet.Osha, null), (settings.Shelves.Single().Name, settings.Shelves[0].Temperature.DegreesCelsius, settings.Rules, settings.BaseUrl));
    }

    [Fact]
    public void What_is_written_is_read_back()
    {
        using var shop = new TempShop();
        var settings = new ShopSettings
        {
            Name = "Möbelwerkstatt \"Am Tor\"",
            Contact = "bench 2",
            PoisonCenter = "030 19240",
            BaseUrl = ShopAddress.Read("http://192.168.1.20:5080/", "base-url").Require(),
            Rules = RuleSet.Clp,
            Metric = true,
            Shelves = [new("main", Temperature.FromDegreesCelsius(21.5)), new("cellar", Temperature.FromDegreesCelsius(12))],
            Sheet = "a4-3x7",
            Design = "jar-tall",
            AgingPerTenKelvin = 2.5,
        };
        ShopSettingsFile.Write(shop.Folder, settings).Require();
        var read = ShopSettingsFile.Read(shop.Folder).Require();
        Assert.Equal(settings with { Shelves = [] }, read with { Shelves = [] }, Same);
        Assert.Equal([("main", 21.5), ("cellar", 12)], read.Shelves.Select(s => (s.Name, s.Temperature.DegreesCelsius)));
        Assert.Contains("Möbelwerkstatt", File.ReadAllText(shop.Folder.Settings), StringComparison.Ordinal);
        Assert.DoesNotContain(Directory.EnumerateFiles(shop.Folder.Path), f => f.EndsWith(".part", StringComparison.Ordinal));
    }

    /// <summary>Every file that the program wrote before held a 2, whoever had settled it or not.</summary>
    [Theory]
    [InlineData("""{ "agingPerTenKelvin": 2 }""", null)]
    [InlineData("""{ }""", null)]
    [InlineData("""{ "agingPerTenKelvin": 2, "agingSettled": true }""", 2.0)]
    [InlineData("""{ "agingPerTenKelvin": 2.5 }""", 2.5)]
    [InlineData("""{ "agingPerTenKelvin": 2.5, "agingSettled": false }""", null)]
    public void Two_alone_settles_nothing_of_how_warmth_ages(string file, double? settled)
    {
        using var shop = new TempShop();
        Directory.CreateDirectory(shop.Folder.Path);
        File.WriteAllText(shop.Folder.Settings, file);
        var read = ShopSettingsFile.Read(shop.Folder).Require();
        Assert.Equal(settled, read.AgingPerTenKelvin);
        ShopSettingsFile.Write(shop.Folder, read).Require();
        Assert.Equal(settled, ShopSettingsFile.Read(shop.Folder).Require().AgingPerTenKelvin);
    }

    [Fact]
    public void All_faults_of_the_file_are_told_at_once_with_their_places()
    {
        using var shop = new TempShop();
        Directory.CreateDirectory(shop.Folder.Path);
        File.WriteAllText(shop.Folder.Settings, """
            { "name": "", "rules": "iso", "baseUrl": "shop.example", "colour": "red", "agingPerTenKelvin": 4,
              "shelves": [ { "name": "a", "celsius": 20 }, { "name": "a", "celsius": 400 } ] }
            """);
        var problems = ShopSettingsFile.Read(shop.Folder).Problems;
        Assert.All(problems, p => Assert.Equal("JL404", p.Code));
        Assert.Equal(
            ["shop.json#/agingPerTenKelvin", "shop.json#/baseUrl", "shop.json#/colour", "shop.json#/name", "shop.json#/rules", "shop.json#/shelves", "shop.json#/shelves/1/celsius"],
            problems.Select(p => p.Where).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_member_that_is_not_known_is_told_with_all_that_may_stand_there()
    {
        using var shop = new TempShop();
        Directory.CreateDirectory(shop.Folder.Path);
        File.WriteAllText(shop.Folder.Settings, """{ "nam": "x" }""");
        var message = Assert.Single(ShopSettingsFile.Read(shop.Folder).Problems).Message;
        Assert.Contains("allowed are: name, contact, baseUrl, ", message, StringComparison.Ordinal);
        Assert.EndsWith("Did you mean \"name\"?", message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("http://192.168.1.20:5080", "http://192.168.1.20:5080")]
    [InlineData(" HTTPS://Shop.Example/ ", "https://shop.example")]
    public void An_address_is_a_scheme_a_host_and_a_port(string text, string kept) =>
        Assert.Equal(kept, ShopAddress.Read(text, "base-url").Require().Text);

    [Theory]
    [InlineData("192.168.1.20")]
    [InlineData("ftp://shop.example")]
    [InlineData("http://shop.example/jars")]
    [InlineData("http://shop.example/?a=1")]
    [InlineData("http://me@shop.example")]
    [InlineData("http://my_shop.example")]
    [InlineData("http://läden.example")]
    [InlineData("")]
    public void Anything_else_is_refused_with_an_example(string text)
    {
        var problem = ShopAddress.Read(text, "base-url").Problems.Single();
        Assert.Equal("JL408", problem.Code);
        Assert.Contains("such as http://192.168.1.20:5080", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_shelf_is_refused_with_those_there_are() =>
        Assert.Contains("main", new ShopSettings().Shelf("attic").Problems.Single().Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    public void No_name_of_a_shelf_is_told_with_one_there_is_and_makes_no_new_one(string nothing)
    {
        var message = new ShopSettings().Shelf(nothing).Problems.Single().Message;
        Assert.Contains("shelf main", message, StringComparison.Ordinal);
        Assert.DoesNotContain("=18 C", message, StringComparison.Ordinal);
    }

    private static bool Same(ShopSettings one, ShopSettings other) =>
        (one.Name, one.Contact, one.BaseUrl, one.Rules, one.Metric, one.Sheet, one.Design, one.AgingPerTenKelvin)
        == (other.Name, other.Contact, other.BaseUrl, other.Rules, other.Metric, other.Sheet, other.Design, other.AgingPerTenKelvin);
}
