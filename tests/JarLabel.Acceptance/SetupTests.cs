namespace JarLabel.Acceptance;

/// <summary>A shop settles at once what it otherwise settles one by one, typed and tapped.</summary>
public sealed class SetupTests : IClassFixture<Browser>, IDisposable
{
    private readonly Browser browser;
    private readonly Shop shop = new();

    public SetupTests(Browser browser) => this.browser = browser;

    public void Dispose() => shop.Dispose();

    [Fact]
    public void All_is_settled_at_once_and_what_is_not_said_stays()
    {
        shop.Json("shop", "set", "contact", "ask Anna");
        var said = shop.Json("shop", "setup", "--name", "Alder Lane", "--rules", "clp", "--units", "metric", "--sheet", "roll-62x29", "--shelf", "main 18 C", "--shelf", "cellar=14 C", "--printer", "bench=ipp://192.168.1.30/ipp/print");
        Assert.Equal(said.ToJsonString(), shop.Json("shop", "show").ToJsonString());
        Assert.Equal(("Alder Lane", "clp", "metric", "roll-62x29", "ask Anna"), (Text(said, "name"), Text(said, "rules"), Text(said, "units"), Text(said, "sheet"), Text(said, "contact")));
        Assert.Equal(["main 18", "cellar 14"], Shelves(said));
        Assert.Equal(["main 18"], Shelves(shop.Json("shop", "setup", "--shelf", "cellar none", "--contact", "none", "--printer", "bench=none")));
        Assert.Null(shop.Json("shop", "show")["contact"]);
        Assert.Empty(shop.Json("shop", "show")["printers"]!.AsArray());
    }

    [Fact]
    public void All_faults_are_told_at_once_and_nothing_is_settled()
    {
        var run = shop.Run("shop", "setup", "--name", "ring 😀", "--rules", "mars", "--shelf", "cellar", "--shelf", "main 20 C", "--shelf", "main 30 C", "--aging", "9", "--base-url", "my house", "--poison-center", "ask Bob");
        Assert.Equal(2, run.ExitCode);
        foreach (var told in (string[])["JL312: --name", "JL108: --rules", "JL250: --shelf", "JL251: --shelf", "JL110: --aging", "JL408: --base-url", "JL231: --poison-center"])
        {
            Assert.Single(run.Errors.Split('\n'), line => line.StartsWith($"error {told}: ", StringComparison.Ordinal));
        }

        Assert.False(File.Exists(Path.Combine(shop.Folder, "shop.json")));
    }

    [Fact]
    public void A_rehearsal_settles_nothing()
    {
        Assert.Equal("Alder Lane", Text(shop.Json("shop", "setup", "--name", "Alder Lane", "--dry-run"), "name"));
        Assert.False(File.Exists(Path.Combine(shop.Folder, "shop.json")));
    }

