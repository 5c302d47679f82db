namespace JarLabel.Tests.Web;

/// <summary>What a page says would help can be found on it under the same words, and every link says where it leads.</summary>
public sealed class WayTests : IDisposable
{
    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    /// <summary>A jar's page is called by its jar and not by the step of the command line.</summary>
    [Fact]
    public async Task To_look_at_a_jar_is_said_in_the_words_of_its_link()
    {
        var form = WebShop.Hidden((await shop.Get("/J/1-9/use")).Text);
        await shop.Post("/J/1-9/use", [.. form, ("volume", "100 mL"), ("do", "record")]);
        var told = await shop.Post("/J/1-9/use", [.. form, ("volume", "50 mL"), ("do", "record")]);
        Assert.Contains("“Jar 1-9” shows what is recorded.", told.Seen, StringComparison.Ordinal);
        Assert.Contains("<a class=\"go\" href=\"/J/1-9\">Jar 1-9</a>", told.Text, StringComparison.Ordinal);
        shop.Restart();
        Assert.Contains("“Jar 1-9” shows what is recorded.", (await shop.Post("/J/1-9/use", [.. form, ("volume", "50 mL"), ("do", "record")])).Seen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/sheets?id=letter-2x5-101.6x50.8")]
    [InlineData("/sheet/state")]
    [InlineData("/printers?listen=0")]
    [InlineData("/keeping")]
    public async Task A_link_to_a_step_of_one_jar_names_it(string page)
    {
        var text = (await shop.Get(page)).Text;
        Assert.Matches("<a class=\"go\" href=\"/J/1-9/(label|test)[^\"]*\">(Label|Test): jar 1-9</a>", text);
        Assert.DoesNotMatch("<a class=\"go\" href=\"/J/[^\"]*\">(Label|Test)</a>", text);
    }

    [Fact]
    public async Task So_it_does_after_a_step_of_the_shop_and_under_a_caution_of_many_jars()
    {
        var done = await shop.Get((await shop.Fill("/calibrate", ("sheet", "letter-2x5-101.6x50.8"), ("dx", "1"), ("do", "record"))).Location!);
        Assert.Contains(">Label: jar 1-9</a>", done.Text, StringComparison.Ordinal);
        shop.Mix("350 mL");
        shop.Mix("350 mL");
        shop.Now = new DateTime(2026, 8, 9, 9, 0, 0);
        TestJar.Do(shop.Bench(), JarNumber.From(3), passed: false, null).Require();
        var all = await shop.Get("/");
        Assert.Contains("JL124", all.Seen, StringComparison.Ordinal);
        Assert.Contains("\">Label: jar 1-9</a>", all.Text, StringComparison.Ordinal);
    }

    /// <summary>There the jar stands on top.</summary>
    [Fact]
    public async Task On_the_pages_of_that_jar_the_step_alone_is_named()
    {
        Assert.Contains("<a class=\"go\" href=\"/J/1-9/label\">Label</a>", (await shop.Get("/J/1-9")).Text, StringComparison.Ordinal);
        await shop.Fill("/J/1-9/discard", ("do", "record"));
        Assert.Contains("<a class=\"go\" href=\"/J/1-9/undo\">Undo</a>", (await shop.Get("/J/1-9/use")).Text, StringComparison.Ordinal);
    }
}
