namespace JarLabel.Acceptance;

/// <summary>Stock and designs through the program: a look at them, a shop's own, black-only printers, and a bottle that must say poison.</summary>
public sealed class StockTests : IDisposable
{
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public void All_designs_stand_on_one_page_with_their_names_and_the_same_jar()
    {
        var answer = shop.Json("designs", "--out", "designs.pdf");
        using var document = PdfDocument.Open((string)answer["file"]!);
        Assert.Equal(1, document.NumberOfPages);
        var page = document.GetPage(1);
        var words = page.GetWords().Select(word => word.Text).ToList();
        Assert.All(answer["designs"]!.AsArray(), design => Assert.Contains((string)design!["id"]!, words));
        Assert.True(words.Count(word => word == "Garnet") >= 12);
        Assert.All(page.Letters, letter => Assert.InRange(letter.BoundingBox.Left, 0, page.Width));
        Assert.All(page.Letters, letter => Assert.InRange(letter.BoundingBox.Bottom, 0, page.Height));
    }

    [Fact]
    public void In_black_only_the_picture_has_one_bit_a_dot()
    {
        shop.Json("designs", "--out", "designs.png", "--mono");
        var png = File.ReadAllBytes(Path.Combine(shop.Folder, "designs.png"));
        Assert.Equal((1, 0), (png[24], png[25])); // PNG: bit depth and colour type
        shop.Json("mix", "--grade", "ruby", "--solvent", "ethanol-95", "--cut", "2", "--pour", "350 mL", "--no-label");
        shop.Json("label", "1", "--sheet", "roll-62x100", "--out", "roll.png");
        shop.Json("label", "1", "--mono", "--out", "mono.png");
        shop.Json("label", "1", "--out", "colour.png");
        Assert.Equal([1, 1, 8], ((string[])["roll", "mono", "colour"]).Select(name => (int)File.ReadAllBytes(Path.Combine(shop.Folder, name + ".png"))[24]));
    }

    [Fact]
    public void Black_only_says_that_the_rule_of_red_frames_asks_for_colour()
    {
        shop.Json("mix", "--grade", "ruby", "--solvent", "ethanol-95", "--cut", "2", "--pour", "350 mL", "--no-label");
        Assert.Contains("the rule asks for colour", shop.Run("label", "1", "--sheet", "roll-62x100").Result, StringComparison.Ordinal);
        Assert.Contains("the rule asks for colour", shop.Run("label", "1", "--mono").Result, StringComparison.Ordinal);
        Assert.DoesNotContain("the rule asks for colour", shop.Run("label", "1").Result, StringComparison.Ordinal);
    }

    [Fact]
    public void Stock_is_drawn_with_its_places()
    {
        Assert.Contains("()()() x4", shop.Run("sheets").Result, StringComparison.Ordinal);
        var drawn = shop.Run("sheets", "letter-3x4-round-50.8").Result;
        Assert.All(Enumerable.Range(1, 12), place => Assert.Matches($@"\D{place}\D", drawn));
        Assert.Contains("no sheet \"a5\"", shop.Run("sheets", "a5").Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 0.5, 2, 105, 0, "JL338", "Places 1-16")]
    [InlineData(5, 4.5, 2, 105, 2, "JL301", "The last label ends at 215 mm; the paper width is 210 mm")]
    [InlineData(0, 4.5, 2, 100, 2, "JL301", "would overlap")]
    public void A_shops_own_sheet_is_told_what_does_not_fit(double left, double top, int columns, double pitch, int exit, string code, string says)
    {
        Directory.CreateDirectory(Path.Combine(shop.Folder, "layouts", "sheets"));
        File.WriteAllText(Path.Combine(shop.Folder, "layouts", "sheets", "own.json"), FormattableString.Invariant($$"""
            { "id": "own", "title": "Own", "paper": { "width": 210, "height": 297 }, "shape": "rectangle", "width": 105, "height": 37,
              "left": {{left}}, "top": {{top}}, "columns": {{columns}}, "pitchX": {{pitch}}, "rows": 8, "design": "standard", "source": "practice" }
            """).Replace("\"design\": \"standard\"", "\"design\": \"long\"", StringComparison.Ordinal));
        var run = shop.Run("check");
        Assert.Equal(exit, run.ExitCode);
        Assert.Contains(says, run.Result + run.Errors, StringComparison.Ordinal);
        Assert.Contains($"\"{code}\"", shop.Run("check", "--json").Result, StringComparison.Ordinal);
    }

    // 16 CFR 1500.14(b)(4): 4 % and more of methanol by weight, so these words. On the smallest bottle stock other things make room for them.
    [Theory]
    [InlineData("denatured-unknown")]
    [InlineData("denatured-methanol-50")]
    [InlineData("methanol")]
    public void A_bottle_of_much_methanol_says_poison_on_the_smallest_stock(string solvent)
    {
        shop.Json("bottle", "add", "--solvent", solvent, "--volume", "1 gal", "--date", "2026-03-01", "--sheet", "a4-3x7-63.5x38.1");
        using var document = PdfDocument.Open(Directory.GetFiles(shop.Labels, "*.pdf").Single());
        var text = string.Join(' ', document.GetPage(1).GetWords().Select(word => word.Text));
        Assert.Contains("POISON. Vapor harmful. May be fatal or cause blindness if swallowed. Cannot be made nonpoisonous.", text, StringComparison.Ordinal);
        Assert.Contains("DANGER", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_has_no_room_names_the_stock_that_has()
    {
        shop.Json("mix", "--grade", "ruby", "--solvent", "ethanol-95", "--cut", "2", "--pour", "350 mL", "--no-label");
        var run = shop.Run("label", "1", "--design", "full", "--sheet", "a4-3x7-63.5x38.1");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("has room on a4-2x4-99.1x67.7, letter-2x3-101.6x84.7", run.Errors, StringComparison.Ordinal);
    }
}
