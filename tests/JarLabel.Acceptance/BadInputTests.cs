namespace JarLabel.Acceptance;

public sealed class BadInputTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Theory]
    [InlineData("--pour", "4 oz", "JL103")]
    [InlineData("--pour", "1,500 l", "JL104")]
    [InlineData("--pour", "-1 pt", "JL101")]
    [InlineData("--pour", "0", "JL102")]
    [InlineData("--pour", "1e999", "JL102")]
    [InlineData("--pour", "1/0 pt", "JL101")]
    [InlineData("--cut", "0", "JL112")]
    [InlineData("--cut", "two", "JL111")]
    [InlineData("--grade", "garnit", "JL201")]
    [InlineData("--solvent", "vodka", "JL201")]
    [InlineData("--container", "400 mL", "JL138")]
    [InlineData("--material", "wood", "JL108")]
    [InlineData("--shelf", "attic", "JL409")]
    [InlineData("--flake-date", "2031-01-01", "JL115")]
    [InlineData("--flake-date", "last year", "JL109")]
    [InlineData("--at", "9.3.2026", "JL109")]
    [InlineData("--at", "9999-12-31", "JL109")]
    [InlineData("--at", "1899-12-31", "JL109")]
    [InlineData("--flake-date", "0001-01-01", "JL109")]
    [InlineData("--printer", "typo", "JL356")]
    [InlineData("--shelf", "", "JL409")]
    [InlineData("--rules", "moon", "JL108")]
    [InlineData("--temp", "20", "JL121")]
    [InlineData("--design", "nothing", "JL304")]
    [InlineData("--sheet", "nothing", "JL303")]
    [InlineData("--start", "0", "JL110")]
    [InlineData("--job", "a\u0007b", "JL192")]
    [InlineData("--job", "a\u202Eb", "JL192")]
    [InlineData("--job", " ", "JL191")]
    public void A_wrong_word_is_told_with_what_is_allowed_and_nothing_is_recorded(string option, string value, string code)
    {
        var run = shop.Run(Mix(option, value));
        Assert.Equal(2, run.ExitCode);
        Assert.Equal("", run.Result);
        Assert.StartsWith($"error {code}: ", run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("Usage:", run.Errors, StringComparison.Ordinal);
        Assert.Empty(shop.Json("shelf")["jars"]!.AsArray());
    }

    [Theory]
    [InlineData("1900-01-01")]
    [InlineData("2199-12-31T23:59")]
    public void The_first_and_the_last_day_that_are_read_give_a_whole_jar(string at)
    {
        Assert.Equal(0, shop.Run([.. Mix("--at", at)]).ExitCode);
        Assert.Equal(0, shop.Run("jar", "1", "--at", at).ExitCode);
        Assert.Equal(2, shop.Run("plan", "--for", "pad", "--area", "1 m2", "--coats", "1", "--grade", "garnet", "--solvent", "ethanol-95", "--at", "9999-12-31").ExitCode);
    }

    /// <summary>An example lies inside what is allowed, and doing as told works.</summary>
    [Theory]
    [InlineData("notice --distance 99", "from 0.5 to 50 is wanted, such as 3.")]
    [InlineData("calc purge --changes 6 --to 1", "above 0 and below 1 is wanted, such as 0.01.")]
    [InlineData("calc purge --changes 2000 --to 0.01", "from 0.01 to 1000 is wanted, such as 6.")]
    [InlineData("calc solids --percent 90 --solvent ethanol-95", "--percent: Read \"90\"; a number from 0.15 to 63.9 is wanted, such as 23.")]
    [InlineData("calc density --solvent ethanol --strength 101", "such as 95.")]
    [InlineData("shop set still-good 100", "such as 90.")]
    public void A_number_out_of_its_bounds_is_told_with_one_inside(string line, string says)
    {
        var words = line.Split(' ');
        var run = shop.Run(words);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(says, run.Errors, StringComparison.Ordinal);
        var wrong = Array.FindIndex(words, word => run.Errors.Contains($"\"{word}\"", StringComparison.Ordinal));
        words[wrong] = run.Errors.Split("such as ")[1].TrimEnd('.', '\n', '\r');
        Assert.Equal(0, shop.Run([.. words, "--dry-run"]).ExitCode);
    }

    /// <summary>12 lb to a gallon of 6.77 lb are 63.9 % by weight: the ends that are told are the ends there are.</summary>
    [Theory]
    [InlineData("0.15", 0)]
    [InlineData("0.14", 2)]
    [InlineData("63.9", 0)]
    [InlineData("64", 2)]
    public void Solids_are_read_up_to_the_strongest_cut(string percent, int exit) =>
        Assert.Equal(exit, shop.Run("calc", "solids", "--percent", percent, "--solvent", "ethanol-95").ExitCode);

    [Fact]
    public void A_percent_sign_is_a_hundredth_where_a_fraction_is_wanted() =>
        Assert.Equal(0.005, shop.Json("calc", "purge", "--changes", "6", "--to", "0.5 %")["fraction"]!.GetValue<double>(), 1e-12);

    [Theory]
    [InlineData("no-such-folder", "JL405")]
    [InlineData("", "JL118")]
    public void A_folder_to_check_that_is_not_there_is_no_folder_without_faults(string folder, string code)
    {
        var run = shop.Run("check", folder);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"error {code}", run.Errors, StringComparison.Ordinal);
        Assert.Equal(0, shop.Run("check", shop.Folder).ExitCode);
        Assert.Equal(2, shop.Run("check", "--shop", Path.Combine(shop.Folder, "no-such-folder")).ExitCode);
    }

    [Fact]
    public void A_near_miss_is_guessed() =>
        Assert.Contains("garnet", shop.Run(Mix("--grade", "garnit")).Errors, StringComparison.Ordinal);

    [Fact]
    public void All_faults_of_a_line_are_told_at_once()
    {
        var run = shop.Run("mix", "--grade", "garnit", "--cut", "two", "--pour", "4 oz", "--solvent", "vodka");
        Assert.Equal(4, run.Errors.Split('\n').Count(line => line.StartsWith("error ", StringComparison.Ordinal)));
    }

    [Fact]
    public void Problems_are_json_too()
    {
        var run = shop.Run([.. Mix("--pour", "4 oz"), "--json"]);
        Assert.Equal(2, run.ExitCode);
        var problem = JsonNode.Parse(run.Result)!["problems"]!.AsArray().Single()!;
        Assert.Equal("JL103", problem["code"]!.GetValue<string>());
        Assert.Equal("--pour", problem["where"]!.GetValue<string>());
    }

    [Fact]
    public void What_is_told_outside_a_step_or_beside_its_answer_is_in_words_that_can_be_typed_too()
    {
        Directory.CreateDirectory(shop.Folder);
        var file = Path.Combine(shop.Folder, "a-file");
        File.WriteAllText(file, "");
        Assert.Contains("Name another, for example --shop my-shop.", shop.Run("shelf", "--shop", file).Errors, StringComparison.Ordinal);
        Assert.StartsWith("error JL109: --at: ", shop.Run("shelf", "--at", "soon").Errors, StringComparison.Ordinal);
        Assert.StartsWith("error JL613: --lan: ", shop.Run("serve", "--lan", "0.0.0.0").Errors, StringComparison.Ordinal);
        Assert.StartsWith("error JL118: DIR: ", shop.Run("check", " ").Errors, StringComparison.Ordinal);
        var caution = shop.Json("mix", "--grade", "garnet", "--cut", "1", "--pour", "350 mL", "--solvent", "denatured-unknown", "--no-label")["warnings"]!.AsArray().First(one => one!["code"]!.GetValue<string>() == "JL171")!;
        Assert.Equal("--solvent", caution["where"]!.GetValue<string>());
        Assert.Contains("enter them with \"jarlabel can add\", and", caution["message"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("viola \"top\" / back \\ ribs: 'second' coat")]
    [InlineData("../../etc/passwd")]
    [InlineData("Füllung für Geige Nº 7 — ščř")]
    [InlineData("<script>alert(1)</script>; DROP TABLE events; --")]
    public void Odd_but_printable_text_is_kept_as_it_is(string job)
    {
        var run = shop.Run([.. Mix("--job", job), "--no-label"]);
        Assert.True(run.ExitCode == 0, run.Errors);
        Assert.Equal(job, shop.Json("jar", "1")["history"]![0]!["job"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("🎻 top")]
    [InlineData("כינור")]
    public void Text_that_the_label_font_lacks_is_refused_where_it_is_typed_and_no_card_is_blocked_by_it(string text)
    {
        var refused = shop.Run([.. Mix("--job", text), "--no-label"]);
        Assert.Equal(2, refused.ExitCode);
        Assert.StartsWith("error JL312: --job:", refused.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(shop.Folder, "ledger.db")));

        Assert.Equal(0, shop.Run([.. Mix("--job", "viola top"), "--no-label"]).ExitCode);
        foreach (var step in (string[][])[["use", "1", "10 mL", "--job", text], ["note", "1", text], ["discard", "1", "--why", text], ["shop", "set", "name", text], ["shop", "set", "shelf", $"{text}=18 C"]])
        {
            var run = shop.Run(step);
            Assert.Equal(2, run.ExitCode);
            Assert.Contains("JL312", run.Errors, StringComparison.Ordinal);
        }

        Assert.Equal(0, shop.Run("card", "1").ExitCode);
    }

    [Fact]
    public void Three_hundred_characters_are_too_many_for_a_job()
    {
        var run = shop.Run(Mix("--job", new string('x', 300)));
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("error JL193", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_jar_that_is_not_there_and_a_misread_one_are_told()
    {
        Assert.StartsWith("error JL143", shop.Run("jar", "7").Errors, StringComparison.Ordinal);
        Assert.StartsWith("error JL142", shop.Run("jar", "7-1").Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_in_the_place_of_the_shop_is_told()
    {
        Directory.CreateDirectory(shop.Folder);
        var file = Path.Combine(shop.Folder, "a-file");
        File.WriteAllText(file, "not a folder");
        var run = shop.Run(["--shop", file, .. Mix()]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("JL4", run.Errors, StringComparison.Ordinal);
        Assert.Equal("not a folder", File.ReadAllText(file));
    }

    [Fact]
    public void A_damaged_ledger_is_told_and_left_alone()
    {
        Assert.Equal(0, shop.Run(Mix()).ExitCode);
        var ledger = Path.Combine(shop.Folder, "ledger.db");
        var bytes = File.ReadAllBytes(ledger);
        Array.Fill<byte>(bytes, 0x55, 0, 4096);
        File.WriteAllBytes(ledger, bytes);
        var run = shop.Run(Mix());
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("JL4", run.Errors, StringComparison.Ordinal);
        Assert.Equal(bytes, File.ReadAllBytes(ledger));
    }

    [Fact]
    public void A_design_whose_text_cannot_fit_stops_the_mix_and_says_why()
    {
        Directory.CreateDirectory(Path.Combine(shop.Folder, "layouts", "labels"));
        File.WriteAllText(Path.Combine(shop.Folder, "layouts", "labels", "tight.json"), """
            { "id": "tight", "title": "Too tight", "shape": "rectangle", "width": 20, "height": 10, "inset": 2, "source": "practice",
              "voices": [ { "name": "cut", "face": "bold", "sizes": [144] } ],
              "box": { "kind": "rows", "boxes": [ { "kind": "text", "word": "cut", "voice": "cut", "name": "big", "height": 20 }, { "kind": "text", "word": "grade", "voice": "cut", "width": 90 } ] } }
            """);
        var run = shop.Run(Mix("--design", "tight"));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("tight/", run.Errors, StringComparison.Ordinal);
        Assert.Empty(shop.Json("shelf")["jars"]!.AsArray());
    }

    [Fact]
    public void Every_fault_of_the_shops_own_files_is_told_at_once()
    {
        Directory.CreateDirectory(Path.Combine(shop.Folder, "catalog"));
        File.WriteAllText(Path.Combine(shop.Folder, "catalog", "solvents.json"), """
            [ { "id": "a", "name": 5, "shortName": "x", "colour": "red", "source": "practice", "contains": [ { "ethanolByVolume": 120 } ] } ]
            """);
        var run = shop.Run("check");
        Assert.Equal(2, run.ExitCode);
        Assert.Equal(3, run.Errors.Split('\n').Count(line => line.StartsWith("error JL2", StringComparison.Ordinal)));
    }

    /// <summary>Settings and a catalog that no other command could open hide none of the faults behind them.</summary>
    [Fact]
    public void Faults_of_settings_catalog_and_layouts_are_told_together_also_of_a_folder_that_is_named()
    {
        Directory.CreateDirectory(Path.Combine(shop.Folder, "catalog"));
        Directory.CreateDirectory(Path.Combine(shop.Folder, "layouts", "sheets"));
        File.WriteAllText(Path.Combine(shop.Folder, "shop.json"), """{ "rules": "iso" }""");
        File.WriteAllText(Path.Combine(shop.Folder, "catalog", "grades.json"), """[ { "id": 5 } ]""");
        File.WriteAllText(Path.Combine(shop.Folder, "layouts", "sheets", "own.json"), """{ "id": "own", "title": 5 }""");
        string[] places = ["shop.json#/rules", "grades.json#/0/id", "own.json#/title"];
        Assert.Equal(2, shop.Run("shelf").ExitCode);
        foreach (var run in (Run[])[shop.Run("check"), shop.Run("check", shop.Folder, "--shop", Path.Combine(shop.Folder, "no-such-folder"))])
        {
            Assert.Equal((2, ""), (run.ExitCode, run.Result));
            Assert.All(places, place => Assert.Contains($"{place}: ", run.Errors, StringComparison.Ordinal));
        }

        var told = shop.Run("check", "--json");
        Assert.Equal(2, told.ExitCode);
        Assert.All(places, place => Assert.Contains(JsonNode.Parse(told.Result)!["problems"]!.AsArray(), problem => problem!["where"]!.GetValue<string>().EndsWith(place, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_shop_without_files_of_its_own_is_checked_and_nothing_is_made()
    {
        var folder = Path.Combine(shop.Folder, "new");
        Directory.CreateDirectory(folder);
        Assert.Equal("""{"files":0,"warnings":[]}""", shop.Run("check", folder, "--json").Result.TrimEnd());
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
        Assert.StartsWith("error JL109: --at: ", shop.Run("check", "--at", "soon").Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("brew", "\"jarlabel --help\"")]
    [InlineData("thn 1", "\"thin\"", "\"jarlabel --help\"")]
    [InlineData("thin 1 --too 1", "\"--to\"", "\"jarlabel thin --help\"")]
    [InlineData("calc thn", "\"thin\"", "\"jarlabel calc --help\"")]
    [InlineData("shelf --unit us", "\"--units\"", "\"jarlabel shelf --help\"")]
    public void A_line_that_cannot_be_read_is_told_with_what_was_meant_and_without_a_page_of_help(string line, params string[] told)
    {
        var run = shop.Run(line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("error JL107", run.Errors, StringComparison.Ordinal);
        Assert.All(told, word => Assert.Contains(word, run.Errors, StringComparison.Ordinal));
        Assert.DoesNotContain("Usage:", run.Errors + run.Result, StringComparison.Ordinal);
    }

    private static string[] Mix(string? option = null, string? value = null)
    {
        var words = new Dictionary<string, string>
        {
            ["--grade"] = "garnet",
            ["--cut"] = "1.5",
            ["--pour"] = "350 mL",
            ["--solvent"] = "ethanol-95",
        };
        if (option is not null)
        {
            words[option] = value!;
        }

        return ["mix", .. words.SelectMany(w => new[] { w.Key, w.Value })];
    }
}
