namespace JarLabel.Acceptance;

public sealed class PlanTests : IDisposable
{
    private static readonly string[] Job = ["plan", "--for", "seal", "--area", "14 sq ft", "--coats", "2", "--for", "pad", "--area", "14 sq ft", "--coats", "8", "--grade", "garnet", "--solvent", "ethanol-95", "--at", "2026-03-09T10:00"];

    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    /// <summary>14 sq ft at 400 sq ft a gallon: 0.07 gal for two coats and 0.28 for eight, with waste 291 mL and 1.22 L.</summary>
    [Fact]
    public void A_sheet_for_the_bench_holds_the_job_its_steps_and_its_cautions_on_one_page()
    {
        var answer = shop.Json([.. Job, "--out", "sheet.pdf", "--paper", "letter"]);
        var file = Path.Combine(shop.Folder, "sheet.pdf");
        Assert.Equal(file, answer["sheet"]!.GetValue<string>());
        using var document = PdfDocument.Open(file);
        Assert.Equal(1, document.NumberOfPages);
        Assert.Equal((612, 792), (document.GetPage(1).Width, document.GetPage(1).Height));
        var words = string.Join(' ', document.GetPage(1).GetWords().Select(w => w.Text));
        Assert.All(["291 mL", "1.22 L", "jarlabel mix --grade garnet --cut 1.5", "Highly flammable", "US quart", "local fire code"], said => Assert.Contains(said, words, StringComparison.Ordinal));
    }

