namespace JarLabel.Acceptance;

/// <summary>What is said late, taken back or comes from another shop: no date becomes milder by it, and no label says for true what is so no longer. Dates by published claims:
/// blonde keeps six months at 20 °C, twice as fast spent for each 10 °C more (common practice).</summary>
public sealed class SeamsTests : IDisposable
{
    private static readonly string[] Blonde = ["mix", "--grade", "blonde", "--solvent", "ethanol-95", "--cut", "2", "--pour", "300 mL"];

    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    private static IEnumerable<string> Codes(JsonObject answer) => answer["warnings"]!.AsArray().Select(told => told!["code"]!.GetValue<string>());

    private string UseBy(int jar, string at) => shop.Json("jar", $"{jar}", "--at", at)["jar"]!["useBy"]!.GetValue<string>();

    private string? ByNow(int jar, string at) => shop.Json("jar", $"{jar}", "--at", at)["jar"]!["learnedUseBy"]?.GetValue<string>();

    [Fact]
    public void How_warm_a_new_shelf_was_before_takes_nothing_back_of_how_warm_it_is()
    {
        shop.Json("shop", "set", "shelf", "loft=35 C", "--at", "2026-06-06");
        shop.Json([.. Blonde, "--shelf", "loft", "--at", "2026-06-06", "--no-label"]);
        var warm = UseBy(1, "2026-06-07");
        var told = shop.Json("shop", "set", "shelf", "loft=18 C", "--at", "2026-06-05");
        Assert.Contains("JL238", Codes(told));
        Assert.Equal(warm, UseBy(1, "2026-06-08"));
        Assert.Contains("35 deg C", shop.Run("shop", "show").Result, StringComparison.Ordinal);
        shop.Json("shop", "set", "shelf", "loft=18 C", "--at", "2026-06-10");
        Assert.True(string.CompareOrdinal(warm, UseBy(1, "2026-06-10")) < 0, "four days were warm and the rest is not");
    }

    [Fact]
    public void Jars_of_another_shop_on_a_shelf_that_is_not_known_here_gain_nothing_by_a_move()
    {
        shop.Json("shop", "set", "shelf", "cellar=14 C", "--at", "2026-01-01");
        shop.Json([.. Blonde, "--shelf", "cellar", "--at", "2026-01-01", "--no-label"]);
        var file = Path.Combine(shop.Folder, "all.jsonl");
        shop.Json("export", file);
        using var other = new Shop();
        Assert.Contains("JL243", Codes(other.Json("import", file, "--at", "2026-01-02")));
        Assert.Contains("JL243", Codes(other.Json("move", "1", "main", "--at", "2026-01-15", "--no-label")));
        shop.Json("move", "1", "main", "--at", "2026-01-15", "--no-label");
        Assert.InRange(other.Json("jar", "1", "--at", "2026-01-16")["jar"]!["useBy"]!.GetValue<string>(), "2026-06-01", UseBy(1, "2026-01-16"));
    }

