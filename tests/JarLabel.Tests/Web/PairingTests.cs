using JarLabel.Web.Guards;

namespace JarLabel.Tests.Web;

/// <summary>Served to a network (loopback stands for it): only paired devices record, and unless it is opened only they read.</summary>
public sealed class PairingTests : IDisposable
{
    private readonly WebShop shop = new(IPAddress.Loopback);

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("/", "/pair")]
    [InlineData("/J/1-9", "/pair?to=/J/1-9")]
    [InlineData("/J/1-9/thin", "/pair?to=/J/1-9/thin")]
    [InlineData("/J/1-9/label.pdf", "/pair")]
    public async Task A_stranger_is_led_to_the_pairing_page(string path, string to)
    {
        var page = await shop.Get(path);
        Assert.Equal((303, to), (page.Status, page.Location));
    }

    [Fact]
    public async Task With_the_code_a_device_may_record_and_the_cookie_is_out_of_reach_of_scripts_and_other_sites()
    {
        var sent = await shop.Fill("/pair?to=/J/1-9", ("code", shop.Code), ("name", "bench tablet"));
        Assert.Equal((303, "/J/1-9"), (sent.Status, sent.Location));
        var cookie = sent.Headers["Set-Cookie"];
        Assert.Contains("HttpOnly", cookie, StringComparison.Ordinal);
        Assert.Contains("SameSite=Lax", cookie, StringComparison.Ordinal);
        shop.Cookie = cookie.Split(';')[0];
        Assert.Equal(200, (await shop.Get("/J/1-9")).Status);
        Assert.Equal(303, (await shop.Fill("/J/1-9/note", ("text", "strained twice"), ("do", "record"))).Status);
        Assert.Contains(shop.Jar(1).Events, e => e.Event is Core.Jars.Noted);
    }

    [Fact]
    public async Task The_token_is_not_in_the_shop_and_its_list_is_the_owners_alone()
    {
        var token = (await shop.Fill("/pair", ("code", shop.Code), ("name", "bench tablet"))).Headers["Set-Cookie"].Split(';')[0].Split('=')[1];
        Assert.Equal(64, token.Length);
        var file = Path.Combine(shop.Folder, "devices.json");
        Assert.DoesNotContain(token, await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken), StringComparison.Ordinal);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
        }
    }

    [Fact]
    public async Task A_revoked_device_may_do_nothing_from_that_moment()
    {
        shop.Cookie = (await shop.Fill("/pair", ("code", shop.Code), ("name", "bench tablet"))).Headers["Set-Cookie"].Split(';')[0];
        var form = WebShop.Hidden((await shop.Get("/J/1-9/note")).Text);
        Devices.Open(ShopFolder.At(shop.Folder).Require()).Require().Revoke("1").Require();
        Assert.Equal(401, (await shop.Post("/J/1-9/note", [.. form, ("text", "x"), ("do", "record")])).Status);
        Assert.Equal(303, (await shop.Get("/J/1-9")).Status);
    }

    /// <summary>The form is already let in when the right is taken, and waits: whoever is told "revoked" can rely on it.</summary>
    [Fact]
    public async Task A_form_that_was_under_way_when_its_device_was_revoked_records_nothing()
    {
        shop.Cookie = (await shop.Fill("/pair", ("code", shop.Code), ("name", "bench tablet"))).Headers["Set-Cookie"].Split(';')[0];
        var form = WebShop.Hidden((await shop.Get("/J/1-9/note")).Text);
        Task<Page> sent;
        using (new FileStream(Path.Combine(shop.Folder, "shop.lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None))
        {
            sent = shop.Post("/J/1-9/note", [.. form, ("text", "x"), ("do", "record")]);
            await Task.Delay(1500, TestContext.Current.CancellationToken);
            Assert.False(sent.IsCompleted);
            await File.WriteAllTextAsync(Path.Combine(shop.Folder, "devices.json"), "[]", TestContext.Current.CancellationToken);
        }

        var told = await sent;
        Assert.Equal(401, told.Status);
        Assert.Contains("JL605", told.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain(shop.Jar(1).Events, e => e.Event is Core.Jars.Noted);
    }

    [Theory]
    [InlineData("[", "devices.json")]
    [InlineData("""[{ "id": "1", "name": "bench tablet", "paired": "2026-03-09T10:00:00", "tokenSha256": "12ab" }]""", "64 hexadecimal digits")]
    [InlineData("""[{ "id": "1", "name": "bench tablet", "paired": "some day", "tokenSha256": "0000000000000000000000000000000000000000000000000000000000000000" }]""", "2026-03-09T14:30:00")]
    public async Task A_damaged_list_of_devices_lets_nobody_record_and_stays_as_it_is(string written, string says)
    {
        shop.Cookie = (await shop.Fill("/pair", ("code", shop.Code), ("name", "bench tablet"))).Headers["Set-Cookie"].Split(';')[0];
        var form = WebShop.Hidden((await shop.Get("/J/1-9/note")).Text);
        var file = Path.Combine(shop.Folder, "devices.json");
        await File.WriteAllTextAsync(file, written, TestContext.Current.CancellationToken);
        var problem = Assert.Single(Devices.Open(ShopFolder.At(shop.Folder).Require()).Problems);
        Assert.Equal("JL615", problem.Code);
        Assert.Contains(says, $"{problem.Where} {problem.Message}", StringComparison.Ordinal);
        Assert.Equal(401, (await shop.Post("/J/1-9/note", [.. form, ("text", "x"), ("do", "record")])).Status);
        Assert.DoesNotContain(shop.Jar(1).Events, e => e.Event is Core.Jars.Noted);
        Assert.Equal(written, await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Script_in_the_name_of_a_device_stays_text_and_what_would_steer_a_terminal_is_refused()
    {
        const string script = "<script>alert(1)</script>";
        var wrong = await shop.Fill($"/pair?code={Uri.EscapeDataString(script)}&to={Uri.EscapeDataString(script)}", ("code", script), ("name", script));
        Assert.DoesNotContain("<script>alert", wrong.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert", (await shop.Get($"/pair?code={Uri.EscapeDataString(script)}&to={Uri.EscapeDataString(script)}")).Text, StringComparison.Ordinal);
        Assert.Equal(403, (await shop.Fill("/pair", ("code", shop.Code), ("name", "tablet\u001b[2J"))).Status);
        Assert.DoesNotContain(shop.Said, line => line.Contains('\u001b', StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_code_serves_once()
    {
        var code = shop.Code;
        Assert.Equal(303, (await shop.Fill("/pair", ("code", code), ("name", "one"))).Status);
        var second = await shop.Fill("/pair", ("code", code), ("name", "two"));
        Assert.Equal(403, second.Status);
        Assert.Contains("JL606", second.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Who_guesses_the_code_is_soon_sent_away_and_shuts_out_nobody_else()
    {
        var form = WebShop.Hidden((await shop.Get("/pair")).Text);
        for (var i = 0; i < 5; i++)
        {
            Assert.Contains("JL606", (await shop.Post("/pair", [.. form, ("code", "0000 000x"), ("name", "x")])).Seen, StringComparison.Ordinal);
        }

        var late = await shop.Post("/pair", [.. form, ("code", shop.Code), ("name", "x")]);
        Assert.Equal(403, late.Status);
        Assert.Contains("JL607", late.Seen, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(shop.Folder, "devices.json")));
        shop.ComeFrom("127.0.0.2");
        Assert.Equal(303, (await shop.Fill("/pair", ("code", shop.Code), ("name", "bench tablet"))).Status);
    }

    [Theory]
    [InlineData("jarlabel=")]
    [InlineData("jarlabel=0000000000000000000000000000000000000000000000000000000000000000")]
    [InlineData("jarlabel=1")]
    public async Task A_made_up_token_opens_nothing(string cookie)
    {
        shop.Cookie = cookie;
        Assert.Equal(303, (await shop.Get("/J/1-9")).Status);
    }

    [Fact]
    public async Task Ten_thousand_guessed_numbers_show_no_jar_to_a_stranger_and_are_soon_sent_away()
    {
        var statuses = new List<int>();
        for (var number = 1; number <= 10_000; number++)
        {
            var page = await shop.Get($"/J/{number}");
            Assert.DoesNotContain("arnet", page.Text, StringComparison.Ordinal);
            Assert.Equal(page.Status == 429, page.Text.Contains("JL608", StringComparison.Ordinal));
            statuses.Add(page.Status);
        }

        Assert.Equal(600, statuses.Count(status => status == 303));
        Assert.Equal(9_400, statuses.Count(status => status == 429));
    }

    [Fact]
    public async Task A_form_of_a_stranger_is_not_taken()
    {
        var form = WebShop.Hidden((await shop.Get("/pair")).Text);
        var page = await shop.Post("/J/1-9/discard", [.. form, ("do", "record"), ("seen", "1"), ("once", new string('a', 32))]);
        Assert.Equal(401, page.Status);
        Assert.Contains("JL605", page.Seen, StringComparison.Ordinal);
        Assert.Contains("Pair it first", page.Seen, StringComparison.Ordinal);
        Assert.True(shop.Jar(1).Jar.OnShelf);
    }

    [Theory]
    [InlineData("//shop.example")]
    [InlineData("https://shop.example")]
    [InlineData("/J/1-9/../../x")]
    [InlineData("/\\shop.example")]
    public async Task The_way_back_leads_to_our_own_pages_only(string to)
    {
        Assert.Equal("/", (await shop.Fill($"/pair?to={Uri.EscapeDataString(to)}", ("code", shop.Code), ("name", "x"))).Location);
    }
}
