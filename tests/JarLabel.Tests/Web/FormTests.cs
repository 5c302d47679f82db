using JarLabel.Core.Supplies;

namespace JarLabel.Tests.Web;

public sealed class FormTests : IDisposable
{
    private static readonly (string, string)[] Batch = [("grade", "garnet"), ("solvent", "ethanol-95"), ("cut", "1.5"), ("pour", "350 mL"), ("container", "500 mL")];

    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task A_batch_is_worked_out_with_its_label_and_nothing_is_recorded()
    {
        var files = Directory.GetFiles(Path.Combine(shop.Folder, "labels")).Length;
        foreach (var how in (string[])["live", "show"])
        {
            var page = await shop.Fill("/mix", [.. Batch, ("do", how)]);
            Assert.Equal(200, page.Status);
            Assert.Contains("then add 2.2 oz (62.9 g) of", page.Seen, StringComparison.Ordinal);
            Assert.Contains("makes 13.6 fl oz (402 mL)", page.Seen, StringComparison.Ordinal);
            Assert.Contains("fits the jar of 16.9 fl oz (500 mL)", page.Seen, StringComparison.Ordinal);
            Assert.Contains("data:image/svg+xml;base64,", page.Text, StringComparison.Ordinal);
        }

        Assert.Equal(1, shop.Jars());
        Assert.Equal(files, Directory.GetFiles(Path.Combine(shop.Folder, "labels")).Length);
    }