    /// <summary>Two shelves and a setting at once give every jar the dates that it gets where they are settled one after the other, and say so once.</summary>
    [Fact]
    public void Jars_are_dated_anew_once_for_all_that_is_settled()
    {
        using var other = new Shop();
        foreach (var each in (Shop[])[shop, other])
        {
            each.Json("shop", "set", "shelf", "attic=30 C", "--at", "2026-03-01");
            each.Json("shop", "set", "shelf", "stove=26 C", "--at", "2026-03-01");
            foreach (var shelf in (string[])["attic", "main", "stove"])
            {
                each.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label", "--shelf", shelf, "--at", "2026-03-09T00:00");
            }
        }

        var before = UseBys(shop);
        var said = shop.Json("shop", "setup", "--shelf", "attic 10 C", "--shelf", "main 28 C", "--aging", "3", "--at", "2026-03-20");
        other.Json("shop", "set", "shelf", "attic=10 C", "--at", "2026-03-20");
        other.Json("shop", "set", "shelf", "main=28 C", "--at", "2026-03-20");
        other.Json("shop", "set", "aging", "3", "--at", "2026-03-20");
        Assert.Equal(UseBys(other), UseBys(shop));
        Assert.All(before.Zip(UseBys(shop)), pair => Assert.NotEqual(pair.First, pair.Second));
        var caution = Assert.Single(said["warnings"]!.AsArray(), one => Text(one!, "code") == "JL219")!;
        Assert.Contains("The use-by of 3 jars moved with these settings", Text(caution, "message"), StringComparison.Ordinal);
        Assert.Contains("dated anew by how warm shelf attic is or was", shop.Run("jar", "1").Result, StringComparison.Ordinal);
        Assert.Contains("the shop settled anew how jars keep", shop.Run("jar", "3").Result, StringComparison.Ordinal);
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    [Fact]
    public void The_settings_are_shown_in_words()
    {
        shop.Json("shop", "setup", "--rules", "clp", "--units", "metric", "--sheet", "roll-62x29");
        var shown = shop.Run("shop", "show").Result;
        Assert.All((string[])["European Union: CLP", "Metric: mL and g", "Roll, labels of 62 x 29 mm"], words => Assert.Contains(words, shown, StringComparison.Ordinal));
        Assert.All((string[])["base-url", "still-good", "keeping-spread", "poison-center", "roll-62x29"], name => Assert.DoesNotContain(name, shown, StringComparison.Ordinal));
    }

    /// <summary>Somebody who has only the page: from an empty folder to a named shop with two shelves, a test page on its own stock, a jar and a backup taken away.</summary>
    [Fact]
    public async Task From_an_empty_folder_to_a_kept_shop_by_the_page_alone()
    {
        using var server = new ServedShop(shop.Start("serve", "--port", "0", "--json"));
        var phone = await browser.Open(server.Address);
        await phone.GotoAsync("/");
        await phone.GetByRole(AriaRole.Link, new() { Name = "Set up your shop" }).TapAsync();
        await phone.GetByLabel("The shop's name").FillAsync("Alder Lane");
        await phone.GetByLabel("European Union: CLP").TapAsync();
        await phone.GetByLabel("Metric: mL and g").TapAsync();
        await phone.Locator("[data-for=sheet]").GetByRole(AriaRole.Button, new() { Name = "A4, 14 labels" }).TapAsync();
        await phone.GetByLabel("Telephone of your poison center").FillAsync("ask Bob");
        await phone.GetByLabel("Shelves, and how warm they are").FillAsync("bench 21 C\ncellar");
        foreach (var target in await phone.Locator("main button:visible, main select:visible, main input:not([type=hidden]):visible, main label.pick:visible, main summary:visible, main textarea:visible").AllAsync())
        {
            var box = (await target.BoundingBoxAsync())!;
            Assert.True(box.Height >= 48 || await target.GetAttributeAsync("type") == "radio", await target.InnerHTMLAsync());
            Assert.InRange(box.X + box.Width, 48, Browser.PhoneWidth);
        }

        Assert.Equal(Browser.PhoneWidth, await phone.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        await phone.GetByRole(AriaRole.Button, new() { Name = "Keep these settings" }).TapAsync();
        await Assertions.Expect(phone).ToHaveTitleAsync(new Regex("^2 to put right"));
        await Assertions.Expect(phone.GetByLabel("The shop's name")).ToHaveValueAsync("Alder Lane");
        await Assertions.Expect(phone.GetByLabel("European Union: CLP")).ToBeCheckedAsync();
        await phone.GetByLabel("Telephone of your poison center").FillAsync("030 19240");
        await phone.GetByLabel("Shelves, and how warm they are").FillAsync("bench 21 C\ncellar 13 C");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Keep these settings" }).TapAsync();
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Recorded");
        var settled = shop.Json("shop", "show");
        Assert.Equal(("Alder Lane", "clp", "metric", "a4-2x7-99.1x38.1", "030 19240"), (Text(settled, "name"), Text(settled, "rules"), Text(settled, "units"), Text(settled, "sheet"), Text(settled, "poisonCenter")));
        Assert.Equal(["bench 21", "cellar 13"], Shelves(settled));

        await phone.GetByRole(AriaRole.Link, new() { Name = "Measure a printer" }).TapAsync();
        await Assertions.Expect(phone.GetByLabel("Label stock")).ToHaveValueAsync("a4-2x7-99.1x38.1");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Write the page" }).TapAsync();
        var page = await phone.RunAndWaitForDownloadAsync(() => phone.GetByRole(AriaRole.Link, new() { Name = "Print the file" }).TapAsync());
        Assert.EndsWith(".pdf", page.SuggestedFilename, StringComparison.Ordinal);

        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95");
        await phone.GotoAsync("/");
        await phone.GetByRole(AriaRole.Link, new() { Name = "Settings, backup, devices" }).TapAsync();
        var backup = await phone.RunAndWaitForDownloadAsync(() => phone.GetByRole(AriaRole.Link, new() { Name = "Back up" }).TapAsync());
        var copy = Path.Combine(shop.Folder, "taken.db");
        await backup.SaveAsAsync(copy);
        using var fresh = new Shop();
        fresh.Json("restore", copy);
        Assert.Equal("Alder Lane", Text(fresh.Json("shop", "show"), "name"));
        Assert.Single(fresh.Json("shelf")["jars"]!.AsArray());

        // An empty shelf goes with its line; what is settled is there when it is opened again.
        await phone.GetByRole(AriaRole.Link, new() { Name = "Set up your shop" }).TapAsync();
        await Assertions.Expect(phone.GetByLabel("Shelves, and how warm they are")).ToHaveValueAsync("bench 21 °C\ncellar 13 °C");
        await phone.GetByLabel("Shelves, and how warm they are").FillAsync("bench 21 °C");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Keep these settings" }).TapAsync();
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Recorded");
        Assert.Equal(["bench 21"], Shelves(shop.Json("shop", "show")));
    }

    /// <summary>The file to take away is made aside; where there is no room for it, that is said, and the server goes on.</summary>
    [Fact]
    public async Task Without_room_for_a_backup_the_page_says_so()
    {
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label");
        using var server = new ServedShop(shop.StartUnder("env", $"TMPDIR={Path.Combine(shop.Folder, "nowhere")}", Place.Program, "serve", "--port", "0", "--json"));
        using var client = new HttpClient { BaseAddress = new Uri(server.Address) };
        using var answer = await client.GetAsync("/backup", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.StatusCode);
        Assert.Contains("JL650", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        using var list = await client.GetAsync("/", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, list.StatusCode);
    }

    private static string Text(JsonNode node, string key) => node[key]!.GetValue<string>();

    private static IEnumerable<string> Shelves(JsonNode settings) => settings["shelves"]!.AsArray().Select(shelf => string.Create(CultureInfo.InvariantCulture, $"{Text(shelf!, "name")} {shelf!["celsius"]!.GetValue<double>():0.#}"));

    private static string[] UseBys(Shop each) => [.. ((string[])["1", "2", "3"]).Select(jar => Text(each.Json("jar", jar, "--at", "2026-03-21")["jar"]!, "useBy"))];
}
