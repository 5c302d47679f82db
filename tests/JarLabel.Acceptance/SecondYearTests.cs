namespace JarLabel.Acceptance;

/// <summary>What shows only where several things of a shop meet: lists and labels, tests and bags, files and where they lie, several faults in one line.</summary>
public sealed class SecondYearTests : IDisposable
{
    private static readonly string[] Batch = ["mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label"];

    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    /// <summary>16 CFR 1500.14(b)(4): 4 % methanol by weight. 100 gallons of 190 proof (6.8 lb each) and 5 of methanol (6.6 lb) are 4.6 % (27 CFR 21.35); with half a pound
    /// of flakes a gallon 4.3 %, with two pounds 3.6 %.</summary>
    [Fact]
    public void Flakes_that_bring_methanol_below_the_limit_bring_a_jar_off_the_list_of_poisons_as_off_its_label()
    {
        foreach (var cut in (string[])["0.5", "2", "0.5", "2"])
        {
            shop.Json("mix", "--grade", "garnet", "--cut", cut, "--pour", "200 mL", "--solvent", "denatured-sda3a", "--no-label", "--rules", "osha", "--at", "2026-03-09");
        }

        var list = shop.Json("shelf", "--rules", "osha", "--at", "2026-03-12")["jars"]!.AsArray();
        Assert.Equal([1, 3], list.Where(jar => jar!["poison"]?.GetValue<bool>() == true).Select(jar => jar!["number"]!.GetValue<int>()).Order());
        Assert.All(list, jar => Assert.Equal(
            jar!["poison"]?.GetValue<bool>() == true,
            shop.Json("jar", $"{jar["number"]}", "--rules", "osha", "--at", "2026-03-12")["hazards"]!["poisonWording"]!.AsArray().Count > 0));
    }

    [Fact]
    public void Tests_of_flakes_that_were_going_off_teach_their_kind_nothing_whenever_that_was_found()
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2026-01-05", "--no-label", "--at", "2026-03-01");
        shop.Json([.. Batch, "--bag", "1", "--at", "2026-03-09"]);
        shop.Json([.. Batch, "--at", "2026-03-09"]);
        shop.Json("test", "1", "fail", "--at", "2026-04-09");
        shop.Json("test", "2", "pass", "--at", "2026-04-09");
        Assert.Equal((2, 1), Learned());
        shop.Json("bag", "test", "1", "cloudy", "--at", "2026-04-10");
        Assert.Equal((1, 0), Learned());
        Assert.Equal([1], shop.Json("keeping")["notCounted"]!.AsArray().Select(jar => jar!.GetValue<int>()));
        Assert.Contains("of flakes that were going off", shop.Run("keeping").Result, StringComparison.Ordinal);
        shop.Json([.. Batch, "--bag", "1", "--at", "2026-04-11"]);
        Assert.Contains("JL217", shop.Json("test", "3", "pass", "--at", "2026-05-11")["warnings"]!.AsArray().Select(told => told!["code"]!.GetValue<string>()));
        Assert.Equal((1, 0), Learned());

