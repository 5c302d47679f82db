namespace JarLabel.Acceptance;

/// <summary>The forms on a phone as it happens: slow answers, a server that is gone and comes back, the way back, an answer that was lost.</summary>
public sealed class BenchFormTests : IClassFixture<Browser>, IDisposable
{
    private readonly Browser browser;
    private readonly Shop shop = new();
    private ServedShop server;

    public BenchFormTests(Browser browser)
    {
        this.browser = browser;
        shop.Json("shop", "set", "units", "metric");
        server = new(shop.Start("serve", "--port", $"{FreePort()}", "--json"));
    }

    public void Dispose()
    {
        server.Dispose();
        shop.Dispose();
    }

    /// <summary>By hand: 350 mL are 0.09246 gal; at 2 lb that is 83.9 g of flakes, at 3 lb 126 g.</summary>
    [Fact]
    public async Task A_result_that_no_longer_fits_is_hollow_at_once_and_comes_back_with_its_own_answer()
    {
        var phone = await Open();
        await Fill(phone, "2");
        await Assertions.Expect(Figures(phone)).ToHaveTextAsync(["350 mL", "83.9 g"]);
        await phone.RouteAsync("**/mix", async route =>
        {
            await Task.Delay(4000);
            await route.ContinueAsync();
        });
        await phone.GetByLabel("Cut", new() { Exact = true }).FillAsync("3");
        Assert.Equal("rgba(0, 0, 0, 0)", await Figures(phone).First.EvaluateAsync<string>("figure => getComputedStyle(figure).color"));
        await Assertions.Expect(phone.Locator("#result")).ToContainTextAsync("working it out");
        await Assertions.Expect(phone.Locator("#result")).ToHaveAttributeAsync("aria-busy", "true");
        await Assertions.Expect(Figures(phone)).ToHaveTextAsync(["350 mL", "126 g"]);
        await Assertions.Expect(phone.Locator("#result")).ToHaveAttributeAsync("aria-busy", "false");
        Assert.NotEqual("rgba(0, 0, 0, 0)", await Figures(phone).First.EvaluateAsync<string>("figure => getComputedStyle(figure).color"));

        // The largest thing on the page, over 7 mm at 96 dots an inch, and in sight while one types below.
        await phone.GetByLabel("The jar holds", new() { Exact = true }).ScrollIntoViewIfNeededAsync();
        var box = (await Figures(phone).First.BoundingBoxAsync())!;
        Assert.InRange(box.Height, 7 / 25.4 * 96 / 0.72, 200);
        Assert.InRange(box.Y, 0, 844 - box.Height);
    }

    [Fact]
    public async Task A_server_that_is_gone_leaves_no_figures_and_loses_nothing_and_comes_back_to_one_jar()
    {
        var phone = await Open();
        await Fill(phone, "2");
        await Assertions.Expect(Figures(phone)).ToHaveCountAsync(2);
        var port = new Uri(server.Address).Port;
        server.Stop("-KILL");
        await phone.GetByLabel("Cut", new() { Exact = true }).FillAsync("3");
        await Assertions.Expect(phone.Locator("#result")).ToContainTextAsync("What you typed is kept");
        await Assertions.Expect(Figures(phone)).ToHaveCountAsync(0);
        server.Dispose();
        server = new(shop.Start("serve", "--port", $"{port}", "--json"));
        await phone.GetByRole(AriaRole.Button, new() { Name = "Try again" }).TapAsync();
        await Assertions.Expect(Figures(phone)).ToHaveTextAsync(["350 mL", "126 g"]);

        // The form is of the run before: nobody knows whether it was recorded, and what was typed stands there.
        await Record(phone);
        await Assertions.Expect(phone.Locator("[role=alert]")).ToBeVisibleAsync();
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToHaveValueAsync("3");
        await Record(phone);
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Recorded");
        Assert.Single(shop.Json("shelf")["jars"]!.AsArray());
    }

