namespace JarLabel.Tests.Web;

/// <summary>Somebody who means harm, from the network or through a page of another site in the shop's own browser.</summary>
public sealed partial class HostileClientTests : IDisposable
{
    private const string Script = "<script>alert(1)</script>\"'><img src=x onerror=alert(1)>";

    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("shop.example")]
    [InlineData("shop.example:5080")]
    [InlineData("127.0.0.1.shop.example")]
    [InlineData("localhost.shop.example")]
    [InlineData("192.168.1.20")]
    public async Task A_foreign_host_is_refused_before_anything_else(string host)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/J/1-9") { Headers = { Host = host } };
        var page = await shop.Send(request);
        Assert.Equal(400, page.Status);
        Assert.Contains("JL601", page.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("Garnet", page.Seen, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("http://shop.example")]
    [InlineData("https://127.0.0.1")]
    [InlineData("http://127.0.0.1:1")]
    [InlineData("null")]
    [InlineData(null)]
    public async Task A_form_from_another_site_is_not_taken_even_with_the_right_token(string? origin)
    {
        var form = WebShop.Hidden((await shop.Get("/J/1-9/discard")).Text);
        var page = await shop.Post("/J/1-9/discard", [.. form, ("do", "record")], origin);
        Assert.Equal(403, page.Status);
        Assert.Contains("JL603", page.Seen, StringComparison.Ordinal);
        Assert.True(shop.Jar(1).Jar.OnShelf);
    }

    [Theory]
    [InlineData("cross-site")]
    [InlineData("same-site")]
    [InlineData("none")]
    public async Task What_the_browser_says_of_the_site_counts_too(string site)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/J/1-9/discard") { Content = new FormUrlEncodedContent([]) };
        request.Headers.Add("Sec-Fetch-Site", site);
        request.Headers.Add("Origin", $"http://{shop.Host}");
        Assert.Equal(403, (await shop.Send(request)).Status);
    }

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("ffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff")]
    public async Task A_form_without_its_token_is_not_taken(string token)
    {
        var form = WebShop.Hidden((await shop.Get("/J/1-9/discard")).Text).Where(f => f.Name != "token");
        var page = await shop.Post("/J/1-9/discard", [.. form, ("token", token), ("do", "record")]);
        Assert.Equal(403, page.Status);
        Assert.Contains("JL604", page.Seen, StringComparison.Ordinal);
        Assert.True(shop.Jar(1).Jar.OnShelf);
    }

    [Theory]
    [InlineData("/J/1-9/discard?do=record")]
    [InlineData("/J/1-9/undo?do=record")]
    [InlineData("/mix?do=record&grade=garnet&solvent=ethanol-95&cut=1&pour=100+mL")]
    public async Task Looking_never_records(string path)
    {
        await shop.Get(path);
        using var head = new HttpRequestMessage(HttpMethod.Head, path);
        await shop.Send(head);
        Assert.Equal(1, shop.Jars());
        Assert.True(shop.Jar(1).Jar.OnShelf);
    }

    [Theory]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("PATCH")]
    [InlineData("OPTIONS")]
    [InlineData("TRACE")]
    public async Task Other_methods_are_not_taken(string method)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), "/J/1-9");
        var page = await shop.Send(request);
        Assert.Equal(405, page.Status);
        Assert.Contains("JL611", page.Seen, StringComparison.Ordinal);
        Assert.Contains($"Read \"{method}\" as the method", page.Seen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/../ledger.db")]
    [InlineData("/%2e%2e/ledger.db")]
    [InlineData("/J/../../ledger.db")]
    [InlineData("/J/..%2f..%2fledger.db")]
    [InlineData("/J/%2e%2e%5c%2e%2e%5cledger.db")]
    [InlineData("/J/1-9/../../ledger.db")]
    [InlineData("/J/1-9/label.pdf/..%2f..%2fdevices.json")]
    [InlineData("/J/..%2f..%2fshop/label.pdf")]
    [InlineData("/ledger.db")]
    [InlineData("/devices.json")]
    [InlineData("//etc/passwd")]
    [InlineData("/J/1-9%00.html")]
    [InlineData("/done/../ledger.db")]
    [InlineData("/J/1-9/nosuch")]
    [InlineData("/J/99999999999999999999")]
    [InlineData("/J/-1")]
    [InlineData("/J/1-8")]
    public async Task No_trick_with_the_path_leads_anywhere(string path)
    {
        var answer = await Raw($"GET {path} HTTP/1.1\r\nHost: {shop.Host}\r\nConnection: close\r\n\r\n");
        Assert.Matches("^HTTP/1.1 40[04] ", answer);
        Assert.DoesNotContain("SQLite format", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("root:", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/nosuch", "/nosuch")]
    [InlineData("/labels/nosuch.pdf", "/labels/nosuch.pdf")]
    [InlineData("/pair", "/pair")]
    public async Task A_page_that_is_not_there_is_told_with_what_a_jars_page_is_called(string path, string read)
    {
        var page = await shop.Get(path);
        Assert.Equal(404, page.Status);
        Assert.Contains("JL602", page.Seen, StringComparison.Ordinal);
        Assert.Contains($"There is no page \"{read}\"; a jar's page is its number, such as /J/142-5.", page.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_huge_form_is_refused()
    {
        var form = WebShop.Hidden((await shop.Get("/J/1-9/note")).Text);
        var page = await shop.Post("/J/1-9/note", [.. form, ("text", new string('a', 100_000)), ("do", "record")]);
        Assert.Equal(413, page.Status);
        Assert.Contains("JL609", page.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain(shop.Jar(1).Events, e => e.Event is Core.Jars.Noted);
    }

    [Fact]
    public async Task A_form_of_very_many_fields_is_refused()
    {
        var form = WebShop.Hidden((await shop.Get("/J/1-9/note")).Text);
        Assert.Equal(400, (await shop.Post("/J/1-9/note", [.. form, .. Enumerable.Range(0, 500).Select(i => ($"f{i}", "x"))])).Status);
    }

    [Fact]
    public async Task A_slow_form_is_cut_off_and_others_are_served_meanwhile()
    {
        using var slow = new TcpClient();
        await slow.ConnectAsync(shop.Address.Host, shop.Address.Port, TestContext.Current.CancellationToken);
        var stream = slow.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(
            $"POST /J/1-9/note HTTP/1.1\r\nHost: {shop.Host}\r\nOrigin: http://{shop.Host}\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: 10000\r\n\r\nt"), TestContext.Current.CancellationToken);
        Assert.Equal(200, (await shop.Get("/J/1-9")).Status);
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        patience.CancelAfter(TimeSpan.FromSeconds(12));
        var answer = new StreamReader(stream, Encoding.ASCII);
        Assert.Matches("^HTTP/1.1 40[08] ", await answer.ReadLineAsync(patience.Token));
    }

    [Fact]
    public async Task A_form_of_another_kind_is_refused()
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/J/1-9/note") { Content = new StringContent("{\"text\":\"x\"}", Encoding.UTF8, "application/json") };
        request.Headers.Add("Origin", $"http://{shop.Host}");
        var page = await shop.Send(request);
        Assert.Equal(415, page.Status);
        Assert.Contains("JL610", page.Seen, StringComparison.Ordinal);
        Assert.Contains("Read \"application/json; charset=utf-8\" as the kind", page.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain(shop.Jar(1).Events, e => e.Event is Core.Jars.Noted);
    }

    [Theory]
    [InlineData("mix", "job")]
    [InlineData("mix", "by")]
    [InlineData("mix", "note")]
    [InlineData("mix", "cut")]
    [InlineData("mix", "pour")]
    [InlineData("mix", "shelf")]
    [InlineData("mix", "design")]
    [InlineData("mix", "grade")]
    [InlineData("J/1-9/note", "text")]
    [InlineData("J/1-9/use", "job")]
    [InlineData("J/1-9/discard", "why")]
    [InlineData("J/1-9/thin", "to")]
    public async Task Script_in_a_field_stays_text_wherever_it_is_shown(string form, string field)
    {
        (string, string)[] batch = form == "mix" ? [("grade", "garnet"), ("solvent", "ethanol-95"), ("cut", "1.5"), ("pour", "350 mL")] : [("volume", "10 mL")];
        (string, string)[] fields = [.. batch.Where(f => f.Item1 != field), (field, Script)];
        var sent = await shop.Fill($"/{form}", [.. fields, ("do", "record")]);
        Page[] pages = [sent, await shop.Fill($"/{form}", [.. fields, ("do", "live")]), await shop.Get("/"), await shop.Get("/J/1-9"), await shop.Get("/J/2-7"), .. sent.Location is { } done ? [await shop.Get(done)] : (Page[])[]];
        Assert.All(pages, page =>
        {
            Assert.DoesNotContain("<script>alert", page.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("<img src=x", page.Text, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("/mix")]
    [InlineData("/J/1-9/thin")]
    [InlineData("/J/1-9/thicken")]
    [InlineData("/J/1-9/use")]
    [InlineData("/J/1-9/test")]
    [InlineData("/J/1-9/note")]
    [InlineData("/J/1-9/move")]
    [InlineData("/J/1-9/label")]
    [InlineData("/J/1-9/discard")]
    [InlineData("/J/1-9/undo")]
    public async Task Script_in_every_field_of_a_form_at_once_stays_text(string form)
    {
        shop.Stock("500 g", "1 gal");
        var blank = (await shop.Get(form)).Text;
        string[] fields = [.. FieldName().Matches(blank).Select(m => m.Groups[1].Value).Where(name => name != "no-label")];
        Assert.True(fields.Length > 0 || form.EndsWith("/undo", StringComparison.Ordinal));
        foreach (var how in (string[])["live", "show", "record"])
        {
            var page = await shop.Post(form, [.. WebShop.Hidden(blank), .. fields.Select(name => (name, Script)), ("do", how)]);
            Assert.DoesNotContain("<script>alert", page.Text, StringComparison.Ordinal);
            Assert.DoesNotContain("<img src=x", page.Text, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("<script>alert", (await shop.Get("/J/1-9")).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/?find=")]
    [InlineData("/?shelf=")]
    [InlineData("/?after=")]
    [InlineData("/J/")]
    [InlineData("/done/")]
    public async Task Script_in_an_address_stays_text(string address)
    {
        var page = await shop.Get(address + Uri.EscapeDataString(Script));
        Assert.DoesNotContain("<script>alert", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("<img src=x", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/J/1-9")]
    [InlineData("/J/1-9/thin")]
    [InlineData("/nosuch")]
    [InlineData("/bench.js")]
    public async Task Every_answer_says_that_nothing_from_elsewhere_is_loaded_run_or_framed(string path)
    {
        var headers = (await shop.Get(path)).Headers;
        var policy = headers["Content-Security-Policy"];
        Assert.StartsWith("default-src 'none';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", headers["X-Content-Type-Options"]);
        Assert.Equal("no-store", headers["Cache-Control"]);
        Assert.False(headers.ContainsKey("Server"));
        Assert.False(headers.ContainsKey("Access-Control-Allow-Origin"));
    }

    [GeneratedRegex("id=\"f-([^\"]+)\"")]
    private static partial Regex FieldName();

    private async Task<string> Raw(string request)
    {
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, shop.Address.Port, TestContext.Current.CancellationToken);
        var stream = client.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes(request), TestContext.Current.CancellationToken);
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
    }
}
