namespace JarLabel.Acceptance;

/// <summary>Taking back through the program: what a bag or bottle holds then, which other jars change, and what is said of a jar that never was.</summary>
public sealed class TakingBackTests : IDisposable
{
    private readonly Shop shop = new();

    public TakingBackTests()
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2025-12-01", "--no-label", "--at", "2026-03-01");
        shop.Json("bottle", "add", "--solvent", "ethanol-95", "--volume", "1 L", "--date", "2026-02-20", "--no-label", "--at", "2026-03-01");
    }

    public void Dispose() => shop.Dispose();

    [Fact]
    public void A_full_bag_and_bottle_are_full_again_and_not_fuller_after_the_batch_is_taken_back()
    {
        Mix();
        shop.Json("bag", "left", "1", "500 g");
        shop.Json("bottle", "left", "1", "1 L");
        var undone = shop.Json("undo", "1");
        Assert.Equal(500, Number(undone["bags"]![0]!, "leftGrams"), 1e-9);
        Assert.Equal(1000, Number(undone["bottles"]![0]!, "leftMilliliters"), 1e-9);
        Assert.Equal(500, Number(shop.Json("bag", "list")["bags"]![0]!, "leftGrams"), 1e-9);
        Assert.Equal(1000, Number(shop.Json("bottle", "list")["bottles"]![0]!, "leftMilliliters"), 1e-9);
        Assert.Equal("", shop.Run("verify").Errors);
    }

    /// <summary>What a scale or a measure said stands, and the answer says so.</summary>
    [Fact]
    public void A_later_measurement_stands_when_an_earlier_step_is_taken_back_or_entered_late()
    {
        Mix();
        shop.Json("bottle", "left", "1", "100 mL", "--at", "2026-03-12");
        shop.Json("bag", "left", "1", "200 g", "--at", "2026-03-12");
        var undone = shop.Json("undo", "1", "--at", "2026-03-13");
        Assert.Equal((200, 100), (Number(undone["bags"]![0]!, "leftGrams"), Number(undone["bottles"]![0]!, "leftMilliliters")));
        Assert.Equal(["JL229", "JL229"], [.. undone["warnings"]!.AsArray().Select(w => w!["code"]!.GetValue<string>()).Where(code => code == "JL229")]);
        var late = shop.Run("mix", "--bag", "1", "--bottle", "1", "--cut", "1.5", "--pour", "350 mL", "--no-label", "--at", "2026-03-10");
        Assert.Contains("Bag 1-9 was measured on 12 Mar 2026, after that: 7.05 oz (200 g) stand as measured.", late.Result, StringComparison.Ordinal);
        Assert.Contains("jarlabel bottle left 1-9", late.Result, StringComparison.Ordinal);
        Assert.Equal((200, 100), Left());
        Assert.Equal("", shop.Run("verify").Errors);
    }

    [Theory]
    [InlineData("bag", "120 g")]
    [InlineData("bottle", "120 mL")]
    public void What_was_discarded_comes_back_by_taking_that_back_and_not_by_measuring_it(string kind, string amount)
    {
        shop.Json(kind, "discard", "1");
        var refused = shop.Run(kind, "left", "1", amount);
        Assert.Equal(2, refused.ExitCode);
        Assert.Matches($"^error JL157: .*was discarded.*jarlabel {kind} undo 1-9", refused.Errors);
        shop.Json(kind, "undo", "1");
        shop.Json(kind, "left", "1", amount);
    }

    [Theory]
    [InlineData("thin", "--to", "1", "--bottle", "1", "--container", "1 L")]
    [InlineData("thicken", "--to", "2", "--bag", "1")]
    public void Taking_a_step_back_says_what_its_bag_or_bottle_holds_now(string step, params string[] how)
    {
        Mix();
        var before = Left();
        shop.Json([step, "1", .. how, "--no-label"]);
        Assert.NotEqual(before, Left());
        var said = shop.Run("undo", "1", "--no-label").Result;
        Assert.Matches(step == "thin" ? @"bottle 1-9\s+holds .*\(650 mL\) of .*\(1\.00 L\) now" : @"bag 1-9\s+holds .*\(437 g\) of .*\(500 g\) now", said);
        Assert.Equal(before, Left());
    }

    [Theory]
    [InlineData("bag", "leftGrams", "20 g", 500)]
    [InlineData("bottle", "leftMilliliters", "20 mL", 1000)]
    public void A_wrong_reading_a_wrong_discarding_and_a_wrong_entry_can_be_taken_back(string kind, string left, string amount, double full)
    {
        shop.Json(kind, "left", "1", amount);
        Assert.Equal(full, Number(shop.Json(kind, "undo", "1")[kind]!, left), 1e-9);
        shop.Json(kind, "discard", "1", "--why", "wrong one");
        Assert.Empty(shop.Json(kind, "list")[kind + "s"]!.AsArray());
        Assert.True(shop.Json(kind, "undo", "1")[kind]!["onHand"]!.GetValue<bool>());
        Assert.Contains("taken back: that it came", shop.Run(kind, "undo", "1").Result, StringComparison.Ordinal);
        Assert.Empty(shop.Json(kind, "list")[kind + "s"]!.AsArray());
        Assert.StartsWith("error JL227", shop.Run(kind, "undo", "1").Errors, StringComparison.Ordinal);
        Assert.Matches($"^error JL157: .*The entry of {kind} 1-9 was taken back", shop.Run(kind, "left", "1", amount).Errors);
        Assert.Equal("", shop.Run("verify").Errors);
    }

    [Fact]
    public void What_a_jar_took_is_taken_back_at_the_jar()
    {
        Mix();
        foreach (var kind in (string[])["bag", "bottle"])
        {
            var run = shop.Run(kind, "undo", "1");
            Assert.Equal(2, run.ExitCode);
            Assert.StartsWith("error JL226", run.Errors, StringComparison.Ordinal);
            Assert.Contains("jarlabel undo 1-9", run.Errors, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("bag", "0")]
    [InlineData("bag", "0 g")]
    [InlineData("bag", "0,0 oz")]
    [InlineData("bag", "empty")]
    [InlineData("bottle", "0")]
    [InlineData("bottle", "0 mL")]
    [InlineData("bottle", "Empty")]
    public void Nothing_can_be_left(string kind, string nothing)
    {
        Assert.False(shop.Json(kind, "left", "1", nothing)[kind]!["onHand"]!.GetValue<bool>());
        Assert.Empty(shop.Json(kind, "list")[kind + "s"]!.AsArray());
        shop.Json("export", Path.Combine(shop.Folder, "all.jsonl"));
        using var other = new Shop();
        other.Json("import", Path.Combine(shop.Folder, "all.jsonl"));
    }

    [Theory]
    [InlineData("JL103", "bag", "0 mL")]
    [InlineData("JL102", "bottle", "0 drops")]
    public void Nothing_of_another_unit_is_refused(string code, string kind, string amount)
    {
        var run = shop.Run(kind, "left", "1", amount);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"error {code}: ", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Taking_a_decanting_back_names_the_jars_and_says_what_else_it_filled()
    {
        Mix();
        shop.Json("decant", "1", "--into", "100 mL,100 mL", "--no-label");
        var first = shop.Json("undo", "1");
        Assert.Equal(3, first["also"]![0]!["number"]!.GetValue<int>());
        Assert.Equal("taken back", first["also"]![0]!["state"]!.GetValue<string>());
        Assert.Contains("Jar 2-7", Assert.Single(first["warnings"]!.AsArray(), w => w!["code"]!.GetValue<string>() == "JL228")!["message"]!.GetValue<string>(), StringComparison.Ordinal);
        var second = shop.Run("undo", "2").Result;
        Assert.Matches(@"jar 1-9\s+holds .*\(402 mL\) of .*lb cut again", second);
        Assert.DoesNotContain("JL228", second, StringComparison.Ordinal);
        Assert.Equal("", shop.Run("verify").Errors);
    }

    /// <summary>Of two steps of one kind the history says which no longer stands, on the screen, for a program, and on the card.</summary>
    [Fact]
    public void The_history_marks_the_step_that_was_taken_back()
    {
        Mix();
        foreach (var use in (string[])["10 mL", "30 mL", "40 mL"])
        {
            shop.Json("use", "1", use);
        }

        shop.Json("undo", "1");
        shop.Json("undo", "1");
        shop.Json("use", "1", "20 mL");
        var said = shop.Run("jar", "1").Result;
        foreach (var (amount, taken) in ((string, bool)[])[("10 mL", false), ("30 mL", true), ("40 mL", true), ("20 mL", false)])
        {
            Assert.Matches($@"(?m)used {amount}{(taken ? @" \(taken back\)" : "")}\r?$", said);
        }

        Assert.Equal([false, false, true, true, false, false, false], shop.Json("jar", "1")["history"]!.AsArray().Select(step => step!["takenBack"] is not null));
        Assert.Equal(2, OutsideProgram.PdfToText.Run(shop.Json("card", "1")["label"]!["file"]!.GetValue<string>(), "-").Split("(taken back)").Length - 1);
    }

    [Fact]
    public void Taking_a_blend_back_says_that_its_parts_are_full_again()
    {
        Mix();
        Mix();
        shop.Json("blend", "1", "2=100 mL", "--container", "1 L", "--no-label");
        var said = shop.Run("undo", "3").Result;
        Assert.Matches(@"jar 1-9\s+holds .*\(402 mL\)", said);
        Assert.Matches(@"jar 2-7\s+holds .*\(402 mL\)", said);
    }

    /// <summary>The dates that the shop's tests gave a jar in the same step are paper, and stand in nobody's way.</summary>
    [Theory]
    [InlineData("1", 3)]
    [InlineData("3", 1)]
    public void A_decanting_to_a_warmer_shelf_is_taken_back_at_either_jar(string at, int other)
    {
        shop.Run("shop", "set", "shelf", "attic=30 C");
        Mix();
        Mix();
        shop.Json("test", "2", "fail", "--at", "2026-05-01");
        shop.Json("decant", "1", "--into", "100 mL", "--shelf", "attic", "--at", "2026-05-02");
        var undone = shop.Json("undo", at, "--at", "2026-05-02");
        Assert.Equal(other, undone["also"]![0]!["number"]!.GetValue<int>());
        Assert.Equal(402.1325, Number(shop.Json("jar", "1")["jar"]!, "volumeMilliliters"), 1e-6); // 350 x (1 + 1.5 x 0.0993)
        Assert.Equal("taken back", shop.Json("jar", "3")["jar"]!["state"]!.GetValue<string>());
        Assert.Equal("", shop.Run("verify").Errors);
    }

    [Fact]
    public void One_undo_takes_a_thinning_back_with_the_dates_that_came_with_it()
    {
        Mix();
        Mix();
        shop.Json("test", "2", "fail", "--at", "2026-05-01");
        var thinned = shop.Json("thin", "1", "--to", "1", "--container", "1 L", "--at", "2026-05-02");
        Assert.Contains("Redated", shop.Json("jar", "1")["history"]!.AsArray().Select(e => e!["event"]!.GetValue<string>()));
        Assert.Equal(1, Number(thinned["jar"]!, "cutPoundsPerGallon"), 1e-9);
        Assert.Equal(1.5, Number(shop.Json("undo", "1", "--at", "2026-05-03")["jar"]!, "cutPoundsPerGallon"), 1e-9);
    }

    [Fact]
    public void A_jar_whose_mixing_was_taken_back_says_so_everywhere_and_nobody_is_told_to_discard_or_undo_it()
    {
        var payload = shop.Json("mix", "--bag", "1", "--bottle", "1", "--cut", "1.5", "--pour", "350 mL", "--at", "2026-03-09")["label"]!["payload"]!.GetValue<string>();
        Assert.Equal("taken back", shop.Json("undo", "1")["jar"]!["state"]!.GetValue<string>());
        var shown = shop.Run("jar", "1");
        Assert.Contains("taken back", shown.Result, StringComparison.Ordinal);
        Assert.DoesNotContain("discard", shown.Result, StringComparison.OrdinalIgnoreCase);
        foreach (var words in (string[][])[["thin", "1", "--to", "1"], ["label", "1"], ["label", "1", "--copies", "2"], ["use", "1", "1 mL"], ["discard", "1"], ["card", "1"]])
        {
            var run = shop.Run(words);
            Assert.Equal(2, run.ExitCode);
            Assert.Contains("its mixing was taken back", run.Errors, StringComparison.Ordinal);
            Assert.DoesNotContain("jarlabel undo", run.Errors, StringComparison.Ordinal);
        }

        var scanned = shop.Run("scan", payload);
        Assert.Contains("its mixing was taken back", scanned.Result + scanned.Errors, StringComparison.Ordinal);
        Assert.Contains("JL186", shop.Run("scan", payload, "--json").Result, StringComparison.Ordinal);
        Assert.DoesNotContain("jarlabel undo", scanned.Result + scanned.Errors, StringComparison.Ordinal);
        Assert.Empty(shop.Json("shelf")["jars"]!.AsArray());
    }

    [Fact]
    public void A_jar_that_was_used_up_is_not_called_discarded_and_one_that_was_discarded_is_not_told_to_be()
    {
        Mix();
        shop.Json("label", "1", "--at", "2026-03-10");
        shop.Json("test", "1", "fail", "--at", "2026-05-01");
        shop.Json("discard", "1", "--at", "2026-05-02");
        Assert.Contains("it was discarded", shop.Run("use", "1", "1 mL").Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("JL359", shop.Run("scan", "1", "--json").Result, StringComparison.Ordinal);
    }

    private (double Bag, double Bottle) Left() => (
        Number(shop.Json("bag", "list")["bags"]![0]!, "leftGrams"),
        Number(shop.Json("bottle", "list")["bottles"]![0]!, "leftMilliliters"));

    private void Mix() => shop.Json("mix", "--bag", "1", "--bottle", "1", "--cut", "1.5", "--pour", "350 mL", "--no-label", "--at", "2026-03-09");

    private static double Number(JsonNode node, string key) => node[key]!.GetValue<double>();
}
