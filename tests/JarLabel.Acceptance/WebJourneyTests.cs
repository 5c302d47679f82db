namespace JarLabel.Acceptance;

/// <summary>The pages of <c>serve</c> in a real browser, as somebody at the bench goes through them.</summary>
public sealed class WebJourneyTests : IClassFixture<Browser>, IDisposable
{
    private readonly Browser browser;
    private readonly Shop shop = new();
    private readonly ServedShop server;

    public WebJourneyTests(Browser browser)
    {
        this.browser = browser;
        var port = FreePort();
        Ok("shop", "set", "base-url", $"http://127.0.0.1:{port}");
        Ok("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--container", "1 L");
        server = new ServedShop(shop.Start("serve", "--port", $"{port}", "--json"));
    }

    public void Dispose()
    {
        server.Dispose();
        shop.Dispose();
    }

    [Fact]
    public async Task A_phone_scans_a_jar_thins_it_and_takes_the_new_label_home()
    {
        var scanned = CodeOn(Directory.GetFiles(shop.Labels).Single());
        Assert.StartsWith("HTTP://127.0.0.1:", scanned, StringComparison.Ordinal);
        var phone = await browser.Open(server.Address);
        await phone.GotoAsync(scanned);
        Assert.Contains("1½", await phone.Locator("h1").InnerTextAsync(), StringComparison.Ordinal);

        await phone.GetByRole(AriaRole.Link, new() { Name = "Thin", Exact = true }).TapAsync();
        await phone.GetByLabel("Thin to the cut").FillAsync("1");
        await Assertions.Expect(phone.Locator("#live")).ToContainTextAsync("of ethanol 95 %, or weigh");
        await Assertions.Expect(phone.Locator("#live img")).ToHaveJSPropertyAsync("complete", true);
        Assert.True(await phone.Locator("#live img").EvaluateAsync<int>("image => image.naturalWidth") > 100);
        await phone.GetByRole(AriaRole.Button, new() { Name = "Record it and its label" }).TapAsync();
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Recorded");

        // 350 mL at 1.5 lb makes 402 mL; to 1 lb it takes half as much alcohol again as was poured: 175 mL.
        await Assertions.Expect(phone.Locator("main")).ToContainTextAsync("(175 mL)");
        var download = await phone.RunAndWaitForDownloadAsync(() => phone.GetByRole(AriaRole.Link, new() { Name = "Label as PDF" }).TapAsync());
        var saved = Path.Combine(shop.Folder, "phone.pdf");
        await download.SaveAsAsync(saved);
        Assert.EndsWith("/J/1-9.2", CodeOn(saved), StringComparison.Ordinal);

        await phone.GotoAsync(scanned);
        await Assertions.Expect(phone.Locator("[role=alert]")).ToContainTextAsync("Out-of-date label");
    }

    [Fact]
    public async Task Wrong_input_is_told_while_typing_and_beside_its_field_and_nothing_typed_is_lost()
    {
        var phone = await browser.Open(server.Address);
        var complaints = Complaints(phone);
        await phone.GotoAsync("/mix");
        await phone.GetByLabel("Flakes", new() { Exact = true }).SelectOptionAsync("garnet");
        await phone.GetByLabel("Alcohol", new() { Exact = true }).SelectOptionAsync("ethanol-95");
        await phone.GetByLabel("Cut", new() { Exact = true }).FillAsync("much");
        await Assertions.Expect(phone.Locator("#live")).ToContainTextAsync("JL111");
        await phone.GetByLabel("Alcohol to pour", new() { Exact = true }).FillAsync("3 oz");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Record the jar and its label" }).TapAsync();
        await Assertions.Expect(phone.Locator("[role=alert]")).ToContainTextAsync("Nothing was recorded");
        await Assertions.Expect(phone.Locator("#h-cut")).ToContainTextAsync("JL111");
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToHaveValueAsync("much");
        await Assertions.Expect(phone.GetByLabel("Cut", new() { Exact = true })).ToHaveAttributeAsync("aria-invalid", "true");

        await phone.GetByLabel("Cut", new() { Exact = true }).FillAsync("2");
        await phone.GetByLabel("Alcohol to pour", new() { Exact = true }).FillAsync("1/2 pt");
        await phone.GetByRole(AriaRole.Button, new() { Name = "Record the jar and its label" }).TapAsync();
        await Assertions.Expect(phone.Locator("h1")).ToContainTextAsync("Recorded");
        Assert.DoesNotContain(complaints, complaint => !complaint.Contains("422", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Two_tablets_thin_the_same_jar_and_the_second_is_told()
    {
        var (one, other) = (await browser.Open(server.Address, 820), await browser.Open(server.Address, 820));
        foreach (var tablet in (IPage[])[one, other])
        {
            await tablet.GotoAsync("/J/1-9/thin");
            await tablet.GetByLabel("Thin to the cut").FillAsync("1");
        }

        await one.GetByRole(AriaRole.Button, new() { Name = "Record it and its label" }).ClickAsync();
        await Assertions.Expect(one.Locator("h1")).ToContainTextAsync("Recorded");
        await other.GetByRole(AriaRole.Button, new() { Name = "Record it and its label" }).ClickAsync();
        await Assertions.Expect(other.Locator("[role=alert]")).ToContainTextAsync("JL150");
        Assert.Equal(2, shop.Json("jar", "1")["jar"]!["revision"]!.GetValue<int>());
    }

    [Fact]
    public async Task Without_script_a_batch_is_worked_out_and_recorded_all_the_same()
    {
        var old = await browser.Open(server.Address, script: false);
        await old.GotoAsync("/mix");
        await old.GetByLabel("Flakes", new() { Exact = true }).SelectOptionAsync("blonde");
        await old.GetByLabel("Alcohol", new() { Exact = true }).SelectOptionAsync("ethanol-95");
        await old.GetByLabel("Cut", new() { Exact = true }).FillAsync("2");
        await old.GetByLabel("Alcohol to pour", new() { Exact = true }).FillAsync("1 pt");
        await old.GetByRole(AriaRole.Button, new() { Name = "Work it out" }).TapAsync();

        // Two pounds a gallon are a quarter of a pound a pint: 4 oz.
        await Assertions.Expect(old.Locator("#live")).ToContainTextAsync("4 oz (113 g)");
        Assert.Null(shop.Json("shelf")["jars"]!.AsArray().FirstOrDefault(jar => jar!["number"]!.GetValue<int>() == 2));
        await old.GetByRole(AriaRole.Button, new() { Name = "Record the jar and its label" }).TapAsync();
        await Assertions.Expect(old.Locator("h1")).ToContainTextAsync("Jar 2-7");
    }

    private static List<string> Complaints(IPage page)
    {
        var complaints = new List<string>();
        page.Console += (_, said) => complaints.AddRange(said.Type == "error" ? [said.Text] : []);
        page.PageError += (_, fault) => complaints.Add(fault);
        return complaints;
    }

    /// <summary>What two outside programs read from a label's code.</summary>
    private string CodeOn(string pdf)
    {
        var picture = Path.Combine(shop.Folder, "seen");
        OutsideProgram.PdfToPpm.Run("-r", "300", "-png", "-singlefile", pdf, picture);
        return OutsideProgram.ZbarImg.Run("--quiet", "--raw", picture + ".png").Trim();
    }

    private void Ok(params string[] arguments)
    {
        var run = shop.Run(arguments);
        Assert.True(run.ExitCode == 0, run.Errors);
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
