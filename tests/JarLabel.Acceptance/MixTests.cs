namespace JarLabel.Acceptance;

public sealed class MixTests : IDisposable
{
    private static readonly string[] MainJob =
        ["mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--container", "500 mL", "--at", "2026-03-09T10:00"];

    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    /// <summary>29 CFR 1910.106(d)(2), table H-12: glass of at most 1 US quart (946 mL) for category 2. Where nobody says how large the jar is, it is at least as
    /// large as what is in it.</summary>
    [Theory]
    [InlineData("900 mL", null, true)] // makes 1.03 L
    [InlineData("700 mL", null, false)]
    [InlineData("700 mL", "1 L", true)]
    [InlineData("700 mL", "1 qt", false)]
    public void More_than_a_quart_in_glass_is_told_whether_the_jar_is_named_or_not(string pour, string? container, bool told)
    {
        string[] batch = ["mix", "--grade", "garnet", "--cut", "1.5", "--pour", pour, "--solvent", "ethanol-95", "--no-label", "--at", "2026-03-09", .. container is null ? Array.Empty<string>() : ["--container", container]];
        Assert.Equal(told, Codes(shop.Json(batch)).Contains("JL176"));
        if (container is null)
        {
            Assert.Contains("JL176", Codes(shop.Json("thin", "1", "--to", "0.9", "--no-label", "--at", "2026-03-10")));
        }
    }

    private static IEnumerable<string> Codes(JsonObject answer) => answer["warnings"]!.AsArray().Select(w => w!["code"]!.GetValue<string>());

    [Fact]
    public void One_sentence_makes_a_recipe_a_jar_and_a_label()
    {
        var run = shop.Run(MainJob);
        Assert.Equal(0, run.ExitCode);
        Assert.Equal("", run.Errors);
        var label = Assert.Single(Directory.GetFiles(shop.Labels));
        Assert.Contains(label, run.Result, StringComparison.Ordinal);
        Assert.Contains("pour first", run.Result, StringComparison.Ordinal);
        Assert.True(run.Result.IndexOf("pour first", StringComparison.Ordinal) < run.Result.IndexOf("then add", StringComparison.Ordinal));
        Assert.Equal(1, shop.Json("jar", "1")["jar"]!["number"]!.GetValue<int>());
    }

