using Deque.AxeCore.Playwright;

namespace JarLabel.Acceptance;

/// <summary>Every page held to the rules of an accessibility checker, in both colour schemes, from the smallest phone to a desk.</summary>
public sealed class AccessibilityTests(Browser browser) : IClassFixture<Browser>, IDisposable
{
    private const string IsWide = "document.documentElement.scrollWidth > document.documentElement.clientWidth";

    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    /// <summary>A form with what it comes to on top.</summary>
    private const string Worked = "/mix?grade=garnet&solvent=ethanol-95&cut=2&pour=1%20pt";

    /// <summary>The settings with what is rarer unfolded.</summary>
    private const string Settling = "/shop/setup?aging=2";

    [Fact]
    public async Task No_page_breaks_a_rule_or_is_wider_than_its_screen()
    {
        foreach (var cut in (string[])["1.5", "2"])
        {
            Assert.Equal(0, shop.Run("mix", "--grade", "garnet", "--cut", cut, "--pour", "350 mL", "--solvent", "denatured-unknown", "--no-label", "--job", "viola top").ExitCode);
        }

        Assert.Equal(0, shop.Run("thin", "2", "--to", "1", "--no-label").ExitCode);
        Assert.Equal(0, shop.Run("use", "1", "50 mL", "--job", "viola top").ExitCode);
        using var server = new ServedShop(shop.Start("serve", "--port", "0", "--json"));
        var faults = new List<string>();
        foreach (var (width, dark, paths) in ((int, bool, string[])[])[(390, false, ["/", "/scan", Worked, "/can", "/J/1-9/label", "/J/1-9/test", "/J/1-9/decant?into=3+x+50+mL", "/J/99", Settling, "/shop/show", "/devices"]), (390, true, ["/J/2-7.1", "/scan", Worked, "/J/1-9/test", Settling])])
        {
            var page = await browser.Open(server.Address, width, dark);
            foreach (var path in paths)
            {
                await page.GotoAsync(path);
                faults.AddRange(await Faults(page, path));
            }

            await page.GotoAsync("/J/1-9/thin");
            await page.GetByLabel("Thin to the cut").FillAsync("9");
            await page.GetByRole(AriaRole.Button, new() { Name = "Record it and its label" }).ClickAsync();
            await Assertions.Expect(page.Locator("[role=alert]")).ToBeVisibleAsync();
            faults.AddRange(await Faults(page, "a refused form"));
        }

        foreach (var width in (int[])[320, 1200])
        {
            var page = await browser.Open(server.Address, width);
            foreach (var path in (string[])["/", "/scan", "/shelf", "/solvents", "/plan?for=pad&area=14+sq+ft&coats=3&grade=garnet&solvent=ethanol-95", "/can", "/J/1-9.1", "/J/2-7.1", "/mix", Worked, "/J/1-9/decant?into=3+x+50+mL", "/J/1-9/thin", "/J/1-9/label", "/J/1-9/test", "/J/99", Settling, "/shop/show", "/devices"])
            {
                await page.GotoAsync(path);
                faults.AddRange(await page.EvaluateAsync<bool>(IsWide) ? [$"{path} is wider than {width}"] : []);
            }
        }

        Assert.Empty(faults);
    }

    [Fact]
    public async Task What_can_be_touched_is_large_enough_for_a_finger()
    {
        Assert.Equal(0, shop.Run("mix", "--grade", "garnet", "--cut", "2", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label").ExitCode);
        using var server = new ServedShop(shop.Start("serve", "--port", "0", "--json"));
        var page = await browser.Open(server.Address, 320);
        foreach (var path in (string[])["/", "/scan", "/J/1-9", Worked, "/can", "/J/1-9/thin", "/J/1-9/test", Settling, "/shop/show", "/devices"])
        {
            await page.GotoAsync(path);
            var small = await page.EvaluateAsync<string[]>(
                "() => [...document.querySelectorAll('button, .go, nav a, .pick, input:not([type=hidden], [type=checkbox], [type=radio]), select, summary, .jars a')].filter(e => e.checkVisibility() && e.getBoundingClientRect().height < 48).map(e => e.outerHTML)");
            Assert.Empty(small);
        }
    }

    // 2.07 is wider than any fraction; broken within itself it reads as 2.0.
    [Theory]
    [InlineData(320)]
    [InlineData(390)]
    public async Task A_cut_in_decimals_stands_on_one_line_of_a_phone(int width)
    {
        foreach (var cut in (string[])["2", "2.07"])
        {
            Assert.Equal(0, shop.Run("mix", "--grade", "garnet", "--cut", cut, "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label").ExitCode);
        }

        using var server = new ServedShop(shop.Start("serve", "--port", "0", "--json"));
        var page = await browser.Open(server.Address, width);
        await page.GotoAsync("/");
        var cuts = await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('.jars b')].map(e => { const r = document.createRange(); r.selectNodeContents(e); return e.textContent + ' ' + r.getClientRects().length; })");
        Assert.Equal(["2 1", "2.07 1"], cuts.Order(StringComparer.Ordinal));
        Assert.False(await page.EvaluateAsync<bool>(IsWide));
    }

    private static async Task<IEnumerable<string>> Faults(IPage page, string where)
    {
        var axe = await page.RunAxe();
        Assert.NotEmpty(axe.Passes);
        return [.. axe.Violations.Select(v => $"{where}: {v.Id}, {v.Nodes[0].Html}")];
    }
}
