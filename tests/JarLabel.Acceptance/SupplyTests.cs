namespace JarLabel.Acceptance;

/// <summary>Bags and bottles through the program, in an invented shop.</summary>
public sealed class SupplyTests : IDisposable
{
    private readonly Shop shop = new();
    private readonly JsonObject bag;
    private readonly JsonObject bottle;

    public SupplyTests()
    {
        bag = shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2025-12-01", "--at", "2026-03-01");
        bottle = shop.Json("bottle", "add", "--solvent", "ethanol-95", "--volume", "1 L", "--date", "2026-02-20", "--at", "2026-03-01");
    }

    public void Dispose() => shop.Dispose();

    /// <summary>What is said to come next can be typed as it stands, however little there is.</summary>
    [Theory]
    [InlineData("bag", "500 g")]
    [InlineData("bag", "30 g")]
    [InlineData("bag", "2 g")]
    [InlineData("bottle", "5 L")]
    [InlineData("bottle", "120 mL")]
    [InlineData("bottle", "5 mL")]
    public void What_comes_next_of_a_bag_or_bottle_can_be_done(string kind, string holds)
    {
        var added = kind == "bag"
            ? shop.Run("bag", "add", "--grade", "garnet", "--mass", holds, "--date", "2026-01-05", "--no-label")
            : shop.Run("bottle", "add", "--solvent", "ethanol-95", "--volume", holds, "--no-label");
        var next = Regex.Match(added.Result, "Next: jarlabel (.*)").Groups[1].Value;
        string[] words = [.. Regex.Matches(next, "\"([^\"]*)\"|(\\S+)").Select(word => word.Groups[1].Value + word.Groups[2].Value)];
        Assert.Equal(0, shop.Run(words).ExitCode);
    }

    [Fact]
    public void A_bottle_that_is_moved_to_where_it_stands_is_not_and_a_label_is_printed_again()
    {
        shop.Json("bottle", "add", "--solvent", "methanol", "--volume", "1 L", "--no-label");
        var stays = shop.Json("bottle", "move", "1", "main");
        Assert.Equal("JL218", Assert.Single(stays["warnings"]!.AsArray())!["code"]!.GetValue<string>());
        Assert.DoesNotContain("BottleMoved", string.Join('\n', EventsOf(shop)), StringComparison.Ordinal);
        Assert.True(File.Exists(shop.Json("bottle", "label", "1")["label"]!["file"]!.GetValue<string>()));
        Assert.Contains("POISON", shop.Run("bottle", "list").Result, StringComparison.Ordinal);
    }

    private static string[] EventsOf(Shop shop)
    {
        var file = Path.Combine(shop.Folder, "events.jsonl");
        shop.Json("export", file);
        return File.ReadAllLines(file);
    }

    [Fact]
    public void A_batch_draws_from_both_and_taking_it_back_puts_both_back()
    {
        // 1.5 lb/gal is 179.739641 g/L: 350 mL take 62.908874 g.
        var jar = Mix("1.5", "350 mL");
        Assert.Equal("garnet", Text(jar["jar"]!, "grade"));
        Assert.Equal("ethanol-95", Text(jar["jar"]!, "solvent"));
        Assert.Equal(437.091126, BagLeft(), 1e-4);
        Assert.Equal(650, BottleLeft(), 1e-6);
        shop.Json("thin", "1", "--to", "1", "--bottle", "1", "--container", "1 L", "--no-label");
        Assert.Equal(475, BottleLeft(), 1e-6); // 525 mL hold 1 lb/gal: 175 more
        shop.Json("thicken", "1", "--to", "1.5", "--bag", "1-9", "--no-label");
        Assert.Equal(405.636689, BagLeft(), 1e-4); // 1/2 lb/gal more in 525 mL: 31.454437 g
        shop.Json("undo", "1", "--no-label");
        shop.Json("undo", "1", "--no-label");
        shop.Json("undo", "1", "--no-label");
        Assert.Equal(500, BagLeft(), 1e-6);
        Assert.Equal(1000, BottleLeft(), 1e-6);
        Assert.Equal("", shop.Run("verify").Errors);
    }

