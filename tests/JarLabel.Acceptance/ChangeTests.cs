namespace JarLabel.Acceptance;

public sealed class ChangeTests : IDisposable
{
    private readonly Shop shop = new();

    public ChangeTests() => Mix("2", "300 mL", "500 mL");

    public void Dispose() => shop.Dispose();

    // The most a card can have to say: an alcohol nobody knows, under either rules, and many a job since.
    [Theory]
    [InlineData("osha", "2", "mixed 839 mL")]
    [InlineData("clp", "0.5", "mixed 735 mL")]
    public void A_card_tells_the_mixing_and_what_was_done_last_however_much_was_done(string rules, string cut, string mixed)
    {
        shop.Json("mix", "--grade", "seedlac", "--cut", cut, "--pour", "700 mL", "--solvent", "denatured-unknown", "--at", "2026-03-01", "--job", "viola top", "--note", "strained twice", "--no-label", "--rules", rules);
        for (var day = 2; day <= 10; day++)
        {
            Assert.Equal(0, shop.Run("use", "2", "10 mL", "--job", $"panel {day}", "--at", $"2026-03-{day:00}").ExitCode);
        }

        var file = Path.Combine(shop.Folder, "card.pdf");
        var run = shop.Run("card", "2", "--out", file, "--at", "2026-03-27", "--rules", rules);
        Assert.True(run.ExitCode == 0, run.Errors);
        var said = OutsideProgram.PdfToText.Run("-layout", file, "-");
        foreach (var words in (string[])[mixed, "panel 10", "more in between: jarlabel jar 2"])
        {
            Assert.Contains(words, said, StringComparison.Ordinal);
        }

        Assert.Contains("not on it", run.Result, StringComparison.Ordinal);
        Assert.DoesNotContain("jarlabel card", run.Result, StringComparison.Ordinal);
    }

