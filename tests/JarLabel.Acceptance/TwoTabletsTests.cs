namespace JarLabel.Acceptance;

/// <summary>Two devices at one bench, and a bench without a pointer.</summary>
public sealed class TwoTabletsTests : IClassFixture<Browser>, IDisposable
{
    private readonly Browser browser;
    private readonly Shop shop = new();
    private readonly ServedShop server;

    public TwoTabletsTests(Browser browser)
    {
        this.browser = browser;
        shop.Json("shop", "set", "units", "metric");
        shop.Json("mix", "--grade", "garnet", "--cut", "2", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label");
        server = new(shop.Start("serve", "--port", "0", "--json"));
    }

    public void Dispose()
    {
        server.Dispose();
        shop.Dispose();
    }

    /// <summary>420 mL less 100 mL and 50 mL are 270 mL.</summary>
    [Fact]
    public async Task What_another_tablet_did_meanwhile_is_told_and_nothing_is_done_to_a_jar_that_nobody_saw()
    {
        var (one, other) = (await browser.Open(server.Address), await browser.Open(server.Address, width: 820));
        await one.GotoAsync("/J/1-9/use");
        await other.GotoAsync("/J/1-9/use");
        await one.Locator("#f-volume").FillAsync("100");
        await other.Locator("#f-volume").FillAsync("50");
        await other.Locator("#f-job").FillAsync("viola top");
        await Record(one);
        await Assertions.Expect(one.Locator("h1")).ToContainTextAsync("Recorded");
        await Record(other);
        await Assertions.Expect(other.Locator("[role=alert]")).ToBeVisibleAsync();
        await Assertions.Expect(other.Locator("#f-volume")).ToHaveValueAsync("50");
        await Assertions.Expect(other.Locator("#f-job")).ToHaveValueAsync("viola top");
        Assert.Equal(320, Holds(), 1.0);
        await Record(other);
        await Assertions.Expect(other.Locator("h1")).ToContainTextAsync("Recorded");
        Assert.Equal(270, Holds(), 1.0);
    }

    /// <summary>Tab, arrows, space and Enter alone: from the list to a recorded jar.</summary>
    [Fact]
    public async Task A_jar_is_mixed_without_a_pointer()
    {
        var desk = await browser.Open(server.Address, width: 1280);
        await desk.GotoAsync("/");
        await To(desk, "document.activeElement.textContent === 'Mix a jar'");
        await desk.Keyboard.PressAsync("Enter");
        await desk.WaitForURLAsync("**/mix");
        await To(desk, "document.activeElement.id === 'f-grade'");
        await desk.Keyboard.TypeAsync("garnet");
        await To(desk, "document.activeElement.id === 'f-solvent'");
        await desk.Keyboard.TypeAsync("ethanol 95");
        await To(desk, "document.activeElement.name === 'known'");
        await desk.Keyboard.PressAsync("ArrowDown");
        Assert.True(await desk.EvaluateAsync<bool>("document.activeElement.dataset.way === '2'"));
        await desk.Keyboard.PressAsync("ArrowUp");
        await To(desk, "document.activeElement.id === 'f-cut'");
        await desk.Keyboard.TypeAsync("2");
        await To(desk, "document.activeElement.id === 'f-pour'");
        await desk.Keyboard.TypeAsync("250");
        await Assertions.Expect(desk.Locator("#result .fig")).ToHaveTextAsync(["250 mL", "59.9 g"]);
        await To(desk, "document.activeElement.value === 'record'");
        await desk.Keyboard.PressAsync("Enter");
        await desk.WaitForURLAsync("**/done/**");
        Assert.Equal(2, shop.Json("shelf")["jars"]!.AsArray().Count);
    }

    /// <summary>Goes on by Tab until what has the focus, and shows it, is the one wanted.</summary>
    private static async Task To(IPage page, string wanted)
    {
        for (var steps = 0; steps < 60; steps++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>(wanted))
            {
                Assert.True(await page.EvaluateAsync<bool>("(() => { const box = document.activeElement.getBoundingClientRect(); return box.height > 0 && box.bottom > 0 && box.top < innerHeight; })()"), wanted);
                return;
            }
        }

        Assert.Fail($"Never reached by Tab: {wanted}");
    }

    private double Holds() => shop.Json("jar", "1")["jar"]!["volumeMilliliters"]!.GetValue<double>();

    private static Task Record(IPage page) => page.GetByRole(AriaRole.Button, new() { Name = "Record it" }).ClickAsync();
}
