namespace JarLabel.Acceptance;

/// <summary>On the home screen: an icon, and what was looked at last is readable without the network. A browser takes this machine's own address for a secure one.</summary>
public sealed class HomeScreenTests : IClassFixture<Browser>, IDisposable
{
    private readonly Browser browser;
    private readonly Shop shop = new();
    private ServedShop server;

    public HomeScreenTests(Browser browser)
    {
        this.browser = browser;
        foreach (var grade in (string[])["garnet", "blonde"])
        {
            shop.Json("mix", "--grade", grade, "--cut", "2", "--pour", "350 mL", "--solvent", "ethanol-95", "--job", "viola top", "--at", "2026-03-09");
        }

        server = new(shop.Start("serve", "--port", "0", "--json"));
    }

    public void Dispose()
    {
        server.Dispose();
        shop.Dispose();
    }

    [Fact]
    public async Task What_was_looked_at_stays_readable_and_says_of_when_it_is()
    {
        var phone = await browser.Open(server.Address, keeps: true);
        await phone.GotoAsync("/");
        await phone.EvaluateAsync("navigator.serviceWorker.ready.then(() => new Promise(done => navigator.serviceWorker.controller ? done() : navigator.serviceWorker.addEventListener('controllerchange', done)))");
        await phone.GotoAsync("/J/1-9");
        await phone.GotoAsync("/");
        await Assertions.Expect(phone.Locator("main")).Not.ToContainTextAsync("No answer");
        server.Stop("-KILL");
        await phone.GotoAsync("/J/1-9");
        await Assertions.Expect(phone.Locator("main [role=status]").First).ToContainTextAsync("No answer from the shop's computer. This page is as it was on ");
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Jar 1-9");
        await phone.GotoAsync("/");
        await Assertions.Expect(phone.Locator(".jars")).ToContainTextAsync("jar 2-7");
        Assert.True(await phone.EvaluateAsync<bool>("document.fonts.load('16px Label').then(faces => faces.length > 0)"));
        await phone.GotoAsync("/J/2-7");
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("No answer");

        // What records is never kept.
        await Assert.ThrowsAsync<PlaywrightException>(() => phone.GotoAsync("/mix"));
        var port = new Uri(server.Address).Port;
        server.Dispose();
        shop.Json("use", "1", "50 mL", "--at", "2026-03-12");
        server = new(shop.Start("serve", "--port", $"{port}", "--json"));
        await phone.GotoAsync("/J/1-9");
        await Assertions.Expect(phone.Locator("main")).Not.ToContainTextAsync("No answer");
        await Assertions.Expect(phone.Locator("main")).ToContainTextAsync("12 Mar 2026");
    }

    [Fact]
    public async Task The_icon_and_what_names_it_are_there()
    {
        var phone = await browser.Open(server.Address);
        await phone.GotoAsync("/");
        var manifest = JsonNode.Parse(await (await phone.APIRequest.GetAsync("/jars.webmanifest")).TextAsync())!;
        foreach (var icon in manifest["icons"]!.AsArray())
        {
            var image = await phone.APIRequest.GetAsync(icon!["src"]!.GetValue<string>());
            Assert.Equal((200, "image/png"), (image.Status, image.Headers["content-type"]));
            Assert.Equal(icon["sizes"]!.GetValue<string>(), await phone.EvaluateAsync<string>("src => new Promise((done, lost) => { const one = new Image(); one.onload = () => done(`${one.width}x${one.height}`); one.onerror = lost; one.src = src; })", icon["src"]!.GetValue<string>()));
        }

        Assert.Equal(404, (await phone.APIRequest.GetAsync("/icon-181.png")).Status);
        Assert.Equal(1, await phone.Locator("link[rel=manifest]").CountAsync());
    }

    [Fact]
    public async Task A_label_that_is_written_is_reached_from_its_jar_and_paper_says_of_when_it_is()
    {
        var phone = await browser.Open(server.Address);
        await phone.GotoAsync("/J/1-9");
        var label = await phone.APIRequest.GetAsync((await phone.GetByRole(AriaRole.Link, new() { Name = "Label as PDF" }).GetAttributeAsync("href"))!);
        Assert.Equal((200, "application/pdf"), (label.Status, label.Headers["content-type"]));
        shop.Json("thin", "1", "--to", "1", "--no-label", "--at", "2026-03-12");
        await phone.ReloadAsync();
        await Assertions.Expect(phone.GetByRole(AriaRole.Link, new() { Name = "Label as PDF" })).ToHaveCountAsync(0);
        await Assertions.Expect(phone.Locator(".dated")).ToBeHiddenAsync();
        await phone.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(phone.Locator(".dated")).ToContainTextAsync(new Regex("As of [0-9]+ [A-Z][a-z]+ 20[0-9]+, [0-9:]+"));
    }
}