    [Fact]
    public void A_thinning_says_what_to_add_and_writes_the_new_label()
    {
        var answer = shop.Json("thin", "1", "--to", "1.5", "--at", "2026-06-02");
        Assert.Equal(100, Number(answer["step"]!, "addMilliliters"), 1e-6); // 300 mL of alcohol hold 2 lb/gal; 400 mL hold 1.5
        Assert.Equal(81.14, Number(answer["step"]!, "addGrams"), 0.01);     // 811.38 kg/m3 at 20 °C
        Assert.Equal(459.58, Number(answer["jar"]!, "volumeMilliliters"), 1e-6); // 300 x (1 + 2 x 0.0993) = 359.58, and 100
        Assert.Equal(1.5, Number(answer["jar"]!, "cutPoundsPerGallon"), 1e-9);
        Assert.Equal(2, (int)Number(answer["jar"]!, "revision"));
        Assert.Equal("2026-11-09", answer["jar"]!["useBy"]!.GetValue<string>());
        Assert.EndsWith("JAR 1-9.2", answer["label"]!["payload"]!.GetValue<string>(), StringComparison.Ordinal);
        using var pdf = PdfDocument.Open(answer["label"]!["file"]!.GetValue<string>());
        var words = string.Join(' ', pdf.GetPage(1).GetWords().Select(w => w.Text));
        foreach (var part in (string[])["½", "9 Mar 2026", "9 Nov 2026", "thinned 2 Jun 2026"])
        {
            Assert.Contains(part, words, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("use", "10 mL", "2026-03-08")]
    [InlineData("note", "thick", "2026-03-08")]
    [InlineData("thin", "--to=1.47", "2026-06-01")]
    public void A_step_before_the_one_it_builds_on_is_refused_and_nothing_is_recorded(string step, string how, string at)
    {
        shop.Json("thin", "1", "--to", "1.5", "--no-label", "--at", "2026-06-02");
        var run = shop.Run(step, "1", how, "--at", at);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("error JL357: --at: Read", run.Errors, StringComparison.Ordinal);
        Assert.Equal(2, shop.Json("jar", "1")["history"]!.AsArray().Count(e => e!["event"]!.GetValue<string>() != "Labelled"));
        Assert.Equal(0, shop.Run(step, "1", how, "--at", "2026-06-03").ExitCode);
    }

    [Fact]
    public void Flakes_of_one_grade_and_two_ages_are_one_grade_on_the_label()
    {
        shop.Json("thicken", "1", "--to", "2.1", "--flake-date", "2026-02-01", "--no-label", "--at", "2026-06-02");
        Assert.Contains(" Garnet in ethanol 95 %", shop.Run("jar", "1").Result, StringComparison.Ordinal);
    }

    [Fact]
    public void A_blends_recipe_names_every_part()
    {
        shop.Json("mix", "--grade", "blonde", "--cut", "2", "--pour", "100 mL", "--solvent", "isopropanol-99", "--container", "1 L", "--no-label", "--at", "2026-03-09");
        shop.Json("blend", "1", "2", "--container", "1 L", "--no-label", "--at", "2026-06-02");
        var shown = shop.Run("jar", "3").Result;
        Assert.Matches("pour first .*300 mL.* of ethanol 95 %", shown);
        Assert.Matches("and .*100 mL.* of isopropanol 99 %", shown);
        Assert.Matches("then add .*71.9 g.* of garnet flakes", shown); // 2 lb/gal is 239.65 g/L
        Assert.Matches("and .*24 g.* of blonde, dewaxed flakes", shown);
        Assert.Equal("ethanol-95+isopropanol-99", shop.Json("jar", "3")["recipe"]!["solvent"]!.GetValue<string>());
        shop.Json("undo", "3");
        Assert.Equal(0, Number(shop.Json("jar", "3")["jar"]!, "volumeMilliliters"));
        Assert.Contains("Next: jarlabel shelf", shop.Run("jar", "3").Result, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("thin", "1")]
    [InlineData("thicken", "3")]
    public void Where_to_is_the_cut_the_printer_has_an_option_of_its_own(string step, string cut)
    {
        var run = shop.Run(step, "1", "--to", cut, "--print-to", "ipp://127.0.0.1:1/ipp/print");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("error JL504", run.Errors, StringComparison.Ordinal);
        Assert.Contains("--print-to", shop.Run(step, "1", "--to", cut, "--print-to", "nobody").Errors, StringComparison.Ordinal);
        Assert.Equal(1, (int)Number(shop.Json("jar", "1")["jar"]!, "revision"));
    }

    [Theory]
    [InlineData("all,100 mL")]
    [InlineData("360 mL,100 mL")]
    [InlineData("100 mL,all,all")]
    public void What_takes_all_can_only_be_the_last_of_what_is_decanted(string into)
    {
        var run = shop.Run("decant", "1", "--into", into);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("error JL358: --into:", run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("used up", run.Errors, StringComparison.Ordinal);
        Assert.Single(shop.Json("shelf")["jars"]!.AsArray());
        Assert.Equal(0, shop.Run("decant", "1", "--into", "100 mL,all").ExitCode);
    }

    [Fact]
    public void It_computes_from_what_is_left_after_use_and_earlier_thinning()
    {
        shop.Json("use", "1", "179.79 mL", "--job", "viola top"); // half of 359.58
        var once = shop.Json("thin", "1", "--to", "1.5", "--no-label");
        Assert.Equal(50, Number(once["step"]!, "addMilliliters"), 1e-6);
        var twice = shop.Json("thin", "1", "--to", "1", "--no-label");
        Assert.Equal(100, Number(twice["step"]!, "addMilliliters"), 1e-6); // 200 mL of alcohol hold 1.5, 300 mL hold 1
        var back = shop.Json("thicken", "1", "--to", "2", "--no-label");
        Assert.Equal(35.947928, Number(back["step"]!, "addGrams"), 1e-4);  // 1 lb/gal more in 300 mL: 119.826427 g/L x 0.3 L
        Assert.Equal(4, (int)Number(back["jar"]!, "revision"));
    }

    [Fact]
    public void A_thinning_that_overflows_says_what_to_pour_off_and_doing_so_is_enough()
    {
        var run = shop.Run("thin", "1", "--to", "0.5");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("error JL139", run.Errors, StringComparison.Ordinal);
        var amount = System.Text.RegularExpressions.Regex.Match(run.Errors, "--into \"(?<v>[0-9.]+ mL)\"").Groups["v"].Value;
        Assert.NotEmpty(amount);
        Assert.Equal(1, (int)Number(shop.Json("jar", "1")["jar"]!, "revision"));
        shop.Json("decant", "1", "--into", amount);
        var answer = shop.Json("thin", "1", "--to", "0.5");
        Assert.InRange(Number(answer["jar"]!, "volumeMilliliters"), 470, 475 + 1e-6);
    }

    [Fact]
    public void A_larger_jar_takes_a_thinning_that_the_first_one_cannot() =>
        Assert.Equal(2000, Number(shop.Json("thin", "1", "--to", "0.5", "--container", "2 L")["jar"]!, "containerMilliliters"), 1e-6);

    [Fact]
    public void Thickening_waits_for_the_new_flakes()
    {
        var jar = shop.Json("thicken", "1", "--to", "3", "--at", "2026-05-02T09:00")["jar"]!;
        Assert.Equal("2026-05-03T09:00", jar["ready"]!.GetValue<string>());
        Assert.Equal("dissolving", jar["state"]!.GetValue<string>());
        Assert.Equal("2026-11-09", jar["useBy"]!.GetValue<string>());
    }

    [Fact]
    public void A_blend_takes_the_shortest_keeping_and_the_worst_hazard()
    {
        Mix("1", "200 mL", "500 mL", "bleached", "methanol", "2026-05-01T10:00");
        var bleached = shop.Json("jar", "2");
        var blend = shop.Json("blend", "1", "2=109.93 mL", "--container", "1 L", "--at", "2026-05-02");
        Assert.Equal(3, (int)Number(blend["jar"]!, "number"));
        Assert.Equal(469.51, Number(blend["jar"]!, "volumeMilliliters"), 1e-6);  // 359.58 + 100 x 1.0993
        Assert.Equal(1.75, Number(blend["jar"]!, "cutPoundsPerGallon"), 1e-9); // (2 x 300 + 1 x 100) / 400
        Assert.Equal("garnet+bleached", blend["jar"]!["grade"]!.GetValue<string>());
        string[] uses = ["2026-11-09", bleached["jar"]!["useBy"]!.GetValue<string>()];
        Assert.Equal(uses.Min(StringComparer.Ordinal), blend["jar"]!["useBy"]!.GetValue<string>());
        Assert.Contains("GHS08", blend["hazards"]!["pictograms"]!.AsArray().Select(p => p!.GetValue<string>()));
        Assert.Equal("discarded", shop.Json("jar", "1")["jar"]!["state"]!.GetValue<string>());
        Assert.Equal(109.93, Number(shop.Json("jar", "2")["jar"]!, "volumeMilliliters"), 1e-6);
    }

    [Fact]
    public void Decanting_keeps_the_dates_and_gives_each_jar_a_number_and_a_label()
    {
        var answer = shop.Json("decant", "1", "--into", "0,1 L,100 mL", "--container", "125 mL", "--at", "2026-05-02");
        var made = answer["made"]!.AsArray();
        Assert.Equal([2, 3], made.Select(m => (int)Number(m!["jar"]!, "number")));
        Assert.All(made, m =>
        {
            Assert.Equal("2026-11-09", m!["jar"]!["useBy"]!.GetValue<string>());
            Assert.Equal("2026-03-09", m["jar"]!["mixed"]!.GetValue<string>());
            Assert.True(File.Exists(m["label"]!["file"]!.GetValue<string>()));
        });
        Assert.Equal(159.58, Number(answer["jar"]!, "volumeMilliliters"), 1e-6);
        Assert.Equal(359.58, Number(shop.Json("shelf"), "totalMilliliters"), 1e-3);
        Assert.StartsWith("error JL139", shop.Run("decant", "1", "--into", "all", "--container", "125 mL").Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Undo_takes_a_pouring_back_at_every_jar_and_only_once()
    {
        shop.Json("decant", "1", "--into", "100 mL,100 mL", "--no-label");
        shop.Json("note", "3", "for the workshop next door");
        Assert.StartsWith("error JL147", shop.Run("undo", "1").Errors, StringComparison.Ordinal);
        shop.Json("undo", "3");
        shop.Json("undo", "1");
        Assert.Equal(259.58, Number(shop.Json("jar", "1")["jar"]!, "volumeMilliliters"), 1e-6);
        shop.Json("undo", "2");
        Assert.Equal(359.58, Number(shop.Json("jar", "1")["jar"]!, "volumeMilliliters"), 1e-6);
        Assert.Equal([1], shop.Json("shelf")["jars"]!.AsArray().Select(j => (int)Number(j!, "number")));
        Assert.Equal("", shop.Run("verify").Errors);
    }

    [Fact]
    public void Undo_of_a_thinning_gives_the_jar_back_with_a_new_label()
    {
        shop.Json("thin", "1", "--to", "1.5");
        var answer = shop.Json("undo", "1");
        Assert.Equal(359.58, Number(answer["jar"]!, "volumeMilliliters"), 1e-6);
        Assert.Equal(2, Number(answer["jar"]!, "cutPoundsPerGallon"), 1e-9);
        Assert.EndsWith("JAR 1-9.3", answer["label"]!["payload"]!.GetValue<string>(), StringComparison.Ordinal);
        shop.Json("undo", "1");
        Assert.StartsWith("error JL145", shop.Run("undo", "1").Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_warmer_shelf_shortens_the_use_by_and_a_cooler_one_lengthens_it()
    {
        shop.Run("shop", "set", "shelf", "attic=30 C");
        shop.Run("shop", "set", "shelf", "cellar=10 C");
        Assert.Equal("2027-03-09", shop.Json("move", "1", "--shelf", "cellar", "--at", "2026-03-10")["jar"]!["useBy"]!.GetValue<string>());
        shop.Json("undo", "1", "--at", "2026-03-10");
        var warm = shop.Json("move", "1", "--shelf", "attic", "--at", "2026-03-09T12:00");
        Assert.Equal("2026-06-23", warm["jar"]!["useBy"]!.GetValue<string>()); // 245 days left, over the square root of 1.7 x 3.1 when 10 °C warmer: 106 days
        Assert.Equal(4, (int)Number(warm["jar"]!, "revision"));
    }

    /// <summary>Flammable liquid that is thrown away goes to the waste point; a bag of flakes does not, and what is taken back is thrown away no more.</summary>
    [Fact]
    public void What_is_discarded_is_told_where_its_liquid_goes()
    {
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label");
        shop.Json("bottle", "add", "--solvent", "ethanol-95", "--volume", "1 L", "--no-label");
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2026-01-01", "--no-label");
        var jar = $"{shop.Json("shelf")["jars"]!.AsArray()[^1]!["number"]}";
        var run = shop.Run("discard", jar);
        Assert.Matches(@"(?m)^ *held +\S", run.Result);
        Assert.DoesNotMatch("(?m)^ *holds ", run.Result);
        foreach (var said in (string[])[run.Result, shop.Run("bottle", "discard", "1").Result])
        {
            Assert.Matches(@"hazardous-waste\s+point,\s+never\s+the\s+drain", said);
            Assert.Matches(@"local\s+rules", said);
        }

        foreach (var line in (string[][])[["bag", "discard", "1"], ["bottle", "undo", "1"], ["undo", jar, "--no-label"]])
        {
            Assert.DoesNotContain("hazardous-waste", shop.Run(line).Result, StringComparison.Ordinal);
        }

        foreach (var line in (string[][])[["discard", jar], ["bottle", "discard", "1"]])
        {
            Assert.Contains("hazardous-waste", shop.Json(line)["waste"]!.GetValue<string>(), StringComparison.Ordinal);
        }

        Assert.DoesNotContain("waste", shop.Json("undo", jar, "--no-label").Select(member => member.Key));
        Assert.DoesNotContain("waste", shop.Json("bottle", "undo", "1").Select(member => member.Key));
    }

    [Fact]
    public void The_shelf_shows_tests_and_what_is_due()
    {
        Mix("1", "200 mL", null, at: "2026-03-10");
        shop.Json("test", "1", "pass", "--dry-minutes", "12", "--at", "2026-07-20");
        string[] due = ["shelf", "--due", "--at", "2026-07-21"];
        Assert.Equal([2], shop.Json(due)["jars"]!.AsArray().Select(j => (int)Number(j!, "number")));
        shop.Json("test", "2", "fail", "--at", "2026-07-21");
        Assert.Equal("past", shop.Json(due)["jars"]![0]!["state"]!.GetValue<string>());
        shop.Json("discard", "2", "--why", "stays tacky", "--at", "2026-07-21");
        Assert.Empty(shop.Json(due)["jars"]!.AsArray());
        var none = shop.Run(due).Result;
        Assert.StartsWith("No jar is due", none, StringComparison.Ordinal);
        Assert.Matches("(?m)^.*jarlabel shelf *$", none);
        Assert.DoesNotContain("mix", none, StringComparison.Ordinal);
        Assert.Equal(359.58, Number(shop.Json("shelf")["shelves"]![0]!, "milliliters"), 1e-3);
    }

    [Theory]
    [InlineData("JL135", "thin", "1", "--to", "2")]
    [InlineData("JL136", "thicken", "1", "--to", "2")]
    [InlineData("JL106", "thin", "1")]
    [InlineData("JL111", "thin", "1", "--to", "weak")]
    [InlineData("JL146", "use", "1", "1 qt")]
    [InlineData("JL103", "use", "1", "4 oz")]
    [InlineData("JL148", "blend", "1")]
    [InlineData("JL148", "blend", "1", "1")]
    [InlineData("JL143", "blend", "1", "9")]
    [InlineData("JL149", "decant", "1")]
    [InlineData("JL146", "decant", "1", "--into", "300 mL,100 mL")]
    [InlineData("JL108", "test", "1", "maybe")]
    [InlineData("JL110", "test", "1", "pass", "--dry-minutes", "0")]
    [InlineData("JL409", "move", "1", "--shelf", "attic")]
    [InlineData("JL143", "discard", "9")]
    [InlineData("JL201", "thin", "1", "--to", "1", "--solvent", "vodka")]
    public void A_wrong_step_is_told_and_records_nothing(string code, params string[] words)
    {
        var run = shop.Run(words);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"error {code}: ", run.Errors, StringComparison.Ordinal);
        Assert.Equal(2, shop.Json("jar", "1")["history"]!.AsArray().Count);
        Assert.Single(shop.Json("shelf")["jars"]!.AsArray());
    }

    [Fact]
    public void A_jar_that_is_gone_is_left_in_peace()
    {
        shop.Json("use", "1", "all");
        foreach (var words in (string[][])[["thin", "1", "--to", "1"], ["label", "1"], ["use", "1", "1 mL"], ["discard", "1"]])
        {
            Assert.StartsWith("error JL144", shop.Run(words).Errors, StringComparison.Ordinal);
        }

        Assert.Equal("discarded", shop.Json("jar", "1")["jar"]!["state"]!.GetValue<string>());
        Assert.Equal(359.58, Number(shop.Json("undo", "1")["jar"]!, "volumeMilliliters"), 1e-6);
    }

    [Fact]
    public void A_dry_run_of_a_step_leaves_the_ledger_as_it_was()
    {
        var answer = shop.Json("thin", "1", "--to", "1.5", "--dry-run");
        Assert.Equal(100, Number(answer["step"]!, "addMilliliters"), 1e-6);
        Assert.Equal(2, shop.Json("jar", "1")["history"]!.AsArray().Count);
        Assert.Single(Directory.GetFiles(shop.Labels));
    }

    private static double Number(JsonNode node, string key) => node[key]!.GetValue<double>();

    private void Mix(string cut, string pour, string? container, string grade = "garnet", string solvent = "ethanol-95", string at = "2026-03-09T10:00")
    {
        string[] fits = container is null ? [] : ["--container", container];
        var run = shop.Run(["mix", "--grade", grade, "--cut", cut, "--pour", pour, "--solvent", solvent, "--at", at, .. fits]);
        Assert.True(run.ExitCode == 0, run.Errors);
    }
}
