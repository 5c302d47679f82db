namespace JarLabel.Acceptance;

/// <summary>With wet hands: what one knows is tapped, at the scale there are only the amounts, and the next swirl is counted.</summary>
public sealed class BenchHandsTests : IClassFixture<Browser>, IDisposable
{
    private readonly Browser browser;
    private readonly Shop shop = new();
    private readonly ServedShop server;

    public BenchHandsTests(Browser browser)
    {
        this.browser = browser;
        shop.Json("shop", "set", "units", "metric");
        server = new(shop.Start("serve", "--port", "0", "--json"));
    }

    public void Dispose()
    {
        server.Dispose();
        shop.Dispose();
    }

    /// <summary>By hand: at 2 lb a gallon 50 g take 0.05512 gallons, 209 mL.</summary>
    [Fact]
    public async Task One_field_stands_for_what_one_knows_and_the_others_are_neither_seen_nor_sent()
    {
        var phone = await Open("2");
        await phone.Locator("#f-pour").FillAsync("350");
        await Assertions.Expect(Figures(phone)).ToHaveTextAsync(["350 mL", "83.9 g"]);
        await phone.GetByRole(AriaRole.Radio, new() { Name = "flakes to use" }).TapAsync();
        await Assertions.Expect(phone.Locator("#f-pour")).ToBeHiddenAsync();
        await phone.Locator("#f-flakes").FillAsync("50");
        await Assertions.Expect(Figures(phone)).ToHaveTextAsync(["209 mL", "50 g"]);
        await phone.GetByRole(AriaRole.Radio, new() { Name = "alcohol to pour" }).TapAsync();
        await Assertions.Expect(phone.Locator("#f-flakes")).ToBeHiddenAsync();
        await Assertions.Expect(Figures(phone)).ToHaveTextAsync(["350 mL", "83.9 g"]);
        await phone.GetByLabel("Alcohol to pour: unit").SelectOptionAsync("L");
        await phone.Locator("#f-pour").FillAsync("0.7");
        await Assertions.Expect(Figures(phone)).ToHaveTextAsync(["700 mL", "168 g"]);
        await phone.Locator("[data-for=pour]").GetByRole(AriaRole.Button, new() { Name = "250 mL" }).TapAsync();
        await Assertions.Expect(phone.GetByLabel("Alcohol to pour: unit")).ToHaveValueAsync("mL");
        await Record(phone);
        Assert.Equal(300, shop.Json("jar", "1")["jar"]!["volumeMilliliters"]!.GetValue<double>(), 1.0); // 250 mL, and 59.9 g of shellac of 1.2 g/mL
    }

    /// <summary>A metre away 22 minutes of arc are 6.4 mm.</summary>
    [Fact]
    public async Task At_the_scale_there_are_only_the_amounts_and_they_are_ticked_and_recorded_from_there()
    {
        var phone = await Open("2");
        await phone.Locator("#f-pour").FillAsync("350");
        await Assertions.Expect(Figures(phone)).ToHaveTextAsync(["350 mL", "83.9 g"]);
        await phone.GetByRole(AriaRole.Button, new() { Name = "Weigh it out" }).TapAsync();
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToBeHiddenAsync();
        var figures = phone.Locator(".scale .fig");
        await Assertions.Expect(figures).ToHaveTextAsync(["350 mL", "83.9 g"]);
        Assert.InRange((await figures.First.BoundingBoxAsync())!.Height, 7 / 25.4 * 96 / 0.72, 300);
        Assert.InRange((await phone.Locator(".weigh").First.BoundingBoxAsync())!.Height, 150, 400);
        await phone.Locator(".weigh").First.TapAsync();
        await Assertions.Expect(phone.Locator("body")).Not.ToHaveClassAsync(new Regex("\\bin\\b"));
        await phone.ReloadAsync();
        await Assertions.Expect(phone.Locator(".weigh input").First).ToBeCheckedAsync();
        await Assertions.Expect(phone.Locator(".weigh input").Last).Not.ToBeCheckedAsync();
        await phone.Locator(".weigh").Last.TapAsync();
        await Assertions.Expect(phone.Locator("body")).ToHaveClassAsync(new Regex("\\bin\\b"));
        await phone.GetByRole(AriaRole.Button, new() { Name = "Back to the recipe" }).TapAsync();
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToHaveValueAsync("2");
        await Assertions.Expect(figures).ToHaveCountAsync(2);
        await Assertions.Expect(figures.First).ToBeHiddenAsync();
        await phone.GetByRole(AriaRole.Button, new() { Name = "Weigh it out" }).TapAsync();
        await Record(phone);
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Recorded");
        Assert.Single(shop.Json("shelf")["jars"]!.AsArray());

        // A second batch as large as the first is not in yet.
        await phone.GotoAsync("/mix?grade=garnet&solvent=ethanol-95&cut=2&pour=350+mL");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Weigh it out" }).TapAsync();
        await Assertions.Expect(phone.Locator(".weigh input:checked")).ToHaveCountAsync(0);
        await Assertions.Expect(figures).ToHaveTextAsync(["350 mL", "83.9 g"]);
    }

