using JarLabel.Operations.Recording;
using JarLabel.Web.Guards;

namespace JarLabel.Tests.Web;

/// <summary>The shop is kept from its pages: a backup is taken away, and so is a device's right to record.</summary>
public sealed class KeepPageTests : IDisposable
{
    private readonly WebShop shop = new(IPAddress.Loopback, open: true);
    private readonly ScratchFolder folder = new();

    public void Dispose()
    {
        shop.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task A_backup_is_taken_away_and_brings_the_shop_back()
    {
        await Pair("bench tablet");
        var settings = await shop.Get("/shop/show");
        Assert.All((string[])["/backup", "/verify", "/check", "/devices"], way => Assert.Contains($"href=\"{way}\"", settings.Text, StringComparison.Ordinal));
        Assert.Contains("It is brought back at the shop's computer itself", settings.Seen, StringComparison.Ordinal);
        var before = Held();
        var (file, headers) = await Bytes("/backup");
        Assert.Equal("attachment; filename=\"shop-backup-2026-03-09.db\"", headers);
        Assert.Equal(before, Held());
        var copy = folder["copy.db"];
        await File.WriteAllBytesAsync(copy, file, TestContext.Current.CancellationToken);
        Assert.Equal(LedgerAccess.Read<long>(shop.Bench(), view => view.EventCount).Require(), LedgerCare.Restore(shop.Bench(), copy, force: false, folder["other"]).Require().Events);
        var other = Workbench.Open(new WorkbenchOptions(folder["other"], shop.Now), _ => null).Require();
        Assert.Equal(shop.Jar(1).Jar.Number, LedgerAccess.Jar(other, JarNumber.From(1)).Require().Jar.Number);
    }

    [Fact]
    public async Task Every_event_is_taken_away_as_text()
    {
        await Pair("bench tablet");
        var (file, headers) = await Bytes("/export");
        Assert.Equal("attachment; filename=\"shop-export-2026-03-09.jsonl\"", headers);
        var lines = Encoding.UTF8.GetString(file).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.All(lines, line => Assert.Equal(JsonValueKind.Object, JsonDocument.Parse(line).RootElement.ValueKind));
        Assert.Contains(lines, line => line.Contains("Mixed", StringComparison.Ordinal));
    }

    /// <summary>Who may only look is not handed the whole shop.</summary>
    [Theory]
    [InlineData("/backup")]
    [InlineData("/export")]
    [InlineData("/devices")]
    public async Task A_device_that_is_not_paired_takes_nothing_away(string address)
    {
        Assert.Equal(200, (await shop.Get("/")).Status);
        var page = await shop.Get(address);
        Assert.Equal((303, "/pair"), (page.Status, page.Location![..5]));
    }

    /// <summary>A page of somebody else's that a browser on this machine has open has no business with the shop's file.</summary>
    [Theory]
    [InlineData("cross-site", 403)]
    [InlineData("same-origin", 200)]
    [InlineData("none", 200)]
    public async Task A_page_of_another_server_has_no_backup_made(string site, int status)
    {
        await Pair("bench tablet");
        var asked = new HttpRequestMessage(HttpMethod.Get, "/export");
        asked.Headers.Add("Sec-Fetch-Site", site);
        var page = await shop.Send(asked);
        Assert.Equal((status, status == 403), (page.Status, page.Seen.Contains("JL603", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_shop_without_a_ledger_says_so_in_place_of_a_file()
    {
        using var empty = new WebShop(empty: true);
        Assert.DoesNotContain("/backup", (await empty.Get("/shop/show")).Text, StringComparison.Ordinal);
        var told = await empty.Get("/backup");
        Assert.Equal(503, told.Status);
        Assert.False(told.Headers.ContainsKey("Content-Disposition"));
    }

    [Fact]
    public async Task A_device_is_listed_by_name_and_its_right_is_taken_from_the_page()
    {
        await Pair("lost <phone>");
        var lost = shop.Cookie;
        await Pair("bench tablet");
        var page = await shop.Get("/devices");
        Assert.Contains("lost <phone>", page.Seen, StringComparison.Ordinal);
        Assert.Contains("paired 9 Mar 2026", page.Seen, StringComparison.Ordinal);
        Assert.Single(Regex.Matches(page.Seen, "it is the one in your hand"));
        Assert.DoesNotContain("<phone>", page.Text, StringComparison.Ordinal);
        var form = WebShop.Hidden(page.Text);
        Assert.Equal("1", form.First(one => one.Name == "device").Value);

        Assert.Equal(403, (await shop.Post("/devices", [("token", "0"), ("device", "1")])).Status);
        Assert.Equal(403, (await shop.Post("/devices", [.. form.Take(2)], "http://shop.example")).Status);
        Assert.Equal(2, Known().Count);
        Assert.Equal((303, "/devices"), (await shop.Post("/devices", [.. form.Take(2)])) is var done ? (done.Status, done.Location) : default);
        Assert.Equal("bench tablet", Assert.Single(Known()).Name);
        var again = await shop.Post("/devices", [.. form.Take(2)]);
        Assert.Equal(422, again.Status);
        Assert.Contains("JL614", again.Seen, StringComparison.Ordinal);

        shop.Cookie = lost;
        Assert.Equal(303, (await shop.Get("/devices")).Status);
        Assert.Equal(401, (await shop.Post("/devices", [.. form.Take(1), ("device", "2")])).Status);
        Assert.Equal("bench tablet", Assert.Single(Known()).Name);
    }

    private IReadOnlyList<Device> Known() => Devices.Open(ShopFolder.At(shop.Folder).Require()).Require().All().Require();

    private string Held() => string.Join('\n', Directory.EnumerateFiles(shop.Folder, "*", SearchOption.AllDirectories).Where(file => !file.EndsWith("-shm", StringComparison.Ordinal)).Order(StringComparer.Ordinal).Select(file => $"{file} {Convert.ToHexString(File.ReadAllBytes(file))}"));

    private async Task Pair(string name) => shop.Cookie = (await shop.Fill("/pair", ("code", shop.Code), ("name", name))).Headers["Set-Cookie"].Split(';')[0];

    private async Task<(byte[] File, string Headers)> Bytes(string path)
    {
        using var client = new HttpClient(new SocketsHttpHandler { UseCookies = false }) { BaseAddress = shop.Address };
        client.DefaultRequestHeaders.Add("Cookie", shop.Cookie);
        using var got = await client.GetAsync(path);
        Assert.Equal(HttpStatusCode.OK, got.StatusCode);
        return (await got.Content.ReadAsByteArrayAsync(), got.Content.Headers.ContentDisposition!.ToString());
    }
}