        (int Tests, int Failed) Learned() => Assert.Single(shop.Json("keeping")["kinds"]!.AsArray()) is { } kind ? (kind["tests"]!.GetValue<int>(), kind["failed"]!.GetValue<int>()) : default;
    }

    /// <summary>Minutes beside a failure say how long somebody waited.</summary>
    [Fact]
    public void Drops_that_stayed_soft_are_never_said_to_be_dry()
    {
        shop.Json([.. Batch, "--at", "2026-03-09"]);
        shop.Json("test", "1", "fail", "--dry-minutes", "120", "--at", "2026-03-20");
        var told = shop.Run("jar", "1", "--at", "2026-03-20").Result;
        Assert.Contains("test failed, still soft after 120 min", told, StringComparison.Ordinal);
        Assert.DoesNotContain("dry after", told, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("use 7 10mL", "JL143")]
    [InlineData("thin 7 --to 1", "JL143")]
    [InlineData("bag test 4 all", "JL156")]
    [InlineData("bottle left 4 10mL", "JL156")]
    [InlineData("mix --bag 4 --cut 1 --pour 100mL --solvent ethanol-95", "JL156")]
    [InlineData("mix --grade garnet --bottle 4 --cut 1 --pour 100mL", "JL156")]
    public void A_moment_that_cannot_be_read_is_told_beside_what_the_ledger_knows(string line, string code)
    {
        shop.Json([.. Batch, "--at", "2026-03-09"]);
        var run = shop.Run([.. line.Split(' '), "--at", "2026-13-01"]);
        Assert.Equal((2, ""), (run.ExitCode, run.Result));
        Assert.Matches("(?m)^error JL109: --at: ", run.Errors);
        Assert.Equal(1, Regex.Count(run.Errors, $"(?m)^error {code}: "));
        Assert.Equal(2, run.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    /// <summary>Quotes are proposed only around what is then read.</summary>
    [Theory]
    [InlineData("mix garnet 95%", "Unrecognized command or argument \"95%\".")]
    [InlineData("mix garnet 2 lb", "Unrecognized command or argument \"2\".")]
    [InlineData("mix garnet dewaxed --cut 1 --pour 100mL --solvent ethanol-95", "put it in quotes: jarlabel mix \"garnet dewaxed\" --cut 1")]
    [InlineData("mix garnet --cut 1 --pour 100mL --solvent denatured alcohol", "--solvent \"denatured alcohol\"")]
    [InlineData("mix garnet --cut 1 --pour 100mL --solvent ethanol cheap", "Unrecognized command or argument \"cheap\".")]
    public void Quotes_are_proposed_only_where_the_words_then_name_something(string line, string told)
    {
        var run = shop.Run(line.Split(' '));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(told, run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bag_with_a_wrong_date_is_put_right_the_way_that_is_told()
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2026-01-05", "--no-label", "--at", "2026-03-01");
        string[] other = ["mix", "--bag", "1", "--flake-date", "2025-01-05", "--cut", "1", "--pour", "100 mL", "--solvent", "ethanol-95", "--no-label", "--at", "2026-03-09"];
        Assert.Contains("bag undo 1", shop.Run(other).Errors, StringComparison.Ordinal);
        shop.Json("mix", "--bag", "1", "--cut", "1", "--pour", "100 mL", "--solvent", "ethanol-95", "--no-label", "--at", "2026-03-09");
        var told = shop.Run(other).Errors;
        Assert.DoesNotContain("bag undo", told, StringComparison.Ordinal);
        var left = Regex.Match(told, "jarlabel bag add --grade garnet --mass \"(?<left>[0-9.]+ g)\"").Groups["left"].Value;
        shop.Json("bag", "add", "--grade", "garnet", "--mass", left, "--date", "2025-01-05", "--no-label", "--at", "2026-03-09");
        shop.Json("bag", "left", "1", "empty", "--at", "2026-03-09");
        Assert.Equal(500 - 11.98, Assert.Single(shop.Json("bag", "list")["bags"]!.AsArray())!["leftGrams"]!.GetValue<double>(), 0.2); // a pound a gallon is 11.98 g per 100 mL
    }

    [Fact]
    public void A_plan_of_more_than_a_quart_says_to_share_it_on_the_screen_as_on_paper()
    {
        string[] job = ["plan", "--for", "seal", "--area", "900 sq ft", "--coats", "2", "--grade", "garnet", "--solvent", "ethanol-95", "--at", "2026-03-09"];
        var sheet = Path.Combine(shop.Folder, "job.pdf");
        var screen = shop.Run([.. job, "--out", sheet]);
        Assert.True(screen.ExitCode == 0, screen.Errors);
        Assert.Contains("share it among jars", screen.Result, StringComparison.Ordinal);
        Assert.Contains("share it among jars", Regex.Replace(OutsideProgram.PdfToText.Run(sheet, "-"), @"\s+", " "), StringComparison.Ordinal);
        Assert.DoesNotContain("share it among jars", shop.Run("plan", "--for", "seal", "--area", "9 sq ft", "--coats", "2", "--grade", "garnet", "--solvent", "ethanol-95", "--at", "2026-03-09").Result, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("layouts/own.json")]
    [InlineData("layouts/sheet/own.json")]
    [InlineData("layouts/sheets/old/own.json")]
    [InlineData("catalog/old/grades.json")]
    public void A_file_that_nothing_reads_where_it_lies_is_named(string file)
    {
        shop.Json([.. Batch, "--at", "2026-03-09"]);
        var place = Path.Combine(shop.Folder, file.Replace('/', Path.DirectorySeparatorChar));
        Directory.CreateDirectory(Path.GetDirectoryName(place)!);
        File.WriteAllText(place, "[]");
        var run = shop.Run("check");
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith($"error JL242: {place}: ", run.Errors, StringComparison.Ordinal);
        File.Delete(place);
        Assert.Equal(0, shop.Run("check").ExitCode);
    }

    [Fact]
    public void The_fault_of_one_catalog_file_hides_none_of_another()
    {
        var catalog = Directory.CreateDirectory(Path.Combine(shop.Folder, "catalog")).FullName;
        File.WriteAllText(Path.Combine(catalog, "solvents.json"), "[{\"id\":\"x\"");
        File.WriteAllText(
            Path.Combine(catalog, "grades.json"),
            """[{"id":"own","name":"Own","color":"red brown","darkness":4,"waxy":true,"keeping":"no-such-class","form":"no-such-form","note":"Of our own make.","source":"practice"}]""");
        var told = shop.Run("check").Errors;
        Assert.Contains("solvents.json", told, StringComparison.Ordinal);
        Assert.Contains("no-such-class", told, StringComparison.Ordinal);
        Assert.Contains("no-such-form", told, StringComparison.Ordinal);
    }
}