    [Fact]
    public void A_pinch_that_was_taken_back_leaves_no_jar_with_half_its_time_and_says_why_it_has_more_again()
    {
        FromBag(2);
        shop.Json("bag", "test", "1", "cloudy", "--at", "2025-12-10");
        shop.Json("label", "1", "--at", "2025-12-10");
        shop.Json("bag", "undo", "1", "--at", "2025-12-11");
        Assert.Equal("2026-06-01", ByNow(1, "2025-12-12"));
        Assert.Equal(("2026-06-01", null), (UseBy(2, "2025-12-12"), ByNow(2, "2025-12-12")));
        var list = shop.Run("shelf", "--at", "2025-12-12").Result;
        Assert.Contains("label out of date", list, StringComparison.Ordinal);
        Assert.Contains("What was said against its flakes was taken back", shop.Run("jar", "1", "--at", "2025-12-12").Result, StringComparison.Ordinal);
        shop.Json("label", "1", "--at", "2025-12-13");
        Assert.Equal(("2026-06-01", null), (UseBy(1, "2025-12-13"), ByNow(1, "2025-12-13")));
        var history = shop.Run("jar", "1", "--at", "2025-12-13").Result;
        Assert.Contains("was taken back: use-by", history, StringComparison.Ordinal);
        Assert.DoesNotContain("drying tests", history, StringComparison.Ordinal);
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    [Fact]
    public void Labels_of_several_jars_name_what_dates_them_anew()
    {
        FromBag(2);
        shop.Json("bag", "test", "1", "cloudy", "--at", "2025-12-20");
        var told = shop.Run("label", "1", "2", "--at", "2025-12-21").Result;
        Assert.Matches(@"dated anew +by what was found of their flakes: 1, 2", told);
        Assert.DoesNotContain("drying tests", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_that_gives_no_use_by_is_not_said_to_give_one()
    {
        FromBag(2);
        shop.Json("bag", "test", "1", "cloudy", "--at", "2025-12-10");
        shop.Json("label", "1", "--at", "2025-12-10");
        var failed = shop.Run("test", "1", "fail", "--at", "2025-12-11").Result;
        Assert.Contains("does not say yet that its test failed", failed, StringComparison.Ordinal);
        Assert.DoesNotContain("still gives a use-by", failed, StringComparison.Ordinal);
        Assert.DoesNotContain("given without knowing", failed, StringComparison.Ordinal);
    }

    /// <summary>Of a test that was taken back, and of one that passed after it: the glass still says not to use it.</summary>
    [Theory]
    [InlineData("undo", "1")]
    [InlineData("test", "1", "pass")]
    public void A_label_that_says_that_a_test_failed_is_told_when_it_is_so_no_longer(params string[] step)
    {
        shop.Json([.. Blonde, "--at", "2025-12-01"]);
        shop.Json("test", "1", "fail", "--at", "2025-12-05");
        var label = shop.Json("label", "1", "--at", "2025-12-05")["label"]!["payload"]!.GetValue<string>();
        Assert.Contains("TEST FAILED", label, StringComparison.Ordinal);
        Assert.Contains("JL244", Codes(shop.Json([.. step, "--at", "2025-12-06", .. step[0] == "undo" ? ["--no-label"] : Array.Empty<string>()])));
        Assert.Contains("JL244", Codes(shop.Json("scan", label, "--at", "2025-12-07")));
        Assert.Contains("JL244", Codes(shop.Json("jar", "1", "--at", "2025-12-07")));
        shop.Json("label", "1", "--at", "2025-12-08");
        Assert.DoesNotContain("JL244", Codes(shop.Json("jar", "1", "--at", "2025-12-08")));
    }

    [Fact]
    public void A_label_that_says_in_doubt_is_told_when_it_passed()
    {
        FromBag(1);
        shop.Json("bag", "test", "1", "cloudy", "--at", "2025-12-10");
        shop.Json("label", "1", "--at", "2025-12-10");
        shop.Json("test", "1", "pass", "--at", "2025-12-11");
        Assert.Contains("JL244", Codes(shop.Json("scan", "1", "--at", "2025-12-12")));
    }

    /// <summary>By weight half methanol: toxic in all three ways of 29 CFR 1910.1200 and of Regulation (EC) 1272/2008 alike.</summary>
    [Theory]
    [InlineData("osha")]
    [InlineData("clp")]
    public void Lists_mark_what_is_toxic_under_either_rules(string rules)
    {
        shop.Json("shop", "set", "rules", rules);
        shop.Json("mix", "--grade", "garnet", "--solvent", "denatured-methanol-50", "--cut", "2", "--pour", "300 mL", "--no-label", "--at", "2025-12-01");
        shop.Json([.. Blonde, "--no-label", "--at", "2025-12-01"]);
        shop.Json("bottle", "add", "--solvent", "denatured-methanol-50", "--volume", "1 L", "--no-label", "--at", "2025-12-01");
        var jars = shop.Json("shelf", "--at", "2025-12-02")["jars"]!.AsArray();
        Assert.Equal([1], jars.Where(jar => jar!["poison"]?.GetValue<bool>() == true).Select(jar => jar!["number"]!.GetValue<int>()));
        Assert.Contains("POISON", shop.Run("shelf", "--at", "2025-12-02").Result, StringComparison.Ordinal);
        Assert.Contains("POISON", shop.Run("bottle", "list").Result, StringComparison.Ordinal);
        foreach (var line in (string[][])[["label", "1"], ["card", "1"], ["use", "1", "10 mL"]])
        {
            Assert.Contains("JL385", Codes(shop.Json([.. line, "--at", "2025-12-03"])));
        }
    }

    [Fact]
    public void A_list_of_batches_names_the_jars_that_a_caution_is_of()
    {
        var list = Path.Combine(shop.Folder, "class.csv");
        File.WriteAllText(list, "grade,cut,pour,solvent\ngarnet,1,100 mL,ethanol-95\ngarnet,1,100 mL,denatured-methanol-50\n");
        var told = shop.Json("mix", "--list", list, "--no-label", "--at", "2025-12-01")["warnings"]!.AsArray();
        Assert.StartsWith("Jar 2-7: It holds ", told.Single(one => one!["code"]!.GetValue<string>() == "JL385")!["message"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_share_of_water_that_nobody_gave_is_not_said_to_be_one()
    {
        var told = shop.Run("can", "add", "shed jug", "--contains", "ethanol=30-60, methanol=30-60, water=rest").Result;
        Assert.Contains("may hold up to", told, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"holds \d+ % water", told);
    }

    [Fact]
    public void A_jar_that_was_never_tested_is_not_among_those_whose_tests_do_not_count()
    {
        shop.Json([.. Blonde, "--no-label", "--at", "2025-12-01"]);
        shop.Json("decant", "1", "--into", "2 x 100 mL", "--no-label", "--at", "2025-12-03");
        shop.Json("test", "2", "fail", "--at", "2025-12-05");
        shop.Json("blend", "3=50 mL", "2=50 mL", "--no-label", "--at", "2025-12-08");
        Assert.Empty(shop.Json("keeping", "--at", "2025-12-09")["notCounted"]!.AsArray());
    }

    [Fact]
    public void The_calendar_holds_every_jar_that_is_due()
    {
        shop.Json([.. Blonde, "--no-label", "--at", "2025-12-01"]);
        shop.Json([.. Blonde, "--no-label", "--at", "2025-09-01"]);
        var file = Path.Combine(shop.Folder, "due.ics");
        var due = shop.Json("shelf", "--due", "--at", "2026-05-15")["jars"]!.AsArray();
        Assert.Equal(2, due.Count);
        shop.Json("shelf", "--ics", file, "--at", "2026-05-15");
        Assert.Equal(2, Regex.Count(File.ReadAllText(file), @"DTSTART;VALUE=DATE:20260515\r\n(?:[^\r]*\r\n){0,4}SUMMARY:Test jar"));
    }

    [Fact]
    public void Of_a_jar_that_holds_nothing_nothing_is_said_to_be_in_it()
    {
        shop.Json("mix", "--grade", "blonde", "--solvent", "denatured-unknown", "--cut", "1", "--pour", "350 mL", "--no-label", "--at", "2025-12-01");
        Assert.DoesNotContain("JL385", Codes(shop.Json("undo", "1", "--no-label", "--at", "2025-12-01")));
    }

    [Fact]
    public void A_pass_after_the_use_by_says_what_it_is_good_for()
    {
        shop.Json([.. Blonde, "--no-label", "--at", "2025-09-01"]);
        Assert.Contains("after its estimated use-by", shop.Run("test", "1", "pass", "--at", "2026-05-02").Result, StringComparison.Ordinal);
    }

    /// <summary>A step that opened the ledger a second time waited a second for itself.</summary>
    [Fact]
    public void A_bag_is_entered_without_waiting()
    {
        string[] bag = ["bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2025-10-01", "--no-label", "--at", "2025-12-01"];
        shop.Json(bag);
        var least = Enumerable.Range(0, 3).Min(_ =>
        {
            var since = Stopwatch.GetTimestamp();
            shop.Json(bag);
            return Stopwatch.GetElapsedTime(since).TotalSeconds;
        });
        var floor = Enumerable.Range(0, 3).Min(_ =>
        {
            var since = Stopwatch.GetTimestamp();
            shop.Json("bag", "list");
            return Stopwatch.GetElapsedTime(since).TotalSeconds;
        });
        Assert.InRange(least - floor, -5, 0.9);
    }

    [Fact]
    public void Whoever_moves_the_use_by_moves_the_day_to_test_from_too()
    {
        foreach (var day in (string[])["2026-01-01", "2026-01-02", "2026-01-03"])
        {
            shop.Json("mix", "--grade", "garnet", "--solvent", "ethanol-95", "--cut", "2", "--pour", "200 mL", "--no-label", "--at", $"{day} 10:00");
        }

        shop.Json("test", "1", "fail", "--at", "2026-03-25 09:00");
        shop.Json("test", "2", "fail", "--at", "2026-03-26 09:00");
        var jar = shop.Json("jar", "3", "--at", "2026-03-27")["jar"]!;
        Assert.True(string.CompareOrdinal(jar["testFrom"]!.GetValue<string>(), jar["learnedUseBy"]!.GetValue<string>()) < 0);
        var listed = shop.Json("shelf", "--at", "2026-03-27")["jars"]!.AsArray().Single(one => one!["number"]!.GetValue<int>() == 3)!;
        Assert.Equal(jar["testFrom"]!.GetValue<string>(), listed["testFrom"]!.GetValue<string>());
        shop.Json("label", "3", "--at", "2026-03-27");
        Assert.Equal(jar["testFrom"]!.GetValue<string>(), shop.Json("jar", "3", "--at", "2026-03-27")["jar"]!["testFrom"]!.GetValue<string>());
    }

    [Fact]
    public void A_list_says_in_words_and_to_programs_alike_which_label_is_out_of_date()
    {
        foreach (var day in (string[])["2026-01-01", "2026-01-02", "2026-01-03"])
        {
            shop.Json("mix", "--grade", "garnet", "--solvent", "ethanol-95", "--cut", "2", "--pour", "200 mL", "--at", $"{day} 10:00");
        }

        shop.Json("test", "1", "fail", "--at", "2026-03-25 09:00");
        shop.Json("test", "2", "fail", "--at", "2026-03-26 09:00");
        Assert.Matches(@"(?m)^ *3-5 .*label out of date", shop.Run("shelf", "--at", "2026-03-27").Result);
        Assert.True(shop.Json("shelf", "--at", "2026-03-27")["jars"]!.AsArray().Single(one => one!["number"]!.GetValue<int>() == 3)!["labelOutOfDate"]!.GetValue<bool>());
    }

    /// <summary>16 CFR 1500.14(b)(4): what is half methanol is poison in whatever jar it comes to stand.</summary>
    [Fact]
    public void A_step_that_makes_a_liquid_says_what_is_dangerous_about_it_and_what_its_label_lacks()
    {
        shop.Json("mix", "--grade", "garnet", "--solvent", "denatured-methanol-50", "--cut", "1", "--pour", "400 mL", "--container", "500 mL", "--rules", "osha", "--at", "2026-01-02");
        var decanted = shop.Run("decant", "1", "--into", "50 mL", "--container", "60 mL", "--rules", "osha", "--at", "2026-01-10").Result;
        Assert.Contains("not met", decanted, StringComparison.Ordinal);
        Assert.Contains("on the card", decanted, StringComparison.Ordinal);
        foreach (var made in (string[])[decanted, shop.Run("blend", "1=100 mL", "2=20 mL", "--container", "200 mL", "--no-label", "--rules", "osha", "--at", "2026-01-11").Result, shop.Run("thin", "1", "--to", "0.8", "--no-label", "--rules", "osha", "--at", "2026-01-12").Result])
        {
            Assert.Contains("Vapor harmful", made, StringComparison.Ordinal);
            Assert.Contains("first aid", made, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_failed_test_names_the_jars_with_the_same_liquid_at_once()
    {
        shop.Json([.. Blonde, "--no-label", "--at", "2026-01-02"]);
        shop.Json("decant", "1", "--into", "50 mL,50 mL", "--no-label", "--at", "2026-01-10");
        var told = shop.Json("test", "1", "fail", "--at", "2026-05-01")["warnings"]!.AsArray().Single(one => one!["code"]!.GetValue<string>() == "JL240")!["message"]!.GetValue<string>();
        Assert.Contains("as jars 2-7, 3-5, failed", told, StringComparison.Ordinal);
        shop.Json("discard", "2", "--at", "2026-05-02");
        shop.Json("discard", "3", "--at", "2026-05-02");
        Assert.DoesNotContain("JL240", Codes(shop.Json("test", "1", "fail", "--at", "2026-05-03")));
    }

    /// <summary>A test counts for 30 days.</summary>
    [Fact]
    public void The_calendar_asks_for_the_next_test_when_one_counts_no_longer()
    {
        shop.Json([.. Blonde, "--no-label", "--at", "2026-01-01"]);
        shop.Json("test", "1", "pass", "--at", "2026-05-10");
        var file = Path.Combine(shop.Folder, "due.ics");
        shop.Json("shelf", "--ics", file, "--at", "2026-05-11");
        Assert.Matches(@"DTSTART;VALUE=DATE:20260610\r\n(?:[^\r]*\r\n){0,4}SUMMARY:Test jar 1-9", File.ReadAllText(file));
        Assert.Single(shop.Json("shelf", "--due", "--at", "2026-06-10")["jars"]!.AsArray());
    }

    [Fact]
    public void A_shelf_is_not_blamed_for_a_jar_that_never_stood_there()
    {
        shop.Json("shop", "set", "shelf", "cellar=13 C", "--at", "2026-01-01");
        shop.Json([.. Blonde, "--shelf", "cellar", "--no-label", "--at", "2026-01-02"]);
        shop.Json("test", "1", "fail", "--at", "2026-05-20");
        shop.Json([.. Blonde, "--shelf", "main", "--no-label", "--at", "2026-05-21"]);
        shop.Json("shop", "set", "shelf", "cellar=25 C", "--at", "2026-01-03");
        var history = shop.Run("jar", "2", "--at", "2026-05-22").Result;
        Assert.DoesNotContain("cellar", history, StringComparison.Ordinal);
    }

    [Fact]
    public void A_jar_past_its_use_by_is_told_of_by_whatever_is_done_with_it()
    {
        shop.Json([.. Blonde, "--no-label", "--at", "2026-01-01"]);
        shop.Json("shop", "set", "shelf", "cellar=12 C", "--at", "2026-10-01");
        foreach (var line in (string[][])[["label", "1"], ["card", "1"], ["note", "1", "for Ada"], ["move", "1", "cellar", "--no-label"], ["use", "1", "10 mL"]])
        {
            Assert.Contains("JL170", Codes(shop.Json([.. line, "--at", "2026-10-02"])));
        }
    }

    private void FromBag(int jars)
    {
        shop.Json("bag", "add", "--grade", "blonde", "--mass", "1 lb", "--date", "2025-11-01", "--no-label", "--at", "2025-12-01");
        for (var jar = 0; jar < jars; jar++)
        {
            shop.Json("mix", "--bag", "1", "--solvent", "ethanol-95", "--cut", "2", "--pour", "200 mL", "--no-label", "--at", "2025-12-01");
        }
    }
}