    [Fact]
    public async Task What_was_typed_is_there_on_the_way_back_and_not_in_a_form_that_is_opened_afresh()
    {
        var phone = await Open();
        await Fill(phone, "2");
        await phone.GetByRole(AriaRole.Link, new() { Name = "All jars" }).First.TapAsync();
        await phone.WaitForURLAsync("**/");
        await phone.GoBackAsync();
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToHaveValueAsync("2");
        await Assertions.Expect(Figures(phone)).ToHaveTextAsync(["350 mL", "83.9 g"]);
        await phone.ReloadAsync();
        await Assertions.Expect(phone.GetByLabel("Alcohol to pour", new() { Exact = true })).ToHaveValueAsync("350 mL");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Start afresh" }).TapAsync();
        await Assertions.Expect(phone.GetByLabel("Alcohol to pour", new() { Exact = true })).ToHaveValueAsync("");
        await phone.ReloadAsync();
        await Assertions.Expect(phone.GetByLabel("Alcohol to pour", new() { Exact = true })).ToHaveValueAsync("");
        await Fill(phone, "2");
        await phone.GotoAsync("/");
        await phone.GotoAsync("/mix");
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToHaveValueAsync("");

        await Fill(phone, "2");
        await Record(phone);
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Recorded");
        await phone.GotoAsync("/mix");
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToHaveValueAsync("");
        Assert.Single(shop.Json("shelf")["jars"]!.AsArray());
    }

    /// <summary>Recorded, and the answer never came: sent again it is the same jar.</summary>
    [Fact]
    public async Task An_answer_that_was_lost_makes_no_second_jar()
    {
        var phone = await Open();
        await Fill(phone, "2");
        await Assertions.Expect(Figures(phone)).ToHaveCountAsync(2);
        await phone.RouteAsync("**/mix", async route =>
        {
            if (route.Request.Method == "POST" && route.Request.PostData!.Contains("do=record", StringComparison.Ordinal))
            {
                await route.FetchAsync(new() { MaxRedirects = 0 });
                await route.AbortAsync();
            }
            else
            {
                await route.ContinueAsync();
            }
        });
        await Record(phone);
        for (var tries = 0; tries < 100 && shop.Json("shelf")["jars"]!.AsArray().Count == 0; tries++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
        }

        await phone.UnrouteAllAsync();
        Assert.Single(shop.Json("shelf")["jars"]!.AsArray());
        await phone.GotoAsync("/mix");
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToHaveValueAsync("2");
        await Record(phone);
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Recorded");
        Assert.Single(shop.Json("shelf")["jars"]!.AsArray());
    }

    [Fact]
    public async Task What_is_put_right_is_no_fault_any_more_and_the_title_counts_what_is_left()
    {
        var phone = await Open();
        await Fill(phone, "much");
        await Record(phone);
        await Assertions.Expect(phone).ToHaveTitleAsync(new Regex("^1 to put right: Mix a jar$"));
        await Assertions.Expect(phone.Locator("[role=alert]")).ToBeFocusedAsync();
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToHaveAttributeAsync("aria-invalid", "true");
        await Assertions.Expect(phone.Locator("#h-cut .fault")).ToBeVisibleAsync();
        await phone.GetByLabel("Cut", new() { Exact = true }).FillAsync("2");
        await Assertions.Expect(phone.Locator("#h-cut .fault")).ToHaveCountAsync(0);
        Assert.Null(await phone.GetByLabel("Cut", new() { Exact = true }).GetAttributeAsync("aria-invalid"));
        await Assertions.Expect(phone).ToHaveTitleAsync("Mix a jar");
        await Assertions.Expect(phone.Locator("[role=alert]")).ToHaveCountAsync(0);

        // What was typed after a fault came back is no less kept.
        await phone.ReloadAsync();
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToHaveValueAsync("2");
        await Fill(phone, "wrong");
        await Record(phone);
        await Assertions.Expect(phone.Locator("[role=alert]")).ToBeVisibleAsync();
        await phone.GetByLabel("Cut", new() { Exact = true }).FillAsync("2.5");
        await phone.GotoAsync("/");
        await phone.GoBackAsync();
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToHaveValueAsync("2.5");
    }

