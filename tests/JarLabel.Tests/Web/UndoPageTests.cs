namespace JarLabel.Tests.Web;

/// <summary>Taking back through the pages: as by the command, and with the words of a page.</summary>
public sealed class UndoPageTests : IDisposable
{
    private readonly WebShop shop = new();

    public UndoPageTests() => shop.Stock("500 g", "1 L");

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("/J/1-9/undo", "jar 3-5 its decanting was taken back")]
    [InlineData("/J/3-5/undo", "jar 1-9 holds 13.6 fl oz (402 mL) of 1½ lb cut again")]
    public async Task A_decanting_to_a_warmer_shelf_is_taken_back_and_names_the_jars(string page, string named)
    {
        File.WriteAllText(Path.Combine(shop.Folder, "shop.json"), """{ "shelves": [ { "name": "main", "celsius": 20 }, { "name": "attic", "celsius": 30 } ] }""");
        shop.Mix("350 mL");
        shop.Now = new DateTime(2026, 5, 1, 9, 0, 0);
        TestJar.Do(shop.Bench(), JarNumber.From(2), passed: false, null).Require();
        Assert.Equal(303, (await shop.Fill("/J/1-9/decant", ("into", "100 mL"), ("shelf", "attic"), ("do", "record"))).Status);
        Assert.Equal(1, shop.Jar(3).Jar.Dates.Basis!.Tests);
        var done = await shop.Fill(page, ("do", "record"));
        Assert.Equal(303, done.Status);
        Assert.Contains(named, (await shop.Get(done.Location!)).Seen, StringComparison.Ordinal);
        Assert.Equal("decanting", shop.Jar(3).Jar.TakenBack);
        Assert.Equal(402.1325, shop.Jar(1).Jar.Contents.Liquid.Milliliters, 1e-6); // 350 x (1 + 1.5 x 0.0993)
    }

    [Fact]
    public async Task A_pouring_that_was_worked_on_since_is_refused_with_a_whole_sentence()
    {
        Assert.Equal(303, (await shop.Fill("/J/1-9/decant", ("into", "100 mL"), ("do", "record"))).Status);
        NoteJar.Do(shop.Bench(), JarNumber.From(2), "for next door").Require();
        var refused = await shop.Fill("/J/1-9/undo", ("do", "record"));
        Assert.Equal(422, refused.Status);
        Assert.Contains("First take that back at jar 2-7: “Undo”.", refused.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_batch_taken_back_says_what_the_bag_and_the_bottle_hold()
    {
        Assert.Equal(303, (await shop.Fill("/mix", ("bag", "1-9"), ("bottle", "1-9"), ("cut", "1.5"), ("pour", "350 mL"), ("do", "record"))).Status);
        Assert.Equal(303, (await shop.Fill("/bag/left", ("bag", "1-9"), ("weight", "500 g"), ("do", "record"))).Status);
        var done = await shop.Get((await shop.Fill("/J/2-7/undo", ("do", "record"))).Location!);
        Assert.Matches(@"bag 1-9 holds [^(]*\(500 g\) of [^(]*\(500 g\) now", done.Seen);
        Assert.Matches(@"bottle 1-9 holds [^(]*\(1\.00 L\) of [^(]*\(1\.00 L\) now", done.Seen);
    }

    [Theory]
    [InlineData("bag", "weight", "0 g")]
    [InlineData("bottle", "volume", "empty")]
    public async Task A_bag_and_a_bottle_are_emptied_discarded_and_taken_back(string kind, string field, string nothing)
    {
        Assert.Equal(303, (await shop.Fill($"/{kind}/left", (kind, "1-9"), (field, nothing), ("do", "record"))).Status);
        var form = await shop.Get($"/{kind}/undo");
        Assert.Contains("1-9: ", form.Seen, StringComparison.Ordinal);
        Assert.Contains("is taken back at the jar", form.Seen, StringComparison.Ordinal);
        var undone = await shop.Get((await shop.Fill($"/{kind}/undo", (kind, "1-9"), ("do", "record"))).Location!);
        Assert.Contains("taken back: what was measured", undone.Seen, StringComparison.Ordinal);
        Assert.Equal(303, (await shop.Fill($"/{kind}/discard", (kind, "1-9"), ("do", "record"))).Status);
        Assert.Equal(303, (await shop.Fill($"/{kind}/undo", (kind, "1-9"), ("do", "record"))).Status);
        Assert.True(SupplyBook.Bags(shop.Bench()).Require().Count == 1 && SupplyBook.Bottles(shop.Bench()).Require().Count == 1);
    }

    [Fact]
    public async Task The_page_of_a_jar_whose_mixing_was_taken_back_says_so_and_offers_nothing()
    {
        Assert.Equal(303, (await shop.Fill("/J/1-9/undo", ("do", "record"))).Status);
        var page = await shop.Get("/J/1-9.1");
        Assert.Contains("its mixing was taken back", page.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("/J/1-9/undo", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("discard", page.Seen, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("used up", page.Seen, StringComparison.Ordinal);
    }

    /// <summary>Where nothing is left to take back there is nothing to send.</summary>
    [Fact]
    public async Task With_nothing_left_to_take_back_the_form_of_a_jar_says_so_and_has_no_button()
    {
        Assert.Contains("<button", (await shop.Get("/J/1-9/undo")).Text, StringComparison.Ordinal);
        Assert.Equal(303, (await shop.Fill("/J/1-9/undo", ("do", "record"))).Status);
        var page = await shop.Get("/J/1-9/undo");
        Assert.Contains("JL145", page.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("<button", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bag")]
    [InlineData("bottle")]
    public async Task So_has_that_of_a_bag_or_bottle(string kind)
    {
        var old = WebShop.Hidden((await shop.Get($"/{kind}/undo")).Text);
        Assert.Equal(303, (await shop.Fill($"/{kind}/undo", (kind, "1-9"), ("do", "record"))).Status);
        foreach (var page in (Page[])[await shop.Get($"/{kind}/undo?{kind}=1"), await shop.Post($"/{kind}/undo", [.. old, (kind, "1-9"), ("do", "record")])])
        {
            Assert.Contains($"Everything that was said of {kind} 1-9 is already taken back", page.Seen, StringComparison.Ordinal);
            Assert.DoesNotContain("<button", page.Text, StringComparison.Ordinal);
        }

        var none = await shop.Get($"/{kind}/undo");
        Assert.Contains("there is none to choose here", none.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("<button", none.Text, StringComparison.Ordinal);
        shop.Stock("400 g", "2 L");
        Assert.DoesNotContain("JL227", (await shop.Get($"/{kind}/undo")).Seen, StringComparison.Ordinal);
        Assert.Contains("JL227", (await shop.Get($"/{kind}/undo?{kind}=1")).Seen, StringComparison.Ordinal);
        Assert.Contains("<button", (await shop.Get($"/{kind}/undo?{kind}=2")).Text, StringComparison.Ordinal);
    }
}
