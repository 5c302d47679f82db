namespace JarLabel.Tests.Web;

public sealed class ShelfPageTests : IDisposable
{
    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task All_jars_stand_on_the_first_page_soonest_first_with_their_total()
    {
        shop.Now = shop.Now.AddDays(10);
        shop.Mix("700 mL");
        shop.Now = shop.Now.AddDays(-20);
        shop.Mix("700 mL");
        shop.Now = shop.Now.AddDays(20);
        var page = await shop.Get("/");
        Assert.Equal(200, page.Status);
        int[] places = [.. ((string[])["3-5", "1-9", "2-7"]).Select(jar => page.Text.IndexOf($"href=\"/J/{jar}\"><b>", StringComparison.Ordinal))];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
        Assert.Contains("shelf main 3 jars, ", page.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bottles_and_bags_are_listed_and_bottles_count_on_their_shelf()
    {
        shop.Stock("500 g", "1 gal");
        var seen = (await shop.Get("/")).Seen;

        // A US gallon is 3.785 L (NIST Handbook 44): 3.79 to three figures.
        Assert.Contains("1 bottle of alcohol, 1 gal (3.79 L)", seen, StringComparison.Ordinal);
        Assert.Contains("bottle 1-9 ethanol 95 % by volume, 1 gal (3.79 L) left, since 1 Mar 2026, shelf main", seen, StringComparison.Ordinal);
        Assert.Contains("(500 g) left, of 1 Oct 2025", seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_jar_whose_date_was_moved_by_the_shops_tests_is_shown_with_that_date()
    {
        shop.Mix("500 mL");
        Assert.Equal(303, (await shop.Fill("/J/2-7/label", ("do", "record"))).Status);
        shop.Now = new DateTime(2026, 4, 20, 9, 0, 0);
        TestJar.Do(shop.Bench(), JarNumber.From(1), passed: false, null).Require();
        shop.Mix("500 mL");
        var seen = (await shop.Get("/")).Seen;
        Assert.Matches("jar 2-7 .{0,50}label out of date", seen);
        Assert.DoesNotMatch("jar 3-5 .{0,50}label out of date", seen);
        Assert.Matches("jar 1-9 .{0,20}test failed 20 Apr 2026", seen);
        Assert.Contains("JL124", seen, StringComparison.Ordinal);
        Assert.Contains("jar 1-9", (await shop.Get("/?due=1")).Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_empty_shop_says_what_to_do_first()
    {
        DiscardJar.Do(shop.Bench(), JarNumber.From(1), null).Require();
        var page = await shop.Get("/");
        Assert.Contains("No jar stands here yet.", page.Seen, StringComparison.Ordinal);
        Assert.Contains("class=\"go first\" href=\"/mix\"", page.Text, StringComparison.Ordinal);
        Assert.Contains("No such jar stands here.", (await shop.Get("/?due=1")).Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_the_jars_to_see_to_are_shown_when_asked()
    {
        shop.Now = new DateTime(2026, 8, 1, 9, 0, 0);
        shop.Mix("700 mL");
        var due = (await shop.Get("/?due=1")).Seen;
        Assert.Contains("jar 1-9", due, StringComparison.Ordinal);
        Assert.DoesNotContain("jar 2-7", due, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_long_list_goes_on_on_further_pages_and_misses_no_jar()
    {
        for (var i = 0; i < 60; i++)
        {
            shop.Mix("50 mL");
        }

        var first = await shop.Get("/");
        var next = System.Text.RegularExpressions.Regex.Match(first.Text, "href=\"(/\\?after=[^\"]*)\"").Groups[1].Value;
        var second = await shop.Get(System.Net.WebUtility.HtmlDecode(next));
        string[] seen = [.. new[] { first, second }.SelectMany(page => System.Text.RegularExpressions.Regex.Matches(page.Text, "href=\"/J/([0-9-]+)\"").Select(m => m.Groups[1].Value))];
        Assert.Equal(61, seen.Length);
        Assert.Equal(61, seen.Distinct().Count());
    }

    /// <summary>The failure of one kind moves its dates before those of the other, which stand between them on record.</summary>
    [Theory]
    [InlineData("/")]
    [InlineData("/?due=1")]
    public async Task A_long_list_misses_no_jar_where_dates_have_moved(string list)
    {
        for (var day = 0; day < 60; day++)
        {
            var (grade, mixed) = day % 2 == 0 ? ("garnet", new DateTime(2026, 3, 10, 10, 0, 0)) : ("seedlac", new DateTime(2025, 11, 10, 10, 0, 0)); // keep 8 and 12 months by published claims
            shop.Now = mixed.AddDays(day);
            shop.Mix("350 mL", grade: grade);
        }

        shop.Now = new DateTime(2026, 6, 1, 10, 0, 0);
        TestJar.Do(shop.Bench(), JarNumber.From(1), passed: false, null).Require();
        shop.Now = new DateTime(2027, 6, 1, 10, 0, 0);
        List<string> seen = [];
        for (var next = list; next.Length > 0;)
        {
            var page = await shop.Get(next);
            seen.AddRange(System.Text.RegularExpressions.Regex.Matches(page.Text, "href=\"/J/([0-9-]+)\"><b>").Select(m => m.Groups[1].Value));
            next = System.Net.WebUtility.HtmlDecode(System.Text.RegularExpressions.Regex.Match(page.Text, "href=\"(/\\?after=[^\"]*)\"").Groups[1].Value);
        }

        Assert.Equal(61, seen.Count);
        Assert.Equal(61, seen.Distinct().Count());
    }

    [Theory]
    [InlineData("1", "/J/1-9")]
    [InlineData("1-9", "/J/1-9")]
    [InlineData("JAR 1-9.1", "/J/1-9.1")]
    public async Task A_typed_number_or_code_leads_to_the_jar(string typed, string to)
    {
        var found = await shop.Get($"/?find={Uri.EscapeDataString(typed)}");
        Assert.Equal((303, to), (found.Status, found.Location));
    }

    [Fact]
    public async Task A_shelf_that_is_not_there_is_told_with_the_ones_that_are()
    {
        var page = await shop.Get("/?shelf=attic");
        Assert.Equal(400, page.Status);
        Assert.Contains("main", page.Seen, StringComparison.Ordinal);
    }
}
