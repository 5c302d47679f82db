namespace JarLabel.Acceptance;

public sealed class PublishTests(Browser browser) : IClassFixture<Browser>, IDisposable
{
    private readonly Shop shop = new();

    private string Copy => Path.Combine(shop.Folder, "pocket");

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_copy_on_a_stick_is_read_without_a_server_and_tells_an_old_label()
    {
        Mix();
        Assert.Equal(0, shop.Run("thin", "1", "--to", "1", "--no-label").ExitCode);
        Assert.Equal(4, shop.Json("publish", Copy)["pages"]!.GetValue<int>());
        var page = await browser.Open("http://127.0.0.1", script: false);
        await page.GotoAsync("file://" + Path.Combine(Copy, "index.html"));
        await page.Locator(".jars a").First.ClickAsync();
        Assert.Contains("Garnet", await page.Locator("h1").InnerTextAsync(), StringComparison.OrdinalIgnoreCase);
        Assert.Equal(0, await page.Locator("form, .go").CountAsync());
        await page.GotoAsync("file://" + Path.Combine(Copy, "J", "1-9.1", "index.html"));
        Assert.Contains("Out-of-date label", await page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_copy_is_written_anew_over_an_earlier_one_and_over_nothing_else()
    {
        Mix();
        Assert.Equal(0, shop.Run("publish", Copy).ExitCode);
        Assert.Equal(0, shop.Run("note", "1", "strained twice").ExitCode);
        Assert.Equal(0, shop.Run("publish", Copy).ExitCode);
        Assert.Contains("strained twice", File.ReadAllText(Path.Combine(Copy, "J", "1-9", "index.html")), StringComparison.Ordinal);

        var mine = Directory.CreateDirectory(Path.Combine(shop.Folder, "mine")).FullName;
        File.WriteAllText(Path.Combine(mine, "index.html"), "mine");
        var run = shop.Run("publish", mine);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("JL618", run.Errors, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(mine, "index.html")));
    }

    [Fact]
    public void A_dry_run_writes_nothing()
    {
        Mix();
        Assert.Equal(3, shop.Json("publish", Copy, "--dry-run")["pages"]!.GetValue<int>());
        Assert.False(Directory.Exists(Copy));
    }

    private void Mix() => Assert.Equal(0, shop.Run("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label").ExitCode);
}