    [Fact]
    public async Task The_next_swirl_is_counted_over_pages_and_begins_anew_when_it_was_done()
    {
        shop.Json("mix", "--grade", "garnet", "--cut", "2", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label");
        var phone = await browser.Open(server.Address);
        await phone.GotoAsync("/J/1-9");
        var timer = phone.Locator(".timer");
        await Assertions.Expect(timer).ToContainTextAsync(new Regex("Next swirl in (2 h 0 min|1 h 5[89] min)"));
        await phone.EvaluateAsync("localStorage.setItem('swirl 1-9', Date.now() + 25 * 60000 + 1000 * 7200)");
        await phone.ReloadAsync();
        await Assertions.Expect(timer).ToContainTextAsync("Next swirl in 2 h 2");
        await phone.EvaluateAsync("document.querySelector('[data-swirl]').remove()");
        await phone.GotoAsync("/J/1-9");
        await phone.EvaluateAsync("localStorage.removeItem('swirl 1-9')");
        await phone.GotoAsync("/bag/add");
        await Assertions.Expect(phone.Locator("button[value=record]")).ToBeVisibleAsync();
        Assert.Equal(0, await phone.GetByText("Weigh it out").And(phone.Locator(":visible")).CountAsync()); // nothing to pour, nothing to weigh
        await phone.GotoAsync("/J/1-9");
        await phone.RouteAsync("**/J/1-9", async route =>
        {
            var answer = await route.FetchAsync();
            await route.FulfillAsync(new() { Response = answer, Body = Regex.Replace(await answer.TextAsync(), "data-ago=\"[0-9]+\"", "data-ago=\"7300\"") });
        });
        await phone.ReloadAsync();
        await Assertions.Expect(timer).ToContainTextAsync("Swirl it now");
        await Assertions.Expect(phone).ToHaveTitleAsync(new Regex("^Swirl it: Jar 1-9"));
        await timer.GetByRole(AriaRole.Button, new() { Name = "Swirled" }).TapAsync();
        await Assertions.Expect(timer).ToContainTextAsync(new Regex("Next swirl in (2 h 0 min|1 h 59 min)"));
        await phone.ReloadAsync();
        await Assertions.Expect(timer).ToContainTextAsync(new Regex("Next swirl in (2 h 0 min|1 h 5[89] min)"));
    }

    private async Task<IPage> Open(string cut)
    {
        var phone = await browser.Open(server.Address);
        await phone.GotoAsync("/mix");
        await phone.Locator("#f-grade").SelectOptionAsync("garnet");
        await phone.Locator("#f-solvent").SelectOptionAsync("ethanol-95");
        await phone.Locator("#f-cut").FillAsync(cut);
        return phone;
    }

    private static ILocator Figures(IPage phone) => phone.Locator("#result .fig");

    private static async Task Record(IPage phone)
    {
        await phone.GetByRole(AriaRole.Button, new() { Name = "Record the jar and its label" }).TapAsync();
        await phone.WaitForURLAsync("**/done/**");
    }
}
