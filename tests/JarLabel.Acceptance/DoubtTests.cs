namespace JarLabel.Acceptance;

/// <summary>What is known of a jar stands where it is about to be used: flakes that were found bad since, labels that are newer or older than the ledger, tests that
/// were taken back.</summary>
public sealed class DoubtTests : IDisposable
{
    private static readonly string[] Batch = ["mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95"];
    private static readonly string[] Job = ["plan", "--for", "pad", "--area", "2 sq ft", "--coats", "2", "--grade", "garnet", "--solvent", "ethanol-95"];

    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("cloudy")]
    [InlineData("gel")]
    public void Flakes_that_were_found_bad_after_the_mixing_are_told_wherever_the_jar_is_about_to_be_used(string pinch)
    {
        FromBag(pinch);
        shop.Json("shop", "set", "shelf", "cellar=10 C");
        foreach (var line in (string[][])[["jar", "1"], ["scan", "1"], ["shelf"], Job, ["use", "1", "10 mL"], ["thin", "1", "--to", "1.2", "--no-label"], ["decant", "1", "--into", "50 mL", "--no-label"], ["jar", "3"], ["use", "3", "10 mL"],
            ["shelf", "--due"], ["label", "1"], ["card", "1"], ["label", "1", "2"], ["note", "1", "for Ada"], ["move", "1", "cellar"], ["move", "1", "main"], ["thicken", "3", "--to", "2", "--no-label"], ["undo", "3", "--no-label"]])
        {
            Assert.Contains("JL397", Codes(shop.Json([.. line, "--at", "2026-03-20"])));
        }

        Assert.DoesNotContain("JL397", Codes(shop.Json("jar", "2", "--at", "2026-03-20")));
        Assert.DoesNotContain("JL397", Codes(shop.Json("use", "2", "10 mL", "--at", "2026-03-20")));
    }

    [Fact]
    public void Such_a_jar_is_to_be_tested_now_everywhere_and_its_dates_never_come_later()
    {
        shop.Json("shop", "set", "shelf", "cellar=10 C");
        FromBag("cloudy");
        Assert.Equal([1], shop.Json("shelf", "--due", "--at", "2026-03-20")["jars"]!.AsArray().Select(j => Number(j!, "number")));
        Assert.Matches(@"(?m)^ *1-9 .* test ", shop.Run("shelf", "--at", "2026-03-20").Result);
        Assert.Equal("test", shop.Json("jar", "1", "--at", "2026-03-20")["jar"]!["state"]!.GetValue<string>());
        shop.Json("shelf", "--ics", "due.ics", "--at", "2026-03-20");
        Assert.Matches(@"DTSTART;VALUE=DATE:20260320\r\n(?:[^\r]*\r\n){0,4}SUMMARY:Test jar 1-9", File.ReadAllText(Path.Combine(shop.Folder, "due.ics")));
        var before = shop.Json("jar", "1", "--at", "2026-03-20")["jar"]!["useBy"]!.GetValue<string>();
        var moved = shop.Json("move", "1", "cellar", "--at", "2026-03-20");
        Assert.True(string.CompareOrdinal(moved["jar"]!["useBy"]!.GetValue<string>(), before) <= 0);
        Assert.True(string.CompareOrdinal(shop.Json("move", "2", "cellar", "--at", "2026-03-20")["jar"]!["useBy"]!.GetValue<string>(), before) > 0);
        shop.Json("shop", "set", "shelf", "main=12 C");
        var card = shop.Json("card", "1", "--at", "2026-03-20");
        Assert.Contains("15 Mar 2026", OutsideProgram.PdfToText.Run(card["label"]!["file"]!.GetValue<string>(), "-"), StringComparison.Ordinal); // from when it is to be tried: the day of the pinch
        shop.Json("test", "1", "pass", "--at", "2026-03-20");
        Assert.Equal("good", shop.Json("jar", "1", "--at", "2026-03-21")["jar"]!["state"]!.GetValue<string>());
        shop.Json("discard", "1", "--at", "2026-04-25");
        Assert.Contains("JL397", Codes(shop.Json("undo", "1", "--at", "2026-04-26")));
    }

    /// <summary>A use-by on glass is read by whoever comes by; one that is in doubt is none.</summary>
    [Fact]
    public void The_label_of_a_jar_in_doubt_gives_no_use_by_until_it_passed_a_test()
    {
        FromBag("gel");
        shop.Json("shop", "set", "base-url", "http://192.168.1.20:5080");
        foreach (var print in (string[][])[["label", "1"], ["label", "1", "--sheet", "a4-5x13-38.1x21.2"], ["label", "1", "--sheet", "letter-2x3-101.6x84.7"], ["card", "1"]])
        {
            var words = Words(shop.Json([.. print, "--at", "2026-03-20"])["label"]!["file"]!.GetValue<string>());
            Assert.Contains("test first", words, StringComparison.Ordinal);
            Assert.Equal(!print.Contains("a4-5x13-38.1x21.2"), words.Contains("15 Mar 2026", StringComparison.Ordinal)); // the smallest has no room for the day
            Assert.DoesNotMatch("use.by ≈|≈ [0-9]+ [A-Z][a-z]+ 202[67]", words);
        }

        shop.Json("test", "1", "pass", "--at", "2026-03-21");
        var after = Words(shop.Json("label", "1", "--at", "2026-03-21")["label"]!["file"]!.GetValue<string>());
        Assert.Matches("use by ≈ +[0-9]+ [A-Z][a-z]+ 2026", after);
        Assert.DoesNotContain("in doubt", after, StringComparison.Ordinal);

        static string Words(string file) => OutsideProgram.PdfToText.Run(file, "-layout", "-").Replace('\n', ' ');
    }

    /// <summary>The code on the label says what the print says, and a label from before the doubt is told to be out of date, as is one from after a test that counts no longer.</summary>
    [Fact]
    public void A_doubt_stands_in_the_code_the_lists_the_calendar_and_against_the_label_from_before()
    {
        FromBag("gel", label: true);
        foreach (var line in (string[][])[["jar", "1"], ["scan", "1"]])
        {
            var run = shop.Run([.. line, "--at", "2026-03-20"]).Result;
            Assert.Contains("still gives a use-by, as if it were not in doubt", run, StringComparison.Ordinal);
            Assert.Matches("in doubt +since 15 Mar 2026", run);
        }

        Assert.Matches(@"1-9 .* in doubt, label out of date", shop.Run("shelf", "--at", "2026-03-20").Result);
        Assert.Equal("2026-03-15", shop.Json("jar", "1", "--at", "2026-03-20")["jar"]!["inDoubtSince"]!.GetValue<string>());
        var listed = shop.Json("shelf", "--ics", "due.ics", "--at", "2026-03-20")["jars"]!.AsArray().Single(jar => Number(jar!, "number").Equals(1))!;
        Assert.Equal(("2026-03-15", true), (listed["inDoubtSince"]!.GetValue<string>(), listed["labelOutOfDate"]!.GetValue<bool>()));
        Assert.DoesNotContain("Use jar 1-9", File.ReadAllText(Path.Combine(shop.Folder, "due.ics")), StringComparison.Ordinal);
        Assert.Contains("Use jar 2-7", File.ReadAllText(Path.Combine(shop.Folder, "due.ics")), StringComparison.Ordinal);

        var label = shop.Json("label", "1", "--at", "2026-03-20");
        Assert.Contains("TEST FIRST. IN DOUBT 2026-03-15", label["label"]!["payload"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.DoesNotContain("still gives a use-by", shop.Run("jar", "1", "--at", "2026-03-20").Result, StringComparison.Ordinal);

        shop.Json("test", "1", "pass", "--at", "2026-03-21");
        Assert.Contains("USE BY", shop.Json("label", "1", "--at", "2026-03-22")["label"]!["payload"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.DoesNotContain("still gives a use-by", shop.Run("jar", "1", "--at", "2026-04-20").Result, StringComparison.Ordinal);
        Assert.Contains("still gives a use-by", shop.Run("jar", "1", "--at", "2026-04-21").Result, StringComparison.Ordinal);
    }

    /// <summary>Drops that dry hard settle a doubt for 30 days, and the day after is known beforehand. Flakes that were going off keep half as long, whatever was found when.</summary>
    [Theory]
    [InlineData("cloudy")]
    [InlineData("gel")]
    public void A_pass_settles_a_doubt_for_30_days_and_gives_nothing_back_of_what_the_flakes_have_lost(string pinch)
    {
        FromBag(pinch);
        shop.Json("test", "1", "pass", "--at", "2026-03-20");
        var jar = shop.Json("jar", "1", "--at", "2026-03-21")["jar"]!;
        Assert.Equal(("good", "2026-04-20"), (jar["state"]!.GetValue<string>(), jar["testFrom"]!.GetValue<string>()));
        Assert.Equal("2026-07-09", jar["learnedUseBy"]!.GetValue<string>()); // 8 months of claims, half of them
        shop.Json("shelf", "--ics", "due.ics", "--at", "2026-03-21");
        Assert.Matches(@"DTSTART;VALUE=DATE:20260420\r\n(?:[^\r]*\r\n){0,4}SUMMARY:Test jar 1-9", File.ReadAllText(Path.Combine(shop.Folder, "due.ics")));
        Assert.Contains("Its flakes were found to be going off: jar 1-9 should be used by about 9 Jul 2026", shop.Run("jar", "1", "--at", "2026-03-21").Result, StringComparison.Ordinal);
        var label = shop.Json("label", "1", "--at", "2026-03-21");
        Assert.Contains("USE BY 2026-07-09", label["label"]!["payload"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains("its flakes were found to be going off", shop.Run("jar", "1", "--at", "2026-03-21").Result, StringComparison.Ordinal);
        Assert.Equal("test", shop.Json("jar", "1", "--at", "2026-04-20")["jar"]!["state"]!.GetValue<string>());
    }

    /// <summary>A pass of today counts, also where the flakes have moved the use-by before it; every surface gives the sooner date.</summary>
    [Fact]
    public void A_pass_after_the_sooner_use_by_of_bad_flakes_is_not_told_to_have_run_out()
    {
        FromBag("gel");
        var passed = shop.Run("test", "1", "pass", "--at", "2026-08-01").Result;
        var jar = shop.Run("jar", "1", "--at", "2026-08-01").Result;
        Assert.Contains("dried hard on 1 Aug 2026, after its estimated use-by", jar, StringComparison.Ordinal);
        foreach (var said in (string[])[passed, jar])
        {
            Assert.DoesNotContain("that counted for 30 days", said, StringComparison.Ordinal);
            Assert.Matches("use by +about [0-9]+ Jul 2026", said);
        }
    }

    /// <summary>What dries before the flakes are dissolved is no test, and settles nothing.</summary>
    [Fact]
    public void A_pass_before_the_flakes_are_dissolved_settles_no_doubt()
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2026-01-05", "--no-label", "--at", "2026-03-01");
        shop.Json([.. Batch, "--bag", "1", "--no-label", "--at", "2026-03-09 10:00"]);
        shop.Json("bag", "test", "1", "gel", "--at", "2026-03-09 12:00");
        Assert.Contains("once it is dissolved", shop.Run([.. Job, "--at", "2026-03-09 12:30"]).Result, StringComparison.Ordinal);
        Assert.Contains("JL230", Codes(shop.Json("test", "1", "pass", "--at", "2026-03-09 13:00")));
        Assert.Equal("test", shop.Json("jar", "1", "--at", "2026-03-11")["jar"]!["state"]!.GetValue<string>());
        Assert.Contains("JL397", Codes(shop.Json("use", "1", "10 mL", "--at", "2026-03-11")));
        var second = shop.Json("test", "1", "pass", "--at", "2026-03-12");
        Assert.DoesNotContain("JL230", Codes(second));
        Assert.Equal("good", second["jar"]!["state"]!.GetValue<string>());
    }

    /// <summary>Of one day, what came first was first: a pass in the morning says nothing of a pinch in the evening, nor a pinch in the morning of a batch at noon.</summary>
    [Fact]
    public void On_one_day_the_hour_tells_what_came_first()
    {
        FromBag("gel", at: "2026-03-15 17:00", test: "2026-03-15 09:00");
        Assert.Equal("test", shop.Json("jar", "1", "--at", "2026-03-16")["jar"]!["state"]!.GetValue<string>());
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2026-01-05", "--no-label", "--at", "2026-03-01");
        shop.Json("bag", "test", "2", "cloudy", "--at", "2026-03-18 10:00");
        shop.Json("bag", "test", "2", "all", "--at", "2026-03-18 11:00");
        shop.Json([.. Batch, "--bag", "2", "--no-label", "--at", "2026-03-18 12:00"]);
        Assert.DoesNotContain("JL397", Codes(shop.Json("jar", "3", "--at", "2026-03-20")));
    }

    /// <summary>A batch that was entered late is not the latest thing known of its bag.</summary>
    [Fact]
    public void A_pinch_cannot_be_dated_before_a_batch_because_another_was_entered_late()
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "900 g", "--date", "2025-11-01", "--no-label", "--at", "2026-01-02");
        shop.Json([.. Batch, "--bag", "1", "--no-label", "--at", "2026-01-05 10:00"]);
        shop.Json([.. Batch, "--bag", "1", "--no-label", "--at", "2026-01-03 10:00"]);
        var early = shop.Run("bag", "test", "1", "gel", "--at", "2026-01-04 10:00");
        Assert.Equal(2, early.ExitCode);
        Assert.StartsWith("error JL375", early.Errors, StringComparison.Ordinal);
        shop.Json("bag", "test", "1", "gel", "--at", "2026-01-06 10:00");
        Assert.Equal(["test", "test"], shop.Json("shelf", "--at", "2026-01-18")["jars"]!.AsArray().Select(jar => jar!["state"]!.GetValue<string>()));
    }

    /// <summary>A pass counts for 30 days; that it was there and no longer counts is said.</summary>
    [Fact]
    public void A_test_passed_too_long_ago_is_not_forgotten_without_a_word()
    {
        Mix("2026-03-09");
        shop.Json("test", "1", "pass", "--at", "2026-09-20");
        foreach (var (day, still) in ((string, bool)[])[("2026-10-20", true), ("2026-10-21", false)])
        {
            Assert.Equal(!still, shop.Run("jar", "1", "--at", day).Result.Contains("Its drops dried hard on 20 Sep 2026; that counted for 30 days.", StringComparison.Ordinal));
        }

        Assert.Contains("past its use-by: it may never dry hard. Its drops dried hard on 20 Sep 2026", shop.Run("use", "1", "10 mL", "--at", "2027-06-01").Result, StringComparison.Ordinal);
        Assert.DoesNotContain("Its drops dried hard", shop.Run([.. Batch, "--at", "2026-03-09", "--no-label"]).Result, StringComparison.Ordinal);
        Assert.DoesNotContain("Its drops dried hard", shop.Run("jar", "2", "--at", "2027-06-01").Result, StringComparison.Ordinal);
    }

    /// <summary>What the jar did itself says more than a pinch of its flakes.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_jar_that_failed_is_to_be_discarded_and_not_tried_for_its_flakes(bool label)
    {
        FromBag("cloudy");
        if (label)
        {
            shop.Json("label", "1", "--at", "2026-03-16");
        }

        var failed = shop.Run("test", "1", "fail", "--at", "2026-03-20");
        foreach (var run in (Run[])[failed, shop.Run("jar", "1", "--at", "2026-03-20"), shop.Run("scan", "1", "--at", "2026-03-20")])
        {
            Assert.Contains("caution: Jar 1-9 failed its drying test on 20 Mar 2026", run.Result, StringComparison.Ordinal);
            Assert.Contains("jarlabel discard 1", run.Result, StringComparison.Ordinal);
            Assert.DoesNotContain("A pinch of bag", run.Result, StringComparison.Ordinal);
            Assert.Equal(label, run.Result.Contains("does not say yet that its test failed", StringComparison.Ordinal)); // it was printed in doubt, without a use-by
        }
    }

    /// <summary>Flakes do not get better: a later pinch that dissolves takes nothing back of what the jars hold. Taking the pinch back does.</summary>
    [Fact]
    public void A_better_pinch_later_does_not_settle_what_a_bad_one_said_of_the_jars()
    {
        FromBag("cloudy");
        shop.Json("bag", "test", "1", "all", "--at", "2026-03-18");
        Assert.Contains("JL397", Codes(shop.Json("jar", "1", "--at", "2026-03-20")));
        shop.Json("bag", "undo", "1", "--at", "2026-03-21");
        shop.Json("bag", "undo", "1", "--at", "2026-03-21");
        Assert.DoesNotContain("JL397", Codes(shop.Json("jar", "1", "--at", "2026-03-22")));
    }

    [Fact]
    public void A_jar_that_dried_slowly_says_so_wherever_it_is_about_to_be_used()
    {
        Mix("2026-03-09");
        shop.Json("test", "1", "slow", "--at", "2026-03-20");
        foreach (var line in (string[][])[["jar", "1"], ["scan", "1"], Job, ["use", "1", "10 mL"], ["thin", "1", "--to", "1.2", "--no-label"], ["decant", "1", "--into", "50 mL", "--no-label"]])
        {
            Assert.Contains("JL398", Codes(shop.Json([.. line, "--at", "2026-03-21"])));
        }

        Assert.Contains("passed slowly 20 Mar 2026", shop.Run("shelf").Result, StringComparison.Ordinal);
        Assert.Equal(0, shop.Run("verify").ExitCode);
        shop.Json("test", "1", "pass", "--at", "2026-03-22");
        Assert.Contains("passed 22 Mar 2026", shop.Run("shelf").Result, StringComparison.Ordinal);
        Assert.DoesNotContain("JL398", Codes(shop.Json("use", "1", "10 mL", "--at", "2026-03-23")));
    }

    /// <summary>A slip in the year must not date every jar of the kind later.</summary>
    [Fact]
    public void What_is_dated_years_ahead_is_told_and_teaches_nothing()
    {
        Mix("2026-01-10");
        Mix("2026-02-10");
        var before = shop.Json("jar", "2", "--at", "2026-03-01")["jar"]!["useBy"]!.GetValue<string>();
        foreach (var line in (string[][])[["test", "1", "pass"], ["use", "1", "10 mL"], ["mix", .. Batch[1..], "--no-label"]])
        {
            Assert.Contains("JL234", Codes(shop.Json([.. line, "--at", "2162-11-20"])));
        }

        Assert.DoesNotContain("JL124", Codes(shop.Json("jar", "2", "--at", "2026-03-01")));
        Assert.Equal(before, shop.Json("jar", "2", "--at", "2026-03-01")["jar"]!["useBy"]!.GetValue<string>());
        Assert.Empty(shop.Json("keeping", "--at", "2026-03-01")["kinds"]!.AsArray());
    }

    /// <summary>A slip of a century back is one as well; three years back is an old jar that is entered late.</summary>
    [Fact]
    public void What_is_dated_a_century_back_is_told()
    {
        foreach (var line in (string[][])[["mix", .. Batch[1..], "--no-label"], ["bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "1926-03-01", "--no-label"], ["bottle", "add", "--solvent", "ethanol-95", "--volume", "1 gal", "--no-label"]])
        {
            var run = shop.Run([.. line, "--at", "1926-04-01"]);
            Assert.True(run.ExitCode == 0, run.Errors);
            Assert.Contains("more than ten years back", run.Result, StringComparison.Ordinal);
            Assert.DoesNotContain("JL234", Codes(shop.Json([.. line, "--at", "2023-04-01"])));
        }
    }

    /// <summary>Garnet fails at seven weeks, so that jars of its kind come before one of another kind that is sooner on record.</summary>
    [Fact]
    public void The_list_is_in_the_order_of_the_dates_that_count()
    {
        Mix("2026-01-10");
        shop.Json("mix", "--grade", "seedlac", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--flake-date", "2022-01-01", "--no-label", "--at", "2026-01-09");
        Mix("2026-02-10");
        shop.Json("test", "1", "fail", "--at", "2026-03-01");
        var jars = shop.Json("shelf", "--at", "2026-03-02")["jars"]!.AsArray().Where(jar => Number(jar!, "number") != 1).ToArray();
        string[] dates = [.. jars.Select(jar => ((string[])[jar!["useBy"]!.GetValue<string>(), jar["learnedUseBy"]?.GetValue<string>() ?? "9"]).Min(StringComparer.Ordinal)!)];
        Assert.Equal(dates.Order(StringComparer.Ordinal), dates);
        Assert.Contains(jars, jar => jar!["learnedUseBy"] is not null);
        Assert.Equal([Number(jars[0]!, "number")], shop.Json("shelf", "--at", "2026-03-02", "--first", "2")["jars"]!.AsArray().Select(jar => Number(jar!, "number")).Where(number => number != 1).Take(1));
    }

    [Fact]
    public void Of_a_failed_jar_that_is_emptied_nothing_is_said_that_cannot_be_done()
    {
        Mix("2026-03-09");
        shop.Json("test", "1", "fail", "--at", "2026-03-20");
        var emptied = shop.Run("use", "1", "all", "--at", "2026-03-21");
        Assert.Matches(@"state\s+used up", emptied.Result);
        Assert.DoesNotContain("jarlabel discard", emptied.Result, StringComparison.Ordinal);
        Assert.Contains("JL170", Codes(shop.Json("undo", "1", "--at", "2026-03-22", "--no-label")));
    }

    /// <summary>16 CFR 1500.14(b)(4): 4 % methanol by weight. A jar comes to it by thinning and by blending too.</summary>
    [Fact]
    public void What_came_into_a_jar_after_its_mixing_stands_in_every_list_and_in_no_plan_for_something_else()
    {
        Mix("2026-03-09");
        Mix("2026-03-09");
        Mix("2026-03-09");
        shop.Json("mix", "--grade", "blonde", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label", "--at", "2026-03-09");
        shop.Json("thin", "1", "--to", "1", "--solvent", "methanol", "--no-label", "--at", "2026-03-11");
        shop.Json("blend", "2=100 mL", "4=200 mL", "--no-label", "--at", "2026-03-11");
        shop.Json("blend", "1=100 mL", "3=all", "--no-label", "--at", "2026-03-11");
        var list = shop.Json("shelf", "--at", "2026-03-12")["jars"]!.AsArray().ToDictionary(j => Number(j!, "number"), j => j!);
        Assert.Equal([1, 6], list.Where(j => j.Value["poison"]?.GetValue<bool>() == true).Select(j => j.Key).Order());
        Assert.Equal(2, Regex.Count(shop.Run("shelf", "--at", "2026-03-12").Result, "POISON"));
        Assert.Equal(["blonde", "garnet"], list[5]["grades"]!.AsArray().Select(grade => grade!.GetValue<string>()));
        Assert.Contains("blonde + garnet", shop.Run("shelf", "--at", "2026-03-12").Result, StringComparison.Ordinal);
        var plan = shop.Run([.. Job, "--cut", "1.5", "--at", "2026-03-12"]).Result;
        Assert.Contains("jar 2-7", plan, StringComparison.Ordinal);
        Assert.DoesNotContain("jar 1-9", plan, StringComparison.Ordinal);
        Assert.DoesNotContain("jar 6-", plan, StringComparison.Ordinal);
        Assert.DoesNotContain("jar 5-", shop.Run(["plan", "--for", "pad", "--area", "2 sq ft", "--coats", "2", "--grade", "blonde", "--solvent", "ethanol-95", "--at", "2026-03-12"]).Result, StringComparison.Ordinal);
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    /// <summary>The same liquid in two glasses: what one did, the other may do.</summary>
    [Fact]
    public void What_a_jar_of_the_same_batch_did_is_told_of_the_others_until_their_own_drops_dry_hard()
    {
        Mix("2026-01-10");
        shop.Json("decant", "1", "--into", "100 mL, 50 mL", "--no-label", "--at", "2026-01-20");
        Mix("2026-01-10");
        shop.Json("test", "2", "fail", "--at", "2026-01-25");
        foreach (var jar in (string[])["1", "3"])
        {
            Assert.Contains("JL240", Codes(shop.Json("jar", jar, "--at", "2026-01-25")));
            Assert.Equal("test", shop.Json("jar", jar, "--at", "2026-01-25")["jar"]!["state"]!.GetValue<string>());
        }

        Assert.Equal([1, 2, 3], shop.Json("shelf", "--due", "--at", "2026-01-26")["jars"]!.AsArray().Select(j => Number(j!, "number")).Order());
        Assert.DoesNotContain("JL240", Codes(shop.Json("jar", "4", "--at", "2026-01-25")));
        Assert.Contains("JL240", Codes(shop.Json("use", "1", "10 mL", "--at", "2026-01-26")));
        shop.Json("discard", "4", "--at", "2026-01-26");
        Assert.Contains("try a few drops", shop.Run([.. Job, "--at", "2026-01-26"]).Result, StringComparison.Ordinal);
        shop.Json("test", "1", "pass", "--at", "2026-01-27");
        Assert.Equal("good", shop.Json("jar", "1", "--at", "2026-01-27")["jar"]!["state"]!.GetValue<string>());
        Assert.Contains("JL240", Codes(shop.Json("jar", "3", "--at", "2026-01-27")));
        shop.Json("undo", "2", "--at", "2026-01-28");
        Assert.DoesNotContain("JL240", Codes(shop.Json("jar", "3", "--at", "2026-01-28")));
    }

    /// <summary>The use-by is an estimate, and drops on glass decide.</summary>
    [Fact]
    public void Drops_that_dried_hard_after_the_use_by_count_for_as_long_as_a_test_holds()
    {
        shop.Json("mix", "--grade", "bleached", "--cut", "2", "--pour", "200 mL", "--solvent", "ethanol-95", "--no-label", "--at", "2026-01-03"); // three months: until 3 Apr
        Assert.Equal("past", State("2026-04-10"));
        shop.Json("test", "1", "pass", "--at", "2026-04-10");
        Assert.Equal("test", State("2026-04-10"));
        var used = shop.Json("use", "1", "50 mL", "--at", "2026-04-10");
        Assert.Contains(used["warnings"]!.AsArray(), told => told!["code"]!.GetValue<string>() == "JL179" && told["message"]!.GetValue<string>().StartsWith("Drops of jar 1-9 dried hard on 10 Apr 2026, after its estimated use-by", StringComparison.Ordinal));
        Assert.Equal("test", State("2026-05-10"));
        Assert.Equal("past", State("2026-05-11"));
        Assert.Equal([1], shop.Json("shelf", "--due", "--at", "2026-04-11")["jars"]!.AsArray().Select(j => Number(j!, "number")));

        string State(string day) => shop.Json("jar", "1", "--at", day)["jar"]!["state"]!.GetValue<string>();
    }

    [Fact]
    public void What_was_filled_from_a_failed_jar_says_where_that_comes_from_and_is_given_no_date()
    {
        Mix("2026-01-05", label: true);
        Mix("2026-01-05");
        shop.Json("test", "1", "fail", "--at", "2026-02-01");
        shop.Json("label", "1", "--at", "2026-02-01");
        var blend = shop.Json("blend", "1=100 mL", "2=100 mL", "--no-label", "--at", "2026-02-02");
        Assert.Contains(blend["warnings"]!.AsArray(), told => told!["message"]!.GetValue<string>().StartsWith("Jar 3-5 holds liquid of a jar that failed its drying test on 1 Feb 2026", StringComparison.Ordinal));
        var emptied = shop.Json("blend", "1=all", "2=100 mL", "--no-label", "--at", "2026-02-02", "--dry-run");
        Assert.DoesNotContain(emptied["warnings"]!.AsArray(), told => told!["message"]!.GetValue<string>().Contains("discard 1", StringComparison.Ordinal));
        Assert.DoesNotContain("1-9", Messages(shop.Json("shop", "set", "shelf", "main=26 C", "--at", "2026-02-03")), StringComparison.Ordinal);
        Assert.DoesNotContain("1-9", Messages(shop.Json("shop", "set", "still-good", "95", "--at", "2026-02-04")), StringComparison.Ordinal);
        shop.Json("discard", "2", "--at", "2026-02-05");
        shop.Json("shelf", "--out", "s.pdf", "--at", "2026-02-10");
        var drawn = OutsideProgram.PdfToText.Run("-layout", Path.Combine(shop.Folder, "s.pdf"), "-");
        Assert.Matches("(?m)^ *1-9 .* test failed *$", drawn);
        Assert.Matches("(?m)^ *3-5 .* test failed *$", drawn);
        Assert.DoesNotMatch("≈ [0-9]+ [A-Z]", drawn);
        Assert.DoesNotContain("good,", drawn, StringComparison.Ordinal);

        static string Messages(JsonNode answer) => string.Join(' ', answer["warnings"]!.AsArray().Select(w => w!["message"]!.GetValue<string>()));
    }

    [Theory]
    [InlineData("poison-center", "030 19240", "the telephone number")]
    [InlineData("rules", "clp", "the rules")]
    public void Labels_that_tell_what_no_longer_holds_are_told_when_the_shop_settles_it(string setting, string value, string what)
    {
        Assert.Empty(Codes(shop.Json("shop", "set", setting, value)));
        shop.Json("shop", "set", setting, "none");
        Mix("2026-01-05", label: true);
        Mix("2026-01-05");
        var told = Assert.Single(shop.Json("shop", "set", setting, value)["warnings"]!.AsArray())!;
        Assert.Equal("JL239", told["code"]!.GetValue<string>());
        Assert.StartsWith($"1 jar on the shelves has a label printed before, with {what} of then", told["message"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Empty(Codes(shop.Json("shop", "set", setting, value)));
    }

    [Fact]
    public void A_label_that_was_never_printed_is_not_out_of_date()
    {
        Mix("2026-01-05");
        Mix("2026-01-06", label: true);
        Mix("2026-01-07");
        shop.Json("test", "3", "fail", "--at", "2026-02-10");
        Assert.Equal(1, Regex.Count(shop.Run("shelf", "--at", "2026-02-11", "--out", "s.pdf").Result, "label out of date"));
        var drawn = OutsideProgram.PdfToText.Run("-layout", Path.Combine(shop.Folder, "s.pdf"), "-");
        Assert.Equal((1, 1), (Regex.Count(drawn, "label out of date"), Regex.Count(drawn, "moved by tests")));
    }

    [Fact]
    public void What_was_told_when_it_was_mixed_is_told_when_it_is_looked_at()
    {
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "isopropanol-70", "--no-label");
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "methanol", "--no-label");
        foreach (var look in (string[])["jar", "scan"])
        {
            Assert.Contains("JL172", Codes(shop.Json(look, "1")));
            Assert.Contains("JL385", Codes(shop.Json(look, "2")));
        }
    }

    /// <summary>Garnet keeps as long as what is dewaxed does, and may have its wax.</summary>
    [Fact]
    public void Kinds_that_keep_alike_are_called_by_what_is_in_them()
    {
        Mix("2026-03-09");
        shop.Json("test", "1", "pass", "--at", "2026-04-20");
        Assert.Contains("dewaxed, garnet or ruby in ethanol-95", shop.Run("keeping").Result, StringComparison.Ordinal);
        Assert.Equal("dewaxed", shop.Json("keeping")["kinds"]![0]!["keeping"]!.GetValue<string>());
    }

    /// <summary>29 CFR 1910.106, Table H-12: glass of at most a quart for a liquid of category 2; a jar of a pint and a bottle of a gallon stand there too.</summary>
    [Fact]
    public void What_is_too_large_for_glass_is_named_where_the_shelf_is_looked_at()
    {
        Mix("2026-03-09");
        foreach (var pour in (string[])["1 L", "2 L"])
        {
            shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", pour, "--solvent", "ethanol-95", "--no-label");
        }

        shop.Json("bottle", "add", "--solvent", "ethanol-95", "--volume", "1 gal", "--material", "glass", "--no-label");
        foreach (var line in (string[][])[["shelf"], ["notice"], ["shelf", "main"]])
        {
            var told = shop.Json(line)["warnings"]!.AsArray().Single(w => w!["code"]!.GetValue<string>() == "JL176")!["message"]!.GetValue<string>();
            Assert.StartsWith("Jar 2-7, jar 3-5, bottle 1-9: ", told, StringComparison.Ordinal);
        }

        shop.Json("use", "3", "all");
        Assert.DoesNotContain("3-5", shop.Run("shelf").Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bottle_that_came_after_the_step_is_told()
    {
        shop.Json("bottle", "add", "--solvent", "ethanol-95", "--volume", "1 L", "--date", "2026-03-10", "--no-label", "--at", "2026-03-11");
        Assert.Contains("JL235", Codes(shop.Json([.. Batch, "--bottle", "1", "--no-label", "--at", "2026-03-09"])));
        Assert.DoesNotContain("JL235", Codes(shop.Json([.. Batch, "--bottle", "1", "--no-label", "--at", "2026-03-10"])));
        Mix("2026-03-05");
        Assert.Contains("JL235", Codes(shop.Json("thin", "3", "--to", "1", "--bottle", "1", "--no-label", "--at", "2026-03-06")));
    }

    [Fact]
    public void A_jar_that_is_asked_for_as_of_a_day_before_says_that_it_is_shown_as_it_is()
    {
        Mix("2026-03-09");
        shop.Json("thin", "1", "--to", "1.2", "--no-label", "--at", "2026-04-01");
        foreach (var line in (string[][])[["jar", "1"], ["scan", "1"], ["shelf"]])
        {
            Assert.Contains("JL236", Codes(shop.Json([.. line, "--at", "2026-03-20"])));
            Assert.DoesNotContain("JL236", Codes(shop.Json([.. line, "--at", "2026-04-02"])));
        }
    }

    /// <summary>A jar that is due for its flakes alone is found however many are due on record before it.</summary>
    [Fact]
    public void Bad_flakes_are_found_behind_a_thousand_other_jars()
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2026-01-05", "--no-label", "--at", "2026-01-05");
        File.WriteAllText(Path.Combine(shop.Folder, "many.csv"), "grade,cut,pour,solvent\n" + string.Concat(Enumerable.Repeat("garnet,1.5,100 mL,ethanol-95\n", 1000)));
        shop.Json("mix", "--list", "many.csv", "--no-label", "--at", "2026-03-09");
        shop.Json([.. Batch, "--bag", "1", "--no-label", "--at", "2026-03-20"]);
        shop.Json("bag", "test", "1", "cloudy", "--at", "2026-03-21");
        Assert.Equal([1001], shop.Json("shelf", "--due", "--at", "2026-03-22")["jars"]!.AsArray().Select(j => Number(j!, "number")));
    }

    [Fact]
    public void Methanol_in_a_jar_is_told_in_the_list()
    {
        Mix("2026-03-09");
        Assert.DoesNotContain("POISON", shop.Run("shelf").Result, StringComparison.Ordinal);
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "methanol", "--no-label");
        Assert.Matches(@"(?m)^ *2-7 .*POISON$", shop.Run("shelf").Result);
    }

    /// <summary>What is pinned up beside the jar does not change what stands on the glass.</summary>
    [Fact]
    public void A_card_leaves_the_label_on_the_glass_out_of_date()
    {
        Mix("2026-03-09", label: true);
        shop.Json("thin", "1", "--to", "1", "--no-label", "--at", "2026-03-10");
        shop.Json("card", "1", "--at", "2026-03-10");
        Assert.True(Assert.Single(shop.Json("shelf", "--at", "2026-03-10")["jars"]!.AsArray())!["labelOutOfDate"]!.GetValue<bool>());
        Assert.Contains("JL186", Codes(shop.Json("jar", "1", "--at", "2026-03-10")));
        shop.Json("label", "1", "--at", "2026-03-11");
        shop.Json("card", "1", "--at", "2026-03-11");
        Assert.DoesNotContain("JL186", Codes(shop.Json("jar", "1", "--at", "2026-03-11")));
    }

    [Theory]
    [InlineData("bag")]
    [InlineData("bottle")]
    [InlineData("notice")]
    public void A_design_made_for_something_else_is_none_for_a_jar(string design)
    {
        Mix("2026-03-09");
        foreach (var line in (string[][])[["label", "1"], ["label", "1", "--copies", "2"], ["thin", "1", "--to", "1"]])
        {
            Assert.StartsWith("error JL232", shop.Run([.. line, "--design", design]).Errors, StringComparison.Ordinal);
        }

        Assert.Equal(1, Number(shop.Json("jar", "1")["jar"]!, "revision"));
    }

    /// <summary>The flakes take a day to dissolve; what dries before is weaker, or no finish yet.</summary>
    [Fact]
    public void A_test_before_the_flakes_are_dissolved_says_nothing_of_how_long_the_kind_keeps()
    {
        Mix("2026-03-09");
        Assert.Contains("JL230", Codes(shop.Json("test", "1", "fail", "--at", "2026-03-09 13:00")));
        Assert.Empty(shop.Json("keeping")["kinds"]!.AsArray());
        Assert.Equal([1], shop.Json("keeping")["notCounted"]!.AsArray().Select(j => j!.GetValue<int>()));
        Assert.DoesNotContain("JL230", Codes(shop.Json("test", "1", "pass", "--at", "2026-03-12")));
        Assert.Equal((1, 0), (Number(shop.Json("keeping")["kinds"]![0]!, "tests"), Number(shop.Json("keeping")["kinds"]![0]!, "failed")));
    }

    /// <summary>Flakes are in every jar that was filled from one that was mixed from the bag.</summary>
    [Fact]
    public void The_test_of_a_bag_names_what_was_poured_off_too()
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2026-01-05", "--no-label", "--at", "2026-03-01");
        shop.Json([.. Batch, "--bag", "1", "--no-label", "--at", "2026-03-09"]);
        shop.Json("decant", "1", "--into", "100 mL,all", "--no-label", "--at", "2026-03-12");
        var told = shop.Json("bag", "test", "1", "gel", "--at", "2026-03-18", "--dry-run")["warnings"]!.AsArray().Select(w => w!["message"]!.GetValue<string>()).ToArray();
        Assert.Contains(told, message => message.StartsWith("Mixed from bag 1-9 before: jars 2-7, 3-5.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_plan_tries_such_a_jar_before_any_coat_until_it_passed_a_test()
    {
        FromBag("cloudy");
        shop.Json("discard", "2", "--at", "2026-03-19");
        var plan = shop.Json([.. Job, "--at", "2026-03-20"]);
        Assert.True(plan["jars"]![0]!["testFirst"]!.GetValue<bool>());
        var steps = plan["steps"]!.AsArray().Select(s => s!["words"]!.GetValue<string>()).ToList();
        Assert.InRange(steps.FindIndex(words => words.StartsWith("try a few drops of jar 1-9", StringComparison.Ordinal)), 0, steps.FindIndex(words => words.StartsWith("take ", StringComparison.Ordinal)) - 1);
        Assert.StartsWith("try a few drops", shop.Json(["plan", "--for", "seal", "--area", "40 sq ft", "--coats", "3", .. Job.Skip(1), "--at", "2026-03-20"])["steps"]![0]!["words"]!.GetValue<string>(), StringComparison.Ordinal); // before anything is bought or mixed
        shop.Json("test", "1", "pass", "--at", "2026-03-20");
        Assert.DoesNotContain("JL397", Codes(shop.Json("use", "1", "10 mL", "--at", "2026-03-21")));
        Assert.False(shop.Json([.. Job, "--at", "2026-03-21"])["jars"]![0]!["testFirst"]!.GetValue<bool>());
        Assert.Contains("JL397", Codes(shop.Json("use", "1", "10 mL", "--at", "2026-04-25"))); // a test holds for 30 days
    }

    [Fact]
    public void Flakes_that_were_known_to_be_cloudy_are_in_the_dates_already()
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2026-01-05", "--no-label", "--at", "2026-03-01");
        shop.Json("bag", "test", "1", "cloudy", "--at", "2026-03-02");
        shop.Json([.. Batch, "--bag", "1", "--no-label", "--at", "2026-03-09"]);
        Assert.DoesNotContain("JL397", Codes(shop.Json("use", "1", "10 mL", "--at", "2026-03-20")));
    }

    /// <summary>A jar that was poured off is the batch it came from: its failure is that batch's.</summary>
    [Fact]
    public void Tests_of_what_was_poured_off_teach_the_batch_it_came_from()
    {
        Mix("2026-01-10");
        shop.Json("decant", "1", "--into", "100 mL", "--at", "2026-02-01", "--no-label");
        shop.Json("test", "1", "pass", "--at", "2026-04-01");
        Assert.DoesNotContain("JL217", Codes(shop.Json("test", "2", "fail", "--at", "2026-05-01")));
        var kind = Assert.Single(shop.Json("keeping")["kinds"]!.AsArray())!;
        Assert.Equal((2, 1, 1), (Number(kind, "tests"), Number(kind, "jars"), Number(kind, "failed")));
        Assert.Empty(shop.Json("keeping")["notCounted"]!.AsArray());
    }

    [Fact]
    public void Tests_of_several_batches_or_after_fresh_flakes_teach_nothing_and_that_is_said()
    {
        Mix("2026-01-10");
        Mix("2026-02-10");
        shop.Json("test", "1", "pass", "--at", "2026-03-01");
        shop.Json("thicken", "1", "--to", "2", "--at", "2026-03-02", "--no-label");
        Assert.Contains("JL217", Codes(shop.Json("test", "1", "pass", "--at", "2026-04-01")));
        shop.Json("blend", "1=100 mL", "2=100 mL", "--at", "2026-04-02", "--no-label");
        Assert.Contains("JL217", Codes(shop.Json("test", "3", "fail", "--at", "2026-05-01")));
        var answer = shop.Json("keeping");
        Assert.Equal([1, 3], answer["notCounted"]!.AsArray().Select(j => j!.GetValue<int>()));
        Assert.Equal(1, Number(Assert.Single(answer["kinds"]!.AsArray())!, "tests")); // the one before the fresh flakes
        Assert.Contains("tests of jars 1-9, 3-5: of several batches", shop.Run("keeping").Result, StringComparison.Ordinal);
    }

    [Fact]
    public void A_test_that_was_taken_back_counts_nowhere()
    {
        Mix("2026-01-10");
        shop.Json("test", "1", "fail", "--at", "2026-03-01");
        shop.Json("label", "1", "--at", "2026-03-02");
        shop.Json("test", "1", "fail", "--at", "2026-03-03");
        shop.Json("undo", "1", "--at", "2026-03-03", "--no-label");
        Assert.DoesNotContain("JL359", Codes(shop.Json("scan", "1", "--at", "2026-03-04"))); // the label says that the first test failed
        shop.Json("undo", "1", "--at", "2026-03-04", "--no-label");
        Assert.DoesNotContain("JL126", Codes(shop.Json("test", "1", "pass", "--at", "2026-03-05")));
        Assert.Equal(0, Number(Assert.Single(shop.Json("keeping")["kinds"]!.AsArray())!, "failed"));
    }

    [Fact]
    public void A_jar_that_is_gone_is_not_told_to_be_discarded()
    {
        Mix("2026-01-10", label: true);
        shop.Json("test", "1", "fail", "--at", "2026-03-01");
        Assert.Contains("JL359", Codes(shop.Json("scan", "1", "--at", "2026-03-02")));
        shop.Json("discard", "1", "--at", "2026-03-02");
        Assert.Equal(["JL187"], Codes(shop.Json("scan", "1", "--at", "2026-03-03")));
    }

    [Fact]
    public void A_label_that_is_newer_or_older_than_the_ledger_is_told()
    {
        shop.Json("shop", "set", "base-url", "http://192.168.1.20:5080");
        Mix("2026-01-10", label: true);
        foreach (var code in (string[])["JAR 1-9.4", "HTTP://192.168.1.20:5080/J/1-9.4"])
        {
            var newer = shop.Json("scan", code, "--at", "2026-01-12");
            Assert.Equal("JL216", Codes(newer).First());
            Assert.False(newer["scanned"]!["outOfDate"]!.GetValue<bool>());
        }

        var run = shop.Run("scan", "HTTP://10.0.0.7:5080/J/1-9.4");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("error JL185", run.Errors, StringComparison.Ordinal);
        Assert.Contains("from another or newer copy of this ledger", run.Errors, StringComparison.Ordinal);
        shop.Json("thin", "1", "--to", "1", "--no-label", "--at", "2026-01-13");
        Assert.Contains("JL186", Codes(shop.Json("scan", "JAR 1-9.1", "--at", "2026-01-14")));
        Assert.Contains("JL186", Codes(shop.Json("jar", "1", "--at", "2026-01-14")));
    }

    /// <summary>Three of four are due; the first two are shown.</summary>
    [Fact]
    public void The_first_of_those_that_are_due_are_counted_among_those_that_are_due()
    {
        foreach (var day in (string[])["2026-01-10", "2026-01-11", "2026-01-12", "2026-06-30"])
        {
            Mix(day);
        }

        string[] line = ["shelf", "--due", "--first", "2", "--at", "2026-07-01"];
        Assert.StartsWith("The 2 of 3 jars that are due soonest, ", shop.Run(line).Result, StringComparison.Ordinal);
        Assert.Equal([1, 2], shop.Json(line)["jars"]!.AsArray().Select(j => Number(j!, "number")));
    }

    private static string[] Codes(JsonNode answer) => [.. answer["warnings"]!.AsArray().Select(w => w!["code"]!.GetValue<string>())];

    private static int Number(JsonNode node, string key) => node[key]!.GetValue<int>();

    private void Mix(string at, bool label = false) => shop.Json([.. Batch, "--at", at, .. label ? Array.Empty<string>() : ["--no-label"]]);

    /// <summary>Jar 1 is of the bag, jar 2 is not; then a pinch of the bag is tried.</summary>
    /// <summary>Jar 1 of a bag that a pinch of comes out badly later, and jar 2 of no bag.</summary>
    private void FromBag(string pinch, bool label = false, string at = "2026-03-15", string? test = null)
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2026-01-05", "--no-label", "--at", "2026-03-01");
        shop.Json([.. Batch, "--bag", "1", .. label ? Array.Empty<string>() : ["--no-label"], "--at", "2026-03-09"]);
        Mix("2026-03-09");
        if (test is not null)
        {
            shop.Json("test", "1", "pass", "--at", test);
        }

        shop.Json("bag", "test", "1", pinch, "--at", at);
    }
}