    [Fact]
    public void What_is_short_says_what_could_be_made_and_doing_so_is_enough()
    {
        var run = shop.Run("mix", "--bag", "1", "--bottle", "1", "--cut", "3", "--pour", "2 L", "--no-label");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("error JL159: --bag", run.Errors, StringComparison.Ordinal);
        Assert.Contains("error JL159: --bottle", run.Errors, StringComparison.Ordinal);
        var pour = System.Text.RegularExpressions.Regex.Match(run.Errors, "--pour \"(?<v>[0-9.]+ mL)\"").Groups["v"].Value;
        Assert.Equal("1000 mL", pour); // 500 g would do for 1.39 L
        Assert.Equal(500, BagLeft(), 1e-9);
        Mix("3", pour);
        Assert.Empty(shop.Json("bottle", "list")["bottles"]!.AsArray());
        Assert.StartsWith("error JL157: --bottle", shop.Run("mix", "--grade", "garnet", "--bottle", "1", "--cut", "1", "--pour", "1 mL").Errors, StringComparison.Ordinal);
    }

    /// <summary>Waxy flakes keep three years dry; at six a quarter of the jar's eight months is left.</summary>
    [Fact]
    public void Old_flakes_in_the_bag_shorten_the_use_by()
    {
        shop.Json("bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2020-03-09", "--no-label", "--at", "2026-03-01");
        var fresh = shop.Json("mix", "--bag", "1", "--cut", "2", "--pour", "100 mL", "--solvent", "ethanol-95", "--no-label", "--at", "2026-03-09");
        var old = shop.Json("mix", "--bag", "2", "--cut", "2", "--pour", "100 mL", "--solvent", "ethanol-95", "--no-label", "--at", "2026-03-09");
        Assert.Equal("2026-11-09", Text(fresh["jar"]!, "useBy"));
        Assert.Equal("2026-05-09", Text(old["jar"]!, "useBy"));
        Assert.Contains("JL175", old["warnings"]!.AsArray().Select(w => Text(w!, "code")));
    }

