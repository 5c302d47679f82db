namespace JarLabel.Tests.Web;

/// <summary>How people come to the pages: by addresses with a slash at the end, and by the codes on labels.</summary>
public sealed class WayHereTests
{
    [Theory]
    [InlineData("/J/1-9/", "/J/1-9")]
    [InlineData("/j/1-9.1/", "/j/1-9.1")]
    [InlineData("/J/1-9/thin/?to=1", "/J/1-9/thin?to=1")]
    [InlineData("/shelf/", "/shelf")]
    [InlineData("/bag/add/", "/bag/add")]
    [InlineData("/scan/?what=bag%201", "/scan?what=bag%201")]
    public async Task A_slash_at_the_end_leads_to_the_same_page(string with, string without)
    {
        using var shop = new WebShop();
        var page = await shop.Get(with);
        Assert.Equal((308, without), (page.Status, page.Location));
        Assert.Equal(200, (await shop.Get(without)).Status);
    }

    [Theory]
    [InlineData("//shop.example/")]
    [InlineData("/nosuch/")]
    [InlineData("/J/1-9//")]
    [InlineData("/J//")]
    [InlineData("//")]
    public async Task Where_there_is_no_page_the_slash_leads_nowhere(string path)
    {
        using var shop = new WebShop();
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri($"http://{shop.Host}{path}"));
        var page = await shop.Send(request);
        Assert.Equal((404, null), (page.Status, page.Location));
    }

    [Fact]
    public async Task Without_an_address_for_the_codes_a_paired_device_is_told_and_led_to_where_it_is_set()
    {
        using var shop = new WebShop(IPAddress.Loopback, open: true);
        const string says = "The codes on labels do not open these pages yet.";
        Assert.DoesNotContain(says, (await shop.Get("/")).Seen, StringComparison.Ordinal);
        shop.Cookie = (await shop.Fill("/pair", ("code", shop.Code), ("name", "bench tablet"))).Headers["Set-Cookie"].Split(';')[0];
        Assert.Contains(says, (await shop.Get("/")).Seen, StringComparison.Ordinal);
        var way = Way(await shop.Get("/"));
        Assert.Contains($"value=\"http://{shop.Host}\"", (await shop.Get(way)).Text, StringComparison.Ordinal);
        Assert.Equal(303, (await shop.Fill(way, ("setting", "base-url"), ("value", $"http://{shop.Host}"), ("do", "record"))).Status);
        Assert.Equal($"http://{shop.Host}", shop.Bench().Settings.BaseUrl!.Text);
        Assert.DoesNotContain("The codes on labels", (await shop.Get("/")).Seen, StringComparison.Ordinal);

        var changed = await shop.Fill("/shop/set", ("setting", "base-url"), ("value", "http://192.168.1.20:5080"), ("do", "record"));
        Assert.True(changed.Status == 303, changed.Seen);
        Assert.Contains("The codes on labels open http://192.168.1.20:5080, not these pages.", (await shop.Get("/")).Seen, StringComparison.Ordinal);
        Assert.Contains($"value=\"http://{shop.Host}\"", (await shop.Get(Way(await shop.Get("/")))).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task On_one_machine_alone_nothing_is_said_of_where_codes_lead()
    {
        using var shop = new WebShop();
        Assert.DoesNotContain("The codes on labels", (await shop.Get("/")).Seen, StringComparison.Ordinal);
    }

    private static string Way(Page page) => WebUtility.HtmlDecode(Regex.Match(page.Text, "<a href=\"(/shop/set[^\"]*)\"").Groups[1].Value);
}
