using System.Text.Json.Nodes;

namespace JarLabel.Tests.Web;

/// <summary>A shop is settled from its page, all at once; only what was changed is written, and nothing that was typed is lost.</summary>
public sealed class SetupPageTests : IDisposable
{
    private readonly WebShop shop = new(empty: true);

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task An_empty_shop_leads_to_its_setup_and_from_there_to_what_comes_next()
    {
        Directory.CreateDirectory(shop.Folder);
        Assert.Contains("<a class=\"go first\" href=\"/shop/setup\">Set up your shop</a>", (await shop.Get("/")).Text, StringComparison.Ordinal);
        var sent = await shop.Fill("/shop/setup", ("name", "Alder Lane Lutherie"), ("rules", "clp"), ("units", "metric"), ("sheet", "roll-62x29"), ("poison-center", "030 19240"), ("contact", "ask Anna"), ("base-url", "http://192.168.1.20:5080"), ("shelf", "main 20 C\r\ncellar 14 C"), ("still-good", "90"), ("keeping-spread", "2"), ("do", "record"));
        Assert.Equal(303, sent.Status);
        var settings = shop.Bench().Settings;
        Assert.Equal(("Alder Lane Lutherie", RuleSet.Clp, true, "roll-62x29", "030 19240", "ask Anna", "http://192.168.1.20:5080"), (settings.Name, settings.Rules, settings.Metric, settings.Sheet, settings.PoisonCenter, settings.Contact, settings.BaseUrl?.Text));
        Assert.Equal([("main", 20), ("cellar", 14)], settings.Shelves.Select(shelf => (shelf.Name, shelf.Temperature.DegreesCelsius)));
        var done = await shop.Get(sent.Location!);
        Assert.All((string[])["/calibrate?sheet=roll-62x29", "/bag/add", "/bottle/add", "/mix"], way => Assert.Contains($"href=\"{way}\"", done.Text, StringComparison.Ordinal));
        Assert.Contains("Roll, labels of 62 x 29 mm", done.Seen, StringComparison.Ordinal);
        var list = await shop.Get("/");
        Assert.Contains("Alder Lane Lutherie", list.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("Set up your shop", list.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_fields_are_filled_with_what_is_in_force()
    {
        Settle(settings => settings with { Name = "Alder Lane", Rules = RuleSet.Clp, Metric = true, Sheet = "roll-62x29", Shelves = [new Shelf("main", Temperature.FromDegreesCelsius(21.5)), new Shelf("loft 2", Temperature.FromDegreesCelsius(-3))] });
        var page = (await shop.Get("/shop/setup")).Text;
        Assert.Contains("name=\"name\" aria-describedby=\"h-name\" value=\"Alder Lane\"", page, StringComparison.Ordinal);
        Assert.Matches("value=\"clp\"[^>]* checked", page);
        Assert.Matches("value=\"metric\"[^>]* checked", page);
        Assert.Contains("<option value=\"roll-62x29\" selected>Roll, labels of 62 x 29 mm</option>", page, StringComparison.Ordinal);
        Assert.Contains(">\nmain 21.5 °C\nloft 2 -3 °C</textarea>", WebUtility.HtmlDecode(page), StringComparison.Ordinal);
    }

    /// <summary>Sent as it was opened nothing is written: not even temperatures that their own words round.</summary>
    [Fact]
    public async Task What_is_left_as_it_is_stays_as_it_is_whatever_somebody_else_settles_meanwhile()
    {
        Settle(settings => settings with { Name = "Alder Lane", Contact = "ask Anna", Shelves = [new Shelf("main", Temperature.FromDegreesCelsius(17.77)), new Shelf("cellar", Temperature.FromDegreesCelsius(14))] });
        var form = AsOpened((await shop.Get("/shop/setup")).Text);
        Settle(settings => settings with { Contact = "ask Bea", Shelves = [.. settings.Shelves, new Shelf("loft", Temperature.FromDegreesCelsius(25))] });
        var before = await File.ReadAllTextAsync(Path.Combine(shop.Folder, "shop.json"), TestContext.Current.CancellationToken);
        var nothing = await shop.Post("/shop/setup", [.. form, ("do", "record")]);
        Assert.Contains("Nothing to record", (await shop.Get(nothing.Location!)).Seen, StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllTextAsync(Path.Combine(shop.Folder, "shop.json"), TestContext.Current.CancellationToken));

        var again = AsOpened((await shop.Get("/shop/setup")).Text).Where(one => one.Name is "token" or "once" or "seen");
        (string Name, string Value)[] changed = [.. form.Where(one => one.Name is not ("token" or "once" or "seen" or "name" or "shelf")), .. again, ("name", "Beech Lane"), ("shelf", "cellar 13 C\nmain 64 °F"), ("do", "record")];
        Assert.Equal(303, (await shop.Post("/shop/setup", changed)).Status);
        var settings = shop.Bench().Settings;
        Assert.Equal(("Beech Lane", "ask Bea"), (settings.Name, settings.Contact));
        Assert.Equal([("cellar", 13), ("main", 17.77), ("loft", 25)], settings.Shelves.Select(shelf => (shelf.Name, shelf.Temperature.DegreesCelsius)));
    }

    [Fact]
    public async Task An_emptied_field_takes_its_setting_back_and_a_lost_line_its_shelf()
    {
        Settle(settings => settings with { Name = "Alder Lane", Sheet = "roll-62x29", AgingPerTenKelvin = 2.5, Shelves = [.. settings.Shelves, new Shelf("cellar", Temperature.FromDegreesCelsius(14))], Printers = [new NamedPrinter("bench", "ipp://192.168.1.30/ipp/print"), new NamedPrinter("desk", "ipp://192.168.1.31/ipp/print")] });
        Assert.Equal(303, (await Sent(("name", ""), ("sheet", ""), ("aging", ""), ("shelf", "main 68 °F"), ("printer", "desk=ipp://192.168.1.31/ipp/print\nloft=ipp://192.168.1.32/ipp/print"))).Status);
        var settings = shop.Bench().Settings;
        Assert.Equal((null, null, null), (settings.Name, settings.Sheet, settings.AgingPerTenKelvin));
        Assert.Equal("main", Assert.Single(settings.Shelves).Name);
        Assert.Equal(["desk", "loft"], settings.Printers.Select(printer => printer.Name));
    }

    [Fact]
    public async Task All_faults_are_told_at_once_each_at_its_field_and_nothing_typed_is_lost()
    {
        Settle(settings => settings with { Contact = "ask Anna" });
        var before = await File.ReadAllTextAsync(Path.Combine(shop.Folder, "shop.json"), TestContext.Current.CancellationToken);
        var told = await Sent(("name", "Alder \u2603"), ("rules", "mars"), ("poison-center", "ask Bob"), ("contact", ""), ("base-url", "my house"), ("shelf", "main 20 C\ncellar\nmain 18 C\nattic 90 C"), ("aging", "9"));
        Assert.Equal(422, told.Status);
        foreach (var (field, code) in (((string, string)[])[("name", "JL312"), ("rules", "JL108"), ("poison-center", "JL231"), ("base-url", "JL408"), ("shelf", "JL250"), ("shelf", "JL251"), ("aging", "JL110")]))
        {
            Assert.Matches($"id=\"h-{field}\">.*{code}", told.Text);
        }

        Assert.DoesNotContain("id=\"f-contact\" name=\"contact\" aria-describedby=\"h-contact\" value=\"ask", told.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"my house\"", told.Text, StringComparison.Ordinal);
        Assert.Contains("main 20 C\ncellar\nmain 18 C\nattic 90 C</textarea>", WebUtility.HtmlDecode(told.Text), StringComparison.Ordinal);
        Assert.Contains("<details open>", told.Text, StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllTextAsync(Path.Combine(shop.Folder, "shop.json"), TestContext.Current.CancellationToken));

        // Mended, it is taken as it stands then, the emptied field too.
        (string, string)[] mended = [.. AsOpened(told.Text).Where(one => one.Name is not ("name" or "rules" or "poison-center" or "base-url" or "shelf" or "aging")), ("name", "Alder"), ("rules", "clp"), ("base-url", "http://10.0.0.5"), ("shelf", "main 68 °F"), ("do", "record")];
        Assert.Equal(303, (await shop.Post("/shop/setup", mended)).Status);
        Assert.Equal(("Alder", null), (shop.Bench().Settings.Name, shop.Bench().Settings.Contact));
    }

    [Theory]
    [InlineData("", "JL252")]
    [InlineData("shop 20 C", "JL253")]
    [InlineData("shop 20 C\nmain 68 °F\nmain 70 F", "JL251")]
    public async Task A_shelf_that_must_stay_stays(string shelves, string code)
    {
        Settle(settings => settings);
        shop.Mix("350 mL");
        var told = await Sent(("shelf", shelves));
        Assert.Equal(422, told.Status);
        Assert.Contains(code, told.Seen, StringComparison.Ordinal);
        Assert.Equal("main", Assert.Single(shop.Bench().Settings.Shelves).Name);
    }

    [Fact]
    public async Task A_shelf_with_jars_says_what_to_move_and_where()
    {
        Settle(settings => settings with { Shelves = [.. settings.Shelves, new Shelf("cellar", Temperature.FromDegreesCelsius(14))] });
        shop.Mix("350 mL");
        var told = await Sent(("shelf", "cellar 57.2 °F"));
        Assert.Equal(422, told.Status);
        Assert.Contains("JL426", told.Seen, StringComparison.Ordinal);
        Assert.Contains("href=\"/J/1-9/move?shelf=cellar\"", told.Text, StringComparison.Ordinal);
        Assert.Equal(2, shop.Bench().Settings.Shelves.Count);
    }

    /// <summary>By a phone's own way here every other phone comes too; this machine's own address leads nobody else anywhere.</summary>
    [Theory]
    [InlineData("shop.home", "http://shop.home")]
    [InlineData(null, null)]
    public async Task The_address_by_which_one_came_is_a_value_to_tap(string? came, string? offered)
    {
        Settle(settings => settings with { BaseUrl = ShopAddress.Read("http://shop.home", "").Require() });
        shop.Restart();
        var asked = new HttpRequestMessage(HttpMethod.Get, "/shop/setup");
        asked.Headers.Host = came is null ? shop.Host : $"{came}";
        var taps = Regex.Match((await shop.Send(asked)).Text, "data-for=\"base-url\" hidden><button type=\"button\" value=\"([^\"]*)\"").Groups[1].Value;
        Assert.Equal(offered ?? "", taps);
    }

    [Fact]
    public async Task No_option_and_no_id_is_read_on_the_page_nor_on_that_of_the_settings()
    {
        Settle(settings => settings with { Name = "Alder Lane", Sheet = "roll-62x29", Design = "tall" });
        foreach (var page in (string[])[(await shop.Get("/shop/setup")).Seen, (await shop.Get("/shop/show")).Seen])
        {
            Assert.All((string[])["base-url", "still-good", "keeping-spread", "poison-center", "roll-62x29", "--", "jarlabel", "shop.json"], word => Assert.DoesNotContain(word, page, StringComparison.Ordinal));
        }

        Assert.Contains("Roll, labels of 62 x 29 mm", (await shop.Get("/shop/show")).Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_that_is_not_there_yet_leads_to_the_setup_which_makes_it()
    {
        Assert.Contains("href=\"/shop/setup\"", (await shop.Get("/")).Text, StringComparison.Ordinal);
        Assert.Equal(303, (await shop.Fill("/shop/setup", ("do", "record"))).Status);
        Assert.True(JsonNode.Parse(await File.ReadAllTextAsync(Path.Combine(shop.Folder, "shop.json"), TestContext.Current.CancellationToken)) is JsonObject);
    }

    private void Settle(Func<ShopSettings, ShopSettings> change) => ShopSettingsFile.Change(shop.Bench().Folder, settings => change(settings)).Require();

    /// <summary>The form sent as it is opened, with some of its fields changed.</summary>
    private async Task<Page> Sent(params (string Name, string Value)[] changed)
    {
        var form = AsOpened((await shop.Get("/shop/setup")).Text);
        return await shop.Post("/shop/setup", [.. form.Where(one => changed.All(other => other.Name != one.Name)), .. changed, ("do", "record")]);
    }

    /// <summary>What a browser would send of a form that was opened and left as it is.</summary>
    private static (string Name, string Value)[] AsOpened(string html) =>
    [
        .. WebShop.Hidden(html),
        .. Regex.Matches(html, "<input id=\"f-[^\"]*\" name=\"([^\"]*)\"[^>]* value=\"([^\"]*)\"").Select(One),
        .. Regex.Matches(html, "<input type=\"radio\" name=\"([^\"]*)\" value=\"([^\"]*)\"[^>]* checked").Select(One),
        .. Regex.Matches(html, "<textarea id=\"[^\"]*\" name=\"([^\"]*)\"[^>]*>\n([^<]*)</textarea>").Select(One),
        .. Regex.Matches(html, "<select id=\"[^\"]*\" name=\"([^\"]*)\".*?<option value=\"([^\"]*)\" selected").Select(One),
    ];

    private static (string, string) One(Match found) => (found.Groups[1].Value, WebUtility.HtmlDecode(found.Groups[2].Value).Replace("\n", "\r\n", StringComparison.Ordinal));
}