    [Fact]
    public void Both_get_labels_whose_codes_lead_back()
    {
        Assert.Contains("Garnet flakes", Words(bag), StringComparison.Ordinal);
        Assert.Contains("bag 1-9", Words(bag), StringComparison.Ordinal);
        var words = Words(bottle);
        foreach (var part in (string[])["Ethanol 95 %", "DANGER", "Highly flammable liquid and vapor", "bottle 1-9", "20 Feb 2026"])
        {
            Assert.Contains(part, words, StringComparison.Ordinal);
        }

        shop.Json("label", "--bag", "1", "--sheet", "a4-3x8-63.5x33.9", "--out", "bag.pdf");
        var picture = shop.Json("label", "--bottle", "1", "--out", "bottle.png")["label"]!;
        Assert.Equal("bottle", Text(picture, "design"));
        Assert.Equal("1-9", Text(shop.Json("scan", "bottle.png")["bottle"]!, "id"));
        Assert.Equal("1-9", Text(shop.Json("scan", Text(bag["label"]!, "payload"))["bag"]!, "id"));
        Assert.StartsWith("error JL185", shop.Run("scan", "RUBY FLAKES. 2025-12-01. BAG 1-9").Errors, StringComparison.Ordinal);
        Assert.StartsWith("error JL156", shop.Run("scan", "BAG 2-7").Errors, StringComparison.Ordinal);
        Assert.StartsWith("error JL119", shop.Run("label").Errors, StringComparison.Ordinal);
        Assert.StartsWith("error JL119", shop.Run("label", "1", "--bag", "1").Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Bottles_count_on_their_shelf_and_on_its_notice()
    {
        shop.Json("bottle", "add", "--solvent", "methanol", "--volume", "5 L", "--date", "2026-02-20", "--no-label", "--at", "2026-03-01");
        var shelf = shop.Json("shelf")["shelves"]!.AsArray().Single()!;
        Assert.Equal(2, shelf["bottles"]!.GetValue<int>());
        Assert.Equal(6000, shelf["bottleMilliliters"]!.GetValue<double>(), 1e-6);
        var notice = shop.Json("notice", "--paper", "letter")["notice"]!;
        Assert.Equal(6000, notice["totalMilliliters"]!.GetValue<double>(), 1e-6);
        Assert.True(notice["toxic"]!.GetValue<bool>());
        shop.Json("bottle", "left", "2", "40 mL");
        shop.Json("bottle", "discard", "2", "--why", "to the waste point");
        Assert.False(shop.Json("notice", "--paper", "letter")["notice"]!["toxic"]!.GetValue<bool>());
    }

    [Fact]
    public void An_export_carries_bags_and_bottles_into_an_empty_shop()
    {
        Mix("1.5", "350 mL");
        shop.Json("export", Path.Combine(shop.Folder, "all.jsonl"));
        using var other = new Shop();
        other.Json("import", Path.Combine(shop.Folder, "all.jsonl"));
        Assert.Equal(shop.Json("bag", "list").ToJsonString(), other.Json("bag", "list").ToJsonString());
        Assert.Equal(shop.Json("bottle", "list").ToJsonString(), other.Json("bottle", "list").ToJsonString());
    }

    [Theory]
    [InlineData("JL103", "bag", "add", "--grade", "garnet", "--mass", "1 L", "--date", "2025-12-01")]
    [InlineData("JL120", "bag", "add", "--grade", "garnet", "--mass", "500 g", "--date", "2126-12-01")]
    [InlineData("JL106", "bottle", "add", "--solvent", "ethanol-95", "--date", "2025-12-01")]
    [InlineData("JL158", "mix", "--bag", "1", "--grade", "blonde", "--solvent", "ethanol-95", "--cut", "1", "--pour", "100 mL")]
    [InlineData("JL241", "mix", "--bag", "1", "--flake-date", "2024-01-01", "--solvent", "ethanol-95", "--cut", "1", "--pour", "100 mL")]
    [InlineData("JL156", "mix", "--bag", "4", "--solvent", "ethanol-95", "--cut", "1", "--pour", "100 mL")]
    [InlineData("JL483", "bag", "left", "1", "12 kg")]
    [InlineData("JL483", "bottle", "left", "1", "50 gal")]
    [InlineData("JL155", "bag", "left", "1-2", "20 g")]
    [InlineData("JL156", "bottle", "move", "9", "--shelf", "main")]
    public void Wrong_input_is_told_and_changes_nothing(string code, params string[] arguments)
    {
        var before = shop.Run("export", "--dry-run", "x.jsonl").Result;
        var run = shop.Run(arguments);
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("error " + code, run.Errors, StringComparison.Ordinal);
        Assert.Single(run.Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(before, shop.Run("export", "--dry-run", "x.jsonl").Result);
    }

    private JsonObject Mix(string cut, string pour) =>
        shop.Json("mix", "--bag", "1", "--bottle", "1", "--cut", cut, "--pour", pour, "--no-label", "--at", "2026-03-09");

    private double BagLeft() => shop.Json("bag", "list")["bags"]![0]!["leftGrams"]!.GetValue<double>();

    private double BottleLeft() => shop.Json("bottle", "list")["bottles"]![0]!["leftMilliliters"]!.GetValue<double>();

    private static string Text(JsonNode node, string name) => node[name]!.GetValue<string>();

    private static string Words(JsonObject answer)
    {
        using var pdf = PdfDocument.Open(Text(answer["label"]!, "file"));
        return string.Join(' ', pdf.GetPage(1).GetWords().Select(w => w.Text));
    }
}
