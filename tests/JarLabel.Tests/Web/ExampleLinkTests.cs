namespace JarLabel.Tests.Web;

/// <summary>Links that show how something is done name jars, bags and bottles that are there.</summary>
public sealed class ExampleLinkTests
{
    [Theory]
    [InlineData("/sheets")]
    [InlineData("/sheets?id=letter-2x5-101.6x50.8")]
    [InlineData("/sheet/state")]
    [InlineData("/printers?listen=0")]
    [InlineData("/keeping")]
    [InlineData("/designs")]
    [InlineData("/shelf")]
    public async Task In_an_empty_shop_they_lead_to_what_can_be_done_there(string page)
    {
        using var shop = new WebShop(empty: true);
        var ways = Ways(await shop.Get(page));
        Assert.DoesNotContain(ways, way => way.StartsWith("/J/", StringComparison.Ordinal));
        foreach (var way in ways)
        {
            Assert.Equal((200, way), ((await shop.Get(way)).Status, way));
        }
    }

    [Theory]
    [InlineData("/sheets", "/J/2-7/label?sheet=")]
    [InlineData("/sheets?id=letter-2x5-101.6x50.8", "/J/2-7/label?sheet=letter-2x5-101.6x50.8")]
    [InlineData("/sheet/state", "/J/2-7/label")]
    [InlineData("/printers?listen=0", "/J/2-7/label")]
    [InlineData("/keeping", "/J/2-7/test")]
    public async Task Where_the_first_jar_is_gone_they_name_one_that_stands(string page, string leads)
    {
        using var shop = new WebShop();
        shop.Mix("350 mL");
        DiscardJar.Do(shop.Bench(), JarNumber.From(1), null).Require();
        var ways = Ways(await shop.Get(page));
        Assert.Contains(ways, way => way.StartsWith(leads, StringComparison.Ordinal));
        Assert.DoesNotContain(ways, way => way.Contains("1-9", StringComparison.Ordinal) || way.Contains("ADDRESS", StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_was_measured_is_tried_on_a_jar_that_stands()
    {
        using var shop = new WebShop();
        shop.Mix("350 mL");
        DiscardJar.Do(shop.Bench(), JarNumber.From(1), null).Require();
        var done = await shop.Get((await shop.Fill("/calibrate", ("sheet", "letter-2x5-101.6x50.8"), ("dx", "1"), ("do", "record"))).Location!);
        Assert.Contains(Ways(done), way => way.StartsWith("/J/2-7/label?", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_blend_of_one_jar_names_two_that_stand_or_leads_to_mixing()
    {
        using var shop = new WebShop();
        var alone = await shop.Fill("/blend", ("jar", "1"), ("do", "record"));
        Assert.Contains("JL148", alone.Seen, StringComparison.Ordinal);
        Assert.Equal(["/mix"], Ways(alone));
        shop.Mix("350 mL");
        shop.Mix("350 mL");
        DiscardJar.Do(shop.Bench(), JarNumber.From(1), null).Require();
        var way = Assert.Single(Ways(await shop.Fill("/blend", ("jar", "2"), ("do", "record"))));
        Assert.Contains("value=\"2; 3\"", (await shop.Get(way)).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_shelf_that_is_not_empty_names_what_stands_on_it()
    {
        using var shop = new WebShop();
        shop.Mix("350 mL");
        shop.Stock("500 g", "1 L");
        Assert.Equal(303, (await shop.Fill("/shop/set", ("setting", "shelf"), ("value", "attic=20 C"), ("do", "record"))).Status);
        DiscardJar.Do(shop.Bench(), JarNumber.From(1), null).Require();
        Assert.Equal(["/J/2-7/move?shelf=attic"], Ways(await shop.Fill("/shop/set", ("setting", "shelf"), ("value", "main=none"), ("do", "record"))));
        DiscardJar.Do(shop.Bench(), JarNumber.From(2), null).Require();
        Assert.Equal(["/bottle/move?bottle=1&shelf=attic"], Ways(await shop.Fill("/shop/set", ("setting", "shelf"), ("value", "main=none"), ("do", "record"))));
    }

    [Fact]
    public async Task A_shop_folder_that_is_there_is_not_said_to_be_made()
    {
        using var shop = new WebShop();
        Assert.Contains("Recorded", (await shop.Get((await shop.Fill("/shop/init", ("do", "record"))).Location!)).Seen, StringComparison.Ordinal);
        var again = await shop.Get((await shop.Fill("/shop/init", ("do", "record"))).Location!);
        Assert.Contains("The shop is there already", again.Seen, StringComparison.Ordinal);
        Assert.Contains("Nothing to record", again.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("Recorded", again.Seen, StringComparison.Ordinal);
    }

    private static string[] Ways(Page page) => [.. Regex.Matches(page.Text, "<a class=\"go\" href=\"(/[^\"]*)\"").Select(found => WebUtility.HtmlDecode(found.Groups[1].Value))];
}