    [Fact]
    public void The_json_of_a_mix_has_the_keys_and_figures_that_programs_rely_on()
    {
        var answer = shop.Json(MainJob);
        var recipe = answer["recipe"]!.AsObject();
        string[] keys = ["grade", "solvent", "cutPoundsPerGallon", "cutGramsPerLiter", "flakesGrams", "pourMilliliters", "pourGrams", "makesMilliliters", "makesGrams", "solidsByWeight", "solidsByVolume", "unverified"];
        Assert.Equal(keys, recipe.Select(m => m.Key));
        Assert.Equal(62.90887, Number(recipe, "flakesGrams"), 1e-4);   // 1.5 lb/gal x 119.826427 g/L x 0.35 L, by hand
        Assert.Equal(402.1325, Number(recipe, "makesMilliliters"), 1e-6); // 350 mL x (1 + 0.0993 x 1.5)
        Assert.Equal(283.98, Number(recipe, "pourGrams"), 0.01);       // 811.38 kg/m3 at 20 °C
        var jar = answer["jar"]!.AsObject();
        Assert.Equal("1-9", jar["id"]!.GetValue<string>());
        Assert.Equal("2026-03-10T10:00", jar["ready"]!.GetValue<string>());
        Assert.Equal("2026-07-09", jar["testFrom"]!.GetValue<string>());
        Assert.Equal("2026-11-09", jar["useBy"]!.GetValue<string>());
        Assert.Equal("dissolving", jar["state"]!.GetValue<string>());
        Assert.Equal("Danger", answer["hazards"]!["signalWord"]!.GetValue<string>());
        Assert.Equal(["GHS02", "GHS07"], answer["hazards"]!["pictograms"]!.AsArray().Select(p => p!.GetValue<string>()));
        Assert.EndsWith("JAR 1-9.1", answer["label"]!["payload"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_label_reads_back_as_text_from_the_pdf()
    {
        var file = shop.Json(MainJob)["label"]!["file"]!.GetValue<string>();
        using var pdf = PdfDocument.Open(file);
        var words = string.Join(' ', pdf.GetPage(1).GetWords().Select(w => w.Text));
        foreach (var part in (string[])["lb cut", "180 g/L", "Garnet", "9 Mar 2026", "9 Nov 2026", "1-9", "DANGER", "flammable"])
        {
            Assert.Contains(part, words, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(203)]
    [InlineData(300)]
    [InlineData(600)]
    public void The_printed_code_leads_back_to_the_jar_for_two_other_readers(int dpi)
    {
        Assert.Equal(0, shop.Run("shop", "set", "base-url", "http://192.168.1.20:5080").ExitCode);
        var file = shop.Json(MainJob)["label"]!["file"]!.GetValue<string>();
        var page = Path.Combine(shop.Folder, "page");
        OutsideProgram.PdfToPpm.Run("-r", dpi.ToString(CultureInfo.InvariantCulture), "-png", "-singlefile", file, page);
        Assert.Contains("HTTP://192.168.1.20:5080/J/1-9.1", OutsideProgram.ZbarImg.Run("-q", "--raw", page + ".png"), StringComparison.Ordinal);
        Assert.Contains("HTTP://192.168.1.20:5080/J/1-9.1", OutsideProgram.ZXingReader.Run(page + ".png"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_label_file_is_sound_for_another_pdf_program()
    {
        var file = shop.Json(MainJob)["label"]!["file"]!.GetValue<string>();
        OutsideProgram.Qpdf.Run("--check", file);
        var fonts = OutsideProgram.PdfFonts.Run(file).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToArray();
        Assert.NotEmpty(fonts);
        Assert.All(fonts, font => Assert.Contains("IBMPlexSansCond", font, StringComparison.Ordinal));
        Assert.Contains("/PrintScaling /None", File.ReadAllText(file, System.Text.Encoding.Latin1), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_jar_prints_the_same_bytes()
    {
        using var other = new Shop();
        var first = File.ReadAllBytes(shop.Json(MainJob)["label"]!["file"]!.GetValue<string>());
        var second = File.ReadAllBytes(other.Json(MainJob)["label"]!["file"]!.GetValue<string>());
        Assert.Equal(first, second);
    }

    [Fact]
    public void A_dry_run_shows_all_and_leaves_nothing()
    {
        var answer = shop.Json([.. MainJob, "--dry-run"]);
        Assert.Equal(402.1325, Number(answer["recipe"]!.AsObject(), "makesMilliliters"), 1e-6);
        Assert.Empty(Directory.EnumerateFileSystemEntries(shop.Folder));
    }

    [Fact]
    public void Every_grade_and_solvent_makes_a_label_on_every_rule_set()
    {
        string[] grades = ["bleached", "bleached-dewaxed", "blonde", "lemon", "lemon-dewaxed", "orange", "orange-dewaxed", "garnet", "garnet-dewaxed", "ruby", "ruby-dewaxed", "buttonlac", "seedlac"];
        string[] solvents = ["ethanol-95", "ethanol-99", "denatured-sda3a", "denatured-sda1", "denatured-eu", "denatured-methanol-50", "denatured-unknown", "isopropanol-99", "isopropanol-70", "methanol"];
        foreach (var (i, grade) in grades.Index())
        {
            var solvent = solvents[i % solvents.Length];
            var rules = i % 2 == 0 ? "osha" : "clp";
            var run = shop.Run("mix", "--grade", grade, "--solvent", solvent, "--cut", "2", "--fill", "1 pt", "--rules", rules);
            Assert.True(run.ExitCode == 0, $"{grade} in {solvent} under {rules}: {run.Errors}");
        }

        Assert.Equal(grades.Length, Directory.GetFiles(shop.Labels).Length);
    }

    [Theory]
    [InlineData("1 gal", "glass", "JL176")]
    [InlineData("500 mL", "metal", "JL174")]
    public void A_container_that_rules_or_chemistry_speak_against_is_told(string container, string material, string code)
    {
        var answer = shop.Json("mix", "--grade", "garnet", "--cut", "2", "--pour", "300 mL", "--solvent", "ethanol-95", "--container", container, "--material", material);
        Assert.Contains(answer["warnings"]!.AsArray(), w => w!["code"]!.GetValue<string>() == code);
    }

    [Theory]
    [InlineData("isopropanol-70", "2", "JL172")]
    [InlineData("denatured-unknown", "2", "JL171")]
    [InlineData("ethanol-95", "6", "JL173")]
    public void A_solvent_or_cut_that_wants_a_caution_gets_it(string solvent, string cut, string code)
    {
        var answer = shop.Json("mix", "--grade", "garnet", "--cut", cut, "--pour", "300 mL", "--solvent", solvent);
        Assert.Contains(answer["warnings"]!.AsArray(), w => w!["code"]!.GetValue<string>() == code);
    }

    /// <summary>Flakes overnight to a day, as the trade has it; 12 lb on a gallon is more than twice the heaviest that is brushed, and takes as much longer.</summary>
    [Theory]
    [InlineData("5", "2026-03-10T10:00")]
    [InlineData("10", "2026-03-11T10:00")]
    [InlineData("12", "2026-03-11T19:45")]
    public void A_syrup_is_ready_later(string cut, string ready)
    {
        var batch = shop.Json("mix", "--grade", "garnet", "--cut", cut, "--pour", "100 mL", "--solvent", "ethanol-95", "--at", "2026-03-09T10:00", "--no-label");
        Assert.Equal(ready, batch["jar"]!["ready"]!.GetValue<string>());
    }

    [Fact]
    public void A_shops_own_solvent_is_a_file_and_no_code()
    {
        Directory.CreateDirectory(Path.Combine(shop.Folder, "catalog"));
        File.WriteAllText(Path.Combine(shop.Folder, "catalog", "solvents.json"), """
            [ { "id": "our-can", "name": "the green can", "shortName": "green can", "source": "practice",
                "contains": [ { "byWeight": [ { "of": "ethanol", "parts": 90 }, { "of": "methanol", "parts": 5 }, { "of": "water", "parts": 5 } ] } ] } ]
            """);
        var answer = shop.Json("mix", "--grade", "garnet", "--cut", "2", "--pour", "300 mL", "--solvent", "our-can");
        Assert.Equal("our-can", answer["jar"]!["solvent"]!.GetValue<string>());
    }

    private static double Number(JsonObject from, string key) => from[key]!.GetValue<double>();
}
