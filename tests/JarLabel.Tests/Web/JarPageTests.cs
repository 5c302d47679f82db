using JarLabel.Core.Supplies;

namespace JarLabel.Tests.Web;

public sealed class JarPageTests : IDisposable
{
    private readonly WebShop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("/J/1-9.1")]
    [InlineData("/j/1-9.1")]
    [InlineData("/J/1-9")]
    [InlineData("/J/1")]
    public async Task A_jar_is_found_by_what_stands_on_its_label(string path)
    {
        var page = await shop.Get(path);
        Assert.Equal(200, page.Status);
        Assert.Contains("1½ lb cut Garnet in ethanol 95 %", page.Seen, StringComparison.Ordinal);
        Assert.Contains("still dissolving", page.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("Out-of-date", page.Seen, StringComparison.Ordinal);
    }

    /// <summary>Whoever has drunk of it is helped at the first glance, not after the history.</summary>
    [Fact]
    public async Task Of_a_jar_that_can_poison_first_aid_comes_before_recipe_and_history()
    {
        var bench = shop.Bench();
        MixJar.Do(bench, new MixRequest(
            bench.Catalog.Grades.Named("garnet").Require(),
            bench.Catalog.Solvents.Named("denatured-unknown").Require(),
            new BatchRequest(CutText.Read("1.5", "").Require(), VolumeText.Read("350 mL", "").Require()),
            new Container(ContainerMaterial.Glass, Volume.FromMilliliters(1000)))).Require();
        var page = (await shop.Get("/J/2-7")).Seen;
        var (aid, recipe, history) = (page.IndexOf("First aid", StringComparison.Ordinal), page.IndexOf("What is in it", StringComparison.Ordinal), page.IndexOf("What happened", StringComparison.Ordinal));
        Assert.True(aid > 0 && aid < recipe && recipe < history, page);
        Assert.Contains("1-800-222-1222", page[aid..recipe], StringComparison.Ordinal);
        Assert.Equal(aid, page.LastIndexOf("First aid", StringComparison.Ordinal));
    }

    /// <summary>What the jar asks for as it stands is the largest button; what is final is not beside it.</summary>
    [Theory]
    [InlineData(0, null, null)]
    [InlineData(30, null, "use")]
    [InlineData(230, null, "test")]
    [InlineData(400, null, "test")]
    [InlineData(400, true, "use")]
    [InlineData(200, true, "use")]
    [InlineData(30, false, "discard")]
    public async Task What_its_state_asks_for_comes_first_and_what_is_final_is_folded_away(int days, bool? passed, string? first)
    {
        shop.Now = shop.Now.AddDays(days);
        if (passed is { } dried)
        {
            TestJar.Do(shop.Bench(), JarNumber.From(1), passed: dried, null).Require();
        }

        var page = (await shop.Get("/J/1-9")).Text;
        Assert.Equal(first is null ? "" : $"<a class=\"go first\" href=\"/J/1-9/{first}\">", System.Text.RegularExpressions.Regex.Match(page, "<a class=\"go first\"[^>]*>").Value);
        var more = page.IndexOf("<summary>More</summary>", StringComparison.Ordinal);
        Assert.All(["undo", "card", .. first == "discard" ? Array.Empty<string>() : ["discard"]], verb => Assert.True(page.IndexOf($"href=\"/J/1-9/{verb}\"", StringComparison.Ordinal) > more, verb));
        Assert.All(["thin", "use", "test", "label"], verb => Assert.InRange(page.IndexOf($"href=\"/J/1-9/{verb}\"", StringComparison.Ordinal), 1, more));
    }

    /// <summary>One way to the step that it asks for, and it comes first.</summary>
    [Fact]
    public async Task A_jar_in_doubt_leads_to_its_test_once()
    {
        shop.Stock("500 g", "1 L");
        await shop.Fill("/mix", ("bag", "1"), ("solvent", "ethanol-95"), ("cut", "1.5"), ("pour", "200 mL"), ("do", "record"));
        shop.Now = shop.Now.AddDays(3);
        SupplyOperations.Test(shop.Bench(), SupplyNumber.From(1), Pinch.Cloudy).Require();
        var page = (await shop.Get("/J/2-7")).Text;
        Assert.Contains("JL397", page, StringComparison.Ordinal);
        Assert.Equal(1, Regex.Count(page, "href=\"/J/2-7/test"));
    }

    [Fact]
    public async Task The_page_tells_the_recipe_the_dates_the_hazards_and_the_history()
    {
        shop.Now = shop.Now.AddDays(30);
        var seen = (await shop.Get("/J/1-9.1")).Seen;
        Assert.All(
            ["good", "flakes 2.2 oz (62.9 g)", "use by ≈ 9 Nov 2026", "to cut", "Danger", "Highly flammable liquid and vapor", "9 Mar 2026 mixed 402 mL of 1½ lb cut"],
            part => Assert.Contains(part, seen, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_page_says_how_the_use_by_was_come_by()
    {
        Assert.Contains("stands on published claims, no drying test here yet", (await shop.Get("/J/1-9")).Seen, StringComparison.Ordinal);

        // A failure at six weeks, where published claims say eight months: the tests of this shop move the date, and the label says otherwise.
        shop.Now = new DateTime(2026, 4, 20, 9, 0, 0);
        shop.Mix("350 mL");
        shop.Now = new DateTime(2026, 6, 1, 9, 0, 0);
        TestJar.Do(shop.Bench(), JarNumber.From(2), passed: false, null).Require();
        var moved = await shop.Get("/J/1-9.1");
        Assert.Contains("by tests now", moved.Seen, StringComparison.Ordinal);
        Assert.True(moved.Text.IndexOf("JL124", StringComparison.Ordinal) < moved.Text.IndexOf("<h1", StringComparison.Ordinal));
        var now = shop.Jar(1).Jar.Learned!.UseBy;
        Assert.True(now < new DateOnly(2026, 11, 9));
        Assert.Contains($"use by ≈ {now.ToString("d MMM yyyy", System.Globalization.CultureInfo.InvariantCulture)}", moved.Seen, StringComparison.Ordinal);

        Assert.Equal(303, (await shop.Fill("/J/1-9/label", ("do", "record"))).Status);
        Assert.Contains("stands on published claims and 1 drying test here", (await shop.Get("/J/1-9")).Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_label_from_before_the_failed_test_is_told_on_top_until_there_is_a_new_one()
    {
        shop.Now = new DateTime(2026, 4, 20, 9, 0, 0);
        TestJar.Do(shop.Bench(), JarNumber.From(1), passed: false, null).Require();
        var failed = await shop.Get("/J/1-9.1");
        Assert.InRange(failed.Text.IndexOf("JL359", StringComparison.Ordinal), 0, failed.Text.IndexOf("<h1", StringComparison.Ordinal));
        Assert.Contains("test failed 20 Apr 2026", failed.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("use by ≈", failed.Seen, StringComparison.Ordinal);

        Assert.Equal(303, (await shop.Fill("/J/1-9/label", ("do", "record"))).Status);
        Assert.DoesNotContain("JL359", (await shop.Get("/J/1-9.1")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_jar_that_is_gone_says_so_before_anything_else_and_offers_only_to_take_that_back()
    {
        DiscardJar.Do(shop.Bench(), JarNumber.From(1), "stays tacky").Require();
        var page = await shop.Get("/J/1-9.1");
        Assert.Contains("discarded", page.Seen, StringComparison.Ordinal);
        Assert.True(page.Text.IndexOf("JL187", StringComparison.Ordinal) < page.Text.IndexOf("<h1", StringComparison.Ordinal));
        Assert.Contains("/J/1-9/undo", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("/J/1-9/thin\"", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("use by ≈", page.Seen, StringComparison.Ordinal);
        Assert.DoesNotContain("To thin it", page.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_page_is_one_request_of_less_than_30_kilobytes_without_a_script()
    {
        shop.Now = shop.Now.AddDays(30);
        var page = await shop.Get("/J/1-9.1");
        Assert.InRange(page.Text.Length, 4_000, 29_999);
        Assert.DoesNotContain("<script", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("<link rel=\"stylesheet\"", page.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(" src=", page.Text, StringComparison.Ordinal);
    }

    /// <summary>The shelf's calendar reminds as often: every two hours, counted from the mixing.</summary>
    [Fact]
    public async Task A_jar_that_dissolves_counts_to_its_next_swirl_and_no_other_does()
    {
        shop.Now = shop.Now.AddMinutes(50);
        var page = (await shop.Get("/J/1-9.1")).Text;
        Assert.Contains("data-swirl=\"1-9\" data-every=\"7200\" data-ago=\"3000\"", page, StringComparison.Ordinal);
        Assert.InRange(page.Length, 4_000, 29_999);
        shop.Now = shop.Now.AddDays(30);
        Assert.DoesNotContain("data-swirl", (await shop.Get("/J/1-9.1")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_label_from_before_a_thinning_is_told_as_out_of_date_on_top()
    {
        Assert.Equal(303, (await shop.Fill("/J/1-9/thin", ("to", "1"), ("do", "record"))).Status);
        var old = await shop.Get("/J/1-9.1");
        Assert.Contains("Out-of-date label", old.Seen, StringComparison.Ordinal);
        Assert.True(old.Text.IndexOf("Out-of-date", StringComparison.Ordinal) < old.Text.IndexOf("<h1", StringComparison.Ordinal));
        Assert.DoesNotContain("Out-of-date", (await shop.Get("/J/1-9.2")).Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_that_was_kept_is_made_anew_when_something_was_recorded_or_the_catalog_or_the_settings_changed()
    {
        await shop.Get("/J/1-9");
        await Task.Delay(400, TestContext.Current.CancellationToken);
        var before = await shop.Get("/J/1-9");
        Assert.Equal(before.Text, (await shop.Get("/J/1-9")).Text);

        await shop.Fill("/J/1-9/note", ("text", "strained twice"), ("do", "record"));
        Assert.Contains("strained twice", (await shop.Get("/J/1-9")).Seen, StringComparison.Ordinal);

        await Task.Delay(400, TestContext.Current.CancellationToken);
        await shop.Get("/J/1-9");
        var catalog = Directory.CreateDirectory(Path.Combine(shop.Folder, "catalog")).FullName;
        var grades = Path.Combine(catalog, "grades.json");
        await File.WriteAllTextAsync(grades, Grade("ruby one"), TestContext.Current.CancellationToken);
        Assert.Contains("ruby one", (await shop.Get("/J/1-9")).Seen, StringComparison.OrdinalIgnoreCase);

        await Task.Delay(400, TestContext.Current.CancellationToken);
        await shop.Get("/J/1-9");
        await File.WriteAllTextAsync(grades, Grade("ruby two"), TestContext.Current.CancellationToken);
        Assert.Contains("ruby two", (await shop.Get("/J/1-9")).Seen, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task The_label_is_handed_out_as_long_as_it_is_true()
    {
        var label = await shop.Get("/J/1-9/label.pdf");
        Assert.Equal(200, label.Status);
        Assert.StartsWith("%PDF-", label.Text, StringComparison.Ordinal);
        Assert.Equal("application/pdf", label.Headers["Content-Type"]);
        Assert.Contains("attachment; filename=\"jar-1-9-r1-wide.pdf\"", label.Headers["Content-Disposition"], StringComparison.Ordinal);

        await shop.Fill("/J/1-9/thin", ("to", "1"), ("no-label", "yes"), ("do", "record"));
        var old = await shop.Get("/J/1-9/label.pdf");
        Assert.Equal(404, old.Status);
        Assert.Contains("JL616", old.Seen, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_ledger_that_cannot_be_read_is_told_and_is_no_missing_jar()
    {
        foreach (var file in Directory.GetFiles(shop.Folder, "ledger.db*"))
        {
            await File.WriteAllTextAsync(file, "no database", TestContext.Current.CancellationToken);
        }

        var page = await shop.Get("/J/1-9");
        Assert.Equal(503, page.Status);
        Assert.Matches("JL41[0-9]", page.Seen);
    }

    private static string Grade(string name) =>
        $$"""[ { "id": "garnet", "name": "{{name}}", "color": "deep red-brown", "darkness": 6, "waxy": true, "keeping": "waxy", "form": "flake", "note": "ours", "source": "practice" } ]""";
}