    [Fact]
    public async Task A_fault_of_ours_is_told_without_its_inside_which_stands_on_the_servers_screen()
    {
        var form = WebShop.Hidden((await shop.Get("/J/1-9/note")).Text);
        shop.Fault = new InvalidOperationException("The wheel came off.");
        var page = await shop.Post("/J/1-9/note", [.. form, ("text", "strained"), ("do", "record")]);
        Assert.Equal(500, page.Status);
        Assert.Contains("JL619", page.Seen, StringComparison.Ordinal);
        Assert.Contains("Nothing was recorded.", page.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("wheel", page.Text, StringComparison.Ordinal);
        Assert.Contains(shop.Said, line => line.Contains("The wheel came off.", StringComparison.Ordinal));
        shop.Fault = null;
        Assert.DoesNotContain(shop.Jar(1).Events, e => e.Event is Noted);
        Assert.Equal(303, (await shop.Post("/J/1-9/note", [.. form, ("text", "strained"), ("do", "record")])).Status);
    }

    /// <summary>Whoever mends one thing after the other is told the next each time.</summary>
    [Fact]
    public async Task A_moment_that_cannot_be_read_is_told_beside_all_that_is_wrong()
    {
        var page = await shop.Fill("/mix", [("grade", "garnet"), ("solvent", "ethanol-95"), ("cut", "much"), ("pour", "some"), ("at", "3/4/2026"), ("do", "record")]);
        Assert.Equal(422, page.Status);
        foreach (var field in (string[])["cut", "pour", "at"])
        {
            Assert.Matches($"name=\"{field}\"[^>]*aria-invalid=\"true\"", page.Text);
        }
    }

    [Fact]
    public async Task A_batch_is_recorded_with_its_label_as_the_command_does_it()
    {
        var sent = await shop.Fill("/mix", [.. Batch, ("job", "viola top"), ("do", "record")]);
        Assert.Equal(303, sent.Status);
        var done = await shop.Get(sent.Location!);
        Assert.Contains("Recorded Jar 2-7", done.Seen, StringComparison.Ordinal);
        Assert.Contains("/J/2-7/label.pdf", done.Text, StringComparison.Ordinal);
        var jar = shop.Jar(2).Jar;
        Assert.Equal(62.9, jar.Contents.Recipe!.Flakes.Grams, 0.05);
        Assert.Equal("viola top", jar.Job);
        Assert.Equal(200, (await shop.Get("/J/2-7/label.pdf")).Status);
    }

    [Fact]
    public async Task A_batch_is_drawn_from_a_bag_and_a_bottle_which_say_what_is_in_them()
    {
        Assert.DoesNotContain("From the bag", (await shop.Get("/mix")).Seen, StringComparison.Ordinal);
        shop.Stock("500 g", "1 gal");
        Assert.Contains("<option value=\"1-9\">1-9: garnet, 1 lb 1.6 oz (500 g) left, of 1 Oct 2025</option>", (await shop.Get("/mix")).Text, StringComparison.Ordinal);
        var sent = await shop.Fill("/mix", ("cut", "1.5"), ("pour", "350 mL"), ("bag", "1-9"), ("bottle", "1-9"), ("do", "record"));
        Assert.True(sent.Status == 303, sent.Seen);

        // 1.5 lb a gallon are 179.74 g/L: 62.9 g in 350 mL.
        var (bag, bottle) = (SupplyBook.Bag(shop.Bench(), SupplyNumber.From(1)).Require(), SupplyBook.Bottle(shop.Bench(), SupplyNumber.From(1)).Require());
        Assert.Equal(500 - 62.91, bag.Left.Grams, 0.01);
        Assert.Equal(3785.41 - 350, bottle.Left.Milliliters, 0.01);
        Assert.Equal(303, (await shop.Fill("/J/2-7/thin", ("to", "1"), ("bottle", "1-9"), ("do", "record"))).Status);
        Assert.Equal(3785.41 - 350 - 175, SupplyBook.Bottle(shop.Bench(), SupplyNumber.From(1)).Require().Left.Milliliters, 0.01);
    }

    /// <summary>Eight months for garnet at 20 °C; four when a pinch of the bag dissolved cloudy, and nothing from a bag whose pinch gelled.</summary>
    [Fact]
    public async Task A_pinch_of_the_bag_shortens_what_is_mixed_from_it_or_ends_the_bag()
    {
        shop.Stock("500 g", "1 gal");
        SupplyOperations.Test(shop.Bench(), SupplyNumber.From(1), Pinch.Cloudy).Require();
        Assert.Contains("pinch: cloudy, 9 Mar 2026: batches keep half as long", (await shop.Get("/")).Seen, StringComparison.Ordinal);
        Assert.Equal(303, (await shop.Fill("/mix", ("cut", "1.5"), ("pour", "350 mL"), ("bag", "1-9"), ("bottle", "1-9"), ("do", "record"))).Status);
        Assert.Equal(new DateOnly(2026, 7, 9), shop.Jar(2).Jar.Dates.UseBy);
        Assert.True(shop.Jar(2).Jar.Contents.Resins[0].Cloudy);

        // What the tests of other jars say later moves its date, but gives it no whole life again.
        shop.Now = new DateTime(2026, 8, 9, 9, 0, 0);
        TestJar.Do(shop.Bench(), JarNumber.From(1), passed: true, null).Require();
        Assert.True((shop.Jar(2).Jar.Learned?.UseBy ?? shop.Jar(2).Jar.Dates.UseBy) < new DateOnly(2026, 9, 9));

        var form = WebShop.Hidden((await shop.Get("/mix")).Text);
        SupplyOperations.Test(shop.Bench(), SupplyNumber.From(1), Pinch.Gel).Require();
        Assert.DoesNotContain("1-9: garnet", (await shop.Get("/mix")).Text, StringComparison.Ordinal);
        Assert.Contains("JL393", (await shop.Post("/mix", [.. form, ("cut", "1.5"), ("pour", "350 mL"), ("bag", "1-9"), ("bottle", "1-9"), ("do", "record")])).Text, StringComparison.Ordinal);
        Assert.Equal(2, shop.Jars());
        Assert.Equal("JL393", Assert.Single(ThickenJar.Do(shop.Bench(), new ThickenRequest(JarNumber.From(1), CutText.Read("2", "").Require()) { Bag = SupplyNumber.From(1) }).Problems).Code);
    }

    [Fact]
    public async Task A_form_sent_twice_is_recorded_once()
    {
        var form = WebShop.Hidden((await shop.Get("/mix")).Text);
        var pages = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => shop.Post("/mix", [.. form, .. Batch, ("do", "record")])));
        Assert.All(pages, page => Assert.Equal((303, pages[0].Location), (page.Status, page.Location)));
        Assert.Equal(2, shop.Jars());
    }

    [Fact]
    public async Task Faults_stand_beside_their_fields_with_the_codes_of_the_command_line_and_nothing_typed_is_lost()
    {
        var page = await shop.Fill("/mix", ("grade", "garnet"), ("solvent", ""), ("cut", "abc"), ("pour", "3 oz"), ("job", "viola <top>"), ("do", "record"));
        Assert.Equal(422, page.Status);
        Assert.All(["JL106", "JL111", "Nothing was recorded"], part => Assert.Contains(part, page.Seen, StringComparison.Ordinal));
        Assert.Contains("name=\"cut\" aria-describedby=\"h-cut\" aria-invalid=\"true\" value=\"abc\"", page.Text, StringComparison.Ordinal);
        Assert.Contains("value=\"viola &lt;top&gt;\"", page.Text, StringComparison.Ordinal);
        Assert.Equal(1, shop.Jars());
    }

    [Fact]
    public async Task Two_tablets_thin_the_same_jar_and_the_second_is_told()
    {
        var (one, other) = (WebShop.Hidden((await shop.Get("/J/1-9/thin")).Text), WebShop.Hidden((await shop.Get("/J/1-9/thin")).Text));
        Assert.Equal(303, (await shop.Post("/J/1-9/thin", [.. one, ("to", "1"), ("do", "record")])).Status);
        var second = await shop.Post("/J/1-9/thin", [.. other, ("to", "1"), ("do", "record")]);
        Assert.Equal(409, second.Status);
        Assert.Contains("JL150", second.Seen, StringComparison.Ordinal);
        Assert.Contains("thinned with", second.Seen, StringComparison.Ordinal);
        Assert.Equal(2, shop.Jar(1).Jar.Revision);
        Assert.Single(shop.Jar(1).Events, e => e.Event is Thinned);
    }

    [Fact]
    public async Task Of_two_that_thin_at_the_same_moment_one_is_told()
    {
        var forms = new List<(string, string)[]>();
        for (var i = 0; i < 6; i++)
        {
            forms.Add(WebShop.Hidden((await shop.Get("/J/1-9/thin")).Text));
        }

        var pages = await Task.WhenAll(forms.Select(form => shop.Post("/J/1-9/thin", [.. form, ("to", "1"), ("do", "record")])));
        Assert.Single(pages, page => page.Status == 303);
        Assert.Equal(5, pages.Count(page => page.Status == 409));
        Assert.Equal(2, shop.Jar(1).Jar.Revision);
    }

    [Theory]
    [InlineData("use", "volume", "100 mL", "used 100 mL")]
    [InlineData("test", "verdict", "pass", "test passed")]
    [InlineData("note", "text", "strained twice", "note: strained twice")]
    [InlineData("discard", "why", "stays tacky", "discarded: stays tacky")]
    public async Task The_small_steps_are_recorded_and_can_be_taken_back(string step, string field, string value, string told)
    {
        var done = await shop.Get((await shop.Fill($"/J/1-9/{step}", (field, value), ("do", "record"))).Location!);
        Assert.Contains(told, done.Seen, StringComparison.Ordinal);
        Assert.Contains(told, (await shop.Get("/J/1-9")).Seen, StringComparison.Ordinal);
        var undone = await shop.Get((await shop.Fill("/J/1-9/undo", ("do", "record"))).Location!);
        Assert.Contains("taken back", undone.Seen, StringComparison.Ordinal);
        Assert.True(shop.Jar(1).Jar.OnShelf);
    }

    [Fact]
    public async Task Minutes_beside_those_of_a_fresh_batch_make_a_pass_a_slow_one()
    {
        var done = await shop.Get((await shop.Fill("/J/1-9/test", ("verdict", "pass"), ("tack-free", "30"), ("fresh-tack-free", "20"), ("temp", "22 C"), ("humidity", "55"), ("film", "glass, 1 coat"), ("do", "record"))).Location!);
        Assert.Contains("test passed, slow but hard, tack-free after 30 min (fresh 20), 22 °C, 55 % humidity, glass, 1 coat", done.Seen, StringComparison.Ordinal);
        Assert.Contains("near its end", done.Seen, StringComparison.Ordinal);
        var refused = await shop.Fill("/J/1-9/test", ("verdict", "fresh"), ("tack-free", "30"), ("fresh-tack-free", "20"), ("print-free", "10"), ("fresh-print-free", "10"), ("do", "record"));
        Assert.All(["JL390", "JL392"], code => Assert.Contains(code, refused.Text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Thickening_and_a_new_label_are_recorded()
    {
        Assert.Contains("add 0.75 oz (21 g) of", (await shop.Fill("/J/1-9/thicken", ("to", "2"), ("do", "live"))).Seen, StringComparison.Ordinal);
        Assert.Equal(303, (await shop.Fill("/J/1-9/thicken", ("to", "2"), ("do", "record"))).Status);
        Assert.Equal(2, shop.Jar(1).Jar.Contents.Cut!.Value.PoundsPerUsGallon, 1e-9);
        Assert.Equal(303, (await shop.Fill("/J/1-9/label", ("do", "record"))).Status);
        Assert.Equal(2, shop.Jar(1).Events.Count(e => e.Event is Labelled { Revision: 2 }));
    }

    [Fact]
    public async Task A_form_of_a_jar_that_says_not_how_much_it_has_seen_is_not_taken()
    {
        var form = WebShop.Hidden((await shop.Get("/J/1-9/note")).Text).Where(f => f.Name != "seen");
        Assert.Equal(403, (await shop.Post("/J/1-9/note", [.. form, ("text", "x"), ("do", "record")])).Status);
        Assert.Single(shop.Jar(1).Events, e => e.Event is Mixed);
        Assert.DoesNotContain(shop.Jar(1).Events, e => e.Event is Noted);
    }
}