    /// <summary>Two batches: 291 mL of 1 lb take about 33 g of flakes and 270 mL of alcohol, 1.22 L of 1½ lb about 190 g and 1.1 L. The old bag has
    /// 40 g, for the first alone; no bottle has enough for the second.</summary>
    [Fact]
    public void The_steps_name_the_bag_and_the_bottle_so_that_following_them_keeps_the_stock_right()
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "40 g", "--date", "2025-11-01");
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2026-01-01");
        shop.Json("bottle", "add", "--solvent", "ethanol-95", "--volume", "1 L", "--date", "2026-01-01");
        var commands = shop.Run(Job).Result.Split('\n').Where(line => line.Contains("jarlabel mix", StringComparison.Ordinal)).Select(line => line.Trim()).ToList();
        Assert.Matches("--grade garnet --bag 1 --cut 1 --pour .* --solvent ethanol-95 --bottle 1$", commands[0]);
        Assert.Matches("--grade garnet --bag 2 --cut 1.5 --pour .* --solvent ethanol-95$", commands[1]);
        var typed = commands[0][commands[0].IndexOf("mix", StringComparison.Ordinal)..].Replace("\"", "", StringComparison.Ordinal).Replace(" mL", "mL", StringComparison.Ordinal);
        shop.Json([.. typed.Split(' '), "--no-label", "--at", "2026-03-09T11:00"]);
        Assert.InRange(shop.Json("bag", "list")["bags"]![0]!["leftGrams"]!.GetValue<double>(), 0, 12);
    }

    /// <summary>1.22 L of 1½ lb take some 190 g and 1.1 L: more than the bags of 100 g and 150 g, and the bottles of 600 mL and 300 mL, hold each. Flakes of two bags
    /// are two batches, because each has its own age; alcohol has none.</summary>
    [Fact]
    public void What_no_bag_holds_alone_is_two_batches_and_what_no_bottle_holds_alone_is_recorded_at_each()
    {
        foreach (var mass in (string[])["100 g", "150 g"])
        {
            shop.Json("bag", "add", "--grade", "garnet", "--mass", mass, "--date", "2025-11-01", "--no-label");
        }

        foreach (var volume in (string[])["600 mL", "300 mL", "250 mL"])
        {
            shop.Json("bottle", "add", "--solvent", "ethanol-95", "--volume", volume, "--date", "2026-01-01", "--no-label");
        }

        string[] job = ["plan", "--for", "pad", "--area", "113 sq ft", "--coats", "1", "--grade", "garnet", "--solvent", "ethanol-95"];
        var told = shop.Run(job).Result;
        string[][] commands = [.. told.Split('\n').Select(line => line.Trim()).Where(line => line.StartsWith("jarlabel ", StringComparison.Ordinal)).Select(line => Regex.Matches(line[9..], "\"([^\"]*)\"|([^ ]+)").Select(word => word.Groups[1].Value + word.Groups[2].Value).ToArray())];
        Assert.Equal(["--bag 1 --bottle 1", "--bag 2 --bottle "], commands.Where(line => line[0] == "mix").Select(line => $"--bag {After(line, "--bag")} --bottle {After(line, "--bottle")}"));
        Assert.Equal(["bottle left 1 empty", "bottle left 2 empty", "bottle left 3"], commands.Where(line => line[0] == "bottle").Select(line => string.Join(' ', line[2] == "3" ? line[..3] : line)));
        Assert.Contains("no bottle alone holds enough", told, StringComparison.Ordinal);
        foreach (var line in commands.Where(line => line[0] is "mix" or "bottle"))
        {
            shop.Json([.. line, .. line[0] == "mix" ? (string[])["--no-label"] : []]);
        }

        Assert.Equal([1, 2], shop.Json("shelf")["jars"]!.AsArray().Select(jar => jar!["number"]!.GetValue<int>()));
        var left = shop.Json("bag", "list")["bags"]!.AsArray().Sum(bag => bag!["leftGrams"]!.GetValue<double>());
        var mixed = ((string[])["1", "2"]).Sum(jar => shop.Json("jar", jar)["recipe"]!["flakesGrams"]!.GetValue<double>());
        Assert.Equal(250, left + mixed, 0.1);

        static string After(string[] line, string option) => Array.IndexOf(line, option) is >= 0 and var place ? line[place + 1] : "";
    }

    /// <summary>A batch from flakes that are going off, or too old, keeps less long than one from none on record, and the plan says so as the mixing does.</summary>
    [Theory]
    [InlineData("2025-11-01", "cloudy", "JL399")]
    [InlineData("2021-11-01", null, "JL175")]
    public void A_plan_gives_the_dates_and_cautions_of_the_bag_that_it_draws_from(string made, string? pinch, string code)
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "300 g", "--date", made, "--no-label", "--at", "2026-01-02");
        if (pinch is not null)
        {
            shop.Json("bag", "test", "1", pinch, "--at", "2026-01-03");
        }

        string[] at = ["--grade", "garnet", "--solvent", "ethanol-95", "--at", "2026-01-05"];
        var plan = shop.Json(["plan", "--for", "brush", "--area", "30 sq ft", "--coats", "2", "--cut", "2", "--ics", "p.ics", .. at]);
        var mixed = shop.Json(["mix", "--bag", "1", "--cut", "2", "--pour", "540 mL", "--dry-run", .. at]);
        Assert.Equal(mixed["jar"]!["useBy"]!.GetValue<string>(), plan["batches"]![0]!["useBy"]!.GetValue<string>());
        Assert.Contains(plan["warnings"]!.AsArray(), warning => warning!["code"]!.GetValue<string>() == code);
        Assert.Contains(mixed["jar"]!["useBy"]!.GetValue<string>().Replace("-", "", StringComparison.Ordinal), File.ReadAllText(Path.Combine(shop.Folder, "p.ics")), StringComparison.Ordinal);
    }

    /// <summary>A jar that dried slowly when it was last tested is tried first, and what is poured on top of it is measured at the one bottle there is.</summary>
    [Fact]
    public void A_slow_jar_is_tried_first_and_the_bottle_is_measured_afterwards()
    {
        shop.Json("bottle", "add", "--solvent", "ethanol-95", "--volume", "1 L", "--date", "2026-01-01", "--at", "2026-01-01", "--no-label");
        shop.Json("mix", "--grade", "garnet", "--cut", "3", "--pour", "300 mL", "--solvent", "ethanol-95", "--at", "2026-01-10", "--no-label");
        string[] job = ["plan", "--for", "pad", "--area", "14 sq ft", "--coats", "1", "--grade", "garnet", "--solvent", "ethanol-95", "--at", "2026-01-20T10:00", "--out", "sheet.pdf"];
        Assert.DoesNotContain("jarlabel test", shop.Run(job).Result, StringComparison.Ordinal);
        shop.Json("test", "1", "slow", "--at", "2026-01-19");
        var told = shop.Run([.. job, "--force"]).Result;
        Assert.All(["jarlabel test 1 pass", "jarlabel test 1 fail", "mix anew for a top coat", "never a drinking glass", "jarlabel bottle left 1 "], said => Assert.Contains(said, told, StringComparison.Ordinal));
        Assert.True(shop.Json([.. job, "--force"])["jars"]![0]!["testFirst"]!.GetValue<bool>());
        using var document = PdfDocument.Open(Path.Combine(shop.Folder, "sheet.pdf"));
        var words = string.Join(' ', document.GetPage(1).GetWords().Select(w => w.Text));
        Assert.All(["mix anew for a top coat", "jarlabel test 1 fail", "measure afterwards", "bottle left 1"], said => Assert.Contains(said, words, StringComparison.Ordinal));
    }

    // A coat is about 150 mL of liquid with 130 mL of alcohol, 0.05 m3 of vapour: 5 % of a room of 1 m3, and 3.3 % burn.
    [Fact]
    public void A_room_in_which_the_air_can_burn_is_told_and_stands_on_the_sheet()
    {
        string[] job = [.. Job, "--room", "1 m3", "--out", "sheet.pdf"];
        Assert.Equal(["JL160", "JL237"], shop.Json(job)["warnings"]!.AsArray().Select(told => told!["code"]!.GetValue<string>()));
        using var document = PdfDocument.Open(Path.Combine(shop.Folder, "sheet.pdf"));
        var words = string.Join(' ', document.GetPage(1).GetWords().Select(w => w.Text));
        Assert.All(["THE AIR CAN BURN", "TOO MUCH TO BREATHE"], said => Assert.Contains(said, words, StringComparison.Ordinal));
        Assert.Empty(shop.Json([.. Job, "--room", "100 m3"])["warnings"]!.AsArray());
    }

    [Theory]
    [InlineData("--area", "0 sq ft")]
    [InlineData("--for", "polish")]
    [InlineData("--out", "sheet.doc")]
    [InlineData("--paper", "a3")]
    public void What_cannot_be_planned_or_drawn_is_told_and_nothing_is_written(string option, string value)
    {
        var sentence = Job.ToList();
        var at = sentence.IndexOf(option);
        if (at < 0)
        {
            sentence.AddRange([option, value]);
        }
        else
        {
            sentence[at + 1] = value;
        }

        var run = shop.Run([.. sentence]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(value, run.Errors, StringComparison.Ordinal);
        Assert.Contains(option.TrimStart('-'), run.Errors, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(Directory.GetFiles(shop.Folder, "sheet*"));
    }

    [Fact]
    public void On_a_dry_run_the_sheet_is_drawn_and_dropped()
    {
        Assert.Equal(0, shop.Run([.. Job, "--out", "sheet.pdf", "--dry-run"]).ExitCode);
        Assert.False(File.Exists(Path.Combine(shop.Folder, "sheet.pdf")));
    }
}