    /// <summary>The labels' typeface, from the shop itself, kept by the browser; a page asks nobody else for anything.</summary>
    [Fact]
    public async Task The_pages_are_set_in_the_labels_typeface()
    {
        var phone = await Open();
        Assert.True(await phone.EvaluateAsync<bool>("document.fonts.ready.then(() => [...document.fonts].some(face => face.family === 'Label' && face.status === 'loaded'))"));
        var font = await phone.APIRequest.GetAsync("/type/400.ttf");
        Assert.Equal((200, "font/ttf"), (font.Status, font.Headers["content-type"]));
        Assert.Equal(404, (await phone.APIRequest.GetAsync("/type/500.ttf")).Status);
    }

    /// <summary>With wet hands: settled, mixed and tested by tapping. By hand: 250 mL are 0.06604 gal; at 1½ lb that is 44.9 g.</summary>
    [Fact]
    public async Task From_an_empty_folder_to_a_tested_jar_by_tapping()
    {
        using var empty = new Shop();
        using var served = new ServedShop(empty.Start("serve", "--port", $"{FreePort()}", "--json"));
        var phone = await browser.Open(served.Address);
        await phone.GotoAsync("/");
        await Assertions.Expect(phone.Locator("main")).ToContainTextAsync("Set up your shop");
        await phone.GetByRole(AriaRole.Link, new() { Name = "Set up your shop" }).TapAsync();
        await phone.GetByLabel("Metric: mL and g").TapAsync();
        await phone.GetByRole(AriaRole.Button, new() { Name = "Keep these settings" }).TapAsync();
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Recorded");

        await phone.GotoAsync("/mix");
        await phone.GetByLabel("Flakes", new() { Exact = true }).SelectOptionAsync("garnet");
        await phone.GetByLabel("Alcohol", new() { Exact = true }).SelectOptionAsync("ethanol-95");
        var cut = phone.Locator("[data-for=cut]").GetByRole(AriaRole.Button, new() { Name = "1½" });
        await cut.TapAsync();
        await phone.Locator("[data-for=pour]").GetByRole(AriaRole.Button, new() { Name = "250 mL" }).TapAsync();
        await Assertions.Expect(Figures(phone)).ToHaveTextAsync(["250 mL", "44.9 g"]);
        await Assertions.Expect(cut).ToHaveAttributeAsync("aria-pressed", "true");
        await phone.GetByLabel("Cut", new() { Exact = true }).FillAsync("1.6");
        await Assertions.Expect(cut).ToHaveAttributeAsync("aria-pressed", "false");
        await cut.TapAsync();
        await Record(phone);
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Recorded");

        await phone.GotoAsync("/J/1-9/test");
        Assert.Equal(0, await phone.Locator("input[name=verdict]:checked").CountAsync());
        await phone.GetByRole(AriaRole.Button, new() { Name = "Record the test" }).TapAsync();
        await Assertions.Expect(phone).ToHaveTitleAsync(new Regex("^1 to put right"));
        await phone.GetByLabel("stayed soft or tacky").TapAsync();
        await phone.GetByRole(AriaRole.Button, new() { Name = "Record the test" }).TapAsync();
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Recorded");
        Assert.False(empty.Json("jar", "1")["jar"]!["testPassed"]!.GetValue<bool>());
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private async Task<IPage> Open()
    {
        var phone = await browser.Open(server.Address);
        await phone.GotoAsync("/mix");
        return phone;
    }

    private static async Task Fill(IPage phone, string cut)
    {
        await phone.GetByLabel("Flakes", new() { Exact = true }).SelectOptionAsync("garnet");
        await phone.GetByLabel("Alcohol", new() { Exact = true }).SelectOptionAsync("ethanol-95");
        await phone.GetByLabel("Alcohol to pour", new() { Exact = true }).FillAsync("350 mL");
        await phone.GetByLabel("Cut", new() { Exact = true }).FillAsync(cut);
    }

    private static ILocator Figures(IPage phone) => phone.Locator("#result .fig");

    private static Task Record(IPage phone) => phone.GetByRole(AriaRole.Button, new() { Name = "Record the jar and its label" }).TapAsync();
}
