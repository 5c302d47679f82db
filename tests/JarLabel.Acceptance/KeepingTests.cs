namespace JarLabel.Acceptance;

public sealed class KeepingTests : IDisposable
{
    private readonly Shop shop = new();

    public KeepingTests()
    {
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--at", "2026-01-10", "--no-label");
        shop.Json("mix", "--grade", "blonde", "--cut", "2", "--pour", "350 mL", "--solvent", "ethanol-95", "--at", "2026-01-10", "--no-label");
    }

    public void Dispose() => shop.Dispose();

    private static IEnumerable<string> Codes(System.Text.Json.Nodes.JsonObject answer) => answer["warnings"]!.AsArray().Select(w => w!["code"]!.GetValue<string>());

    private string File(string name) => Path.Combine(shop.Folder, name);

    /// <summary>A jar that is there is named, and none where there is none.</summary>
    [Fact]
    public void What_comes_next_of_a_shop_without_tests_can_be_done()
    {
        shop.Json("discard", "1");
        Assert.Contains("Next: jarlabel test 2 pass", shop.Run("keeping").Result, StringComparison.Ordinal);
        shop.Json("undo", "2", "--no-label");
        Assert.Matches("Next: jarlabel shelf\\s*$", shop.Run("keeping").Result);
    }

    [Theory]
    [InlineData("shelf.pdf", "%PDF-")]
    [InlineData("shelf.svg", "<svg")]
    [InlineData("shelf.png", "PNG")]
    public void The_drawing_of_the_shelves_is_written_as_its_ending_says(string name, string holds)
    {
        Assert.Equal(File(name), shop.Json("shelf", "--out", File(name), "--at", "2026-02-01")["drawing"]!.GetValue<string>());
        Assert.Contains(holds, System.Text.Encoding.Latin1.GetString(System.IO.File.ReadAllBytes(File(name)))[..400], StringComparison.Ordinal);
    }

    /// <summary>The oldest program that reads what is on the paper is somebody else's.</summary>
    [Fact]
    public void A_batch_of_a_list_is_dated_by_the_shops_tests_like_any_other()
    {
        shop.Json("test", "1", "fail", "--at", "2026-04-01");
        var one = shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--at", "2026-04-02", "--no-label");
        System.IO.File.WriteAllText(File("list.csv"), "grade,cut,pour,solvent\ngarnet,1.5,350 mL,ethanol-95\n");
        shop.Json("mix", "--list", File("list.csv"), "--at", "2026-04-02", "--no-label");
        var listed = shop.Json("jar", "4", "--at", "2026-04-02");
        Assert.True(DateOnly.Parse(one["jar"]!["useBy"]!.GetValue<string>(), System.Globalization.CultureInfo.InvariantCulture) < new DateOnly(2026, 12, 2), "eight months are claimed");
        Assert.Equal(one["jar"]!["useBy"]!.GetValue<string>(), listed["jar"]!["useBy"]!.GetValue<string>());
        Assert.DoesNotContain("JL124", listed["warnings"]!.AsArray().Select(w => w!["code"]!.GetValue<string>()));
    }

    /// <summary>Three months at 20 °C and then a warm shelf are not a life on a warm shelf.</summary>
    [Fact]
    public void A_poured_off_jar_counts_the_warm_shelf_from_the_day_it_came_there()
    {
        shop.Run("shop", "set", "shelf", "attic=28 C");
        shop.Json("decant", "1", "--into", "100 mL", "--at", "2026-02-01", "--no-label");
        shop.Json("move", "3", "--shelf", "attic", "--at", "2026-04-10", "--no-label");
        shop.Json("test", "2", "pass", "--at", "2026-04-12");
        Assert.DoesNotContain("JL124", Codes(shop.Json("jar", "3", "--at", "2026-04-12")));
    }

    [Fact]
    public void A_jar_among_many_labels_is_dated_as_it_would_be_alone()
    {
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--at", "2026-01-10", "--no-label");
        shop.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--at", "2026-01-10", "--no-label");
        shop.Json("test", "1", "fail", "--at", "2026-04-01");
        var alone = shop.Json("label", "3", "--at", "2026-04-02")["jar"]!;
        var many = shop.Json("label", "2..4", "--at", "2026-04-02", "--out", File("many.pdf"))["labels"]!;
        Assert.Equal([2, 4], many["redated"]!.AsArray().Select(j => j!.GetValue<int>()));
        var among = shop.Json("jar", "4", "--at", "2026-04-02");
        Assert.Equal(alone["useBy"]!.GetValue<string>(), among["jar"]!["useBy"]!.GetValue<string>());
        Assert.Equal(2, among["jar"]!["revision"]!.GetValue<int>());
        Assert.DoesNotContain("JL124", among["warnings"]!.AsArray().Select(w => w!["code"]!.GetValue<string>()));
        var day = DateOnly.Parse(alone["useBy"]!.GetValue<string>(), System.Globalization.CultureInfo.InvariantCulture).ToString("d MMM yyyy", System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(2, OutsideProgram.PdfToText.Run("-layout", File("many.pdf"), "-").Split(day).Length - 1);
        Assert.Empty(shop.Json("label", "2..4", "--at", "2026-04-02")["labels"]!["redated"]!.AsArray());
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    [Fact]
    public void A_jar_whose_test_failed_promises_nothing_until_a_later_one_passes()
    {
        shop.Json("label", "1", "--at", "2026-01-11");
        Assert.Equal(["JL170", "JL359"], Codes(shop.Json("test", "1", "fail", "--at", "2026-05-01")));
        foreach (var (step, file) in ((string[], string)[])[(["label", "1"], "label.pdf"), (["card", "1"], "card.pdf"), (["label", "1", "2"], "many.pdf")])
        {
            Assert.Contains("JL140", Codes(shop.Json([.. step, "--out", File(file), "--at", "2026-05-02"])));
            var said = OutsideProgram.PdfToText.Run("-layout", File(file), "-");
            Assert.Contains("test failed", said, StringComparison.Ordinal);
            Assert.Contains("1 May 2026", said, StringComparison.Ordinal);
            Assert.Equal(file == "many.pdf", said.Contains("use by", StringComparison.Ordinal));
        }

        shop.Json("shelf", "--ics", File("shelf.ics"), "--at", "2026-05-02");
        var calendar = System.IO.File.ReadAllText(File("shelf.ics"));
        Assert.DoesNotContain("jar 1-9", calendar, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Use jar 2-7", calendar, StringComparison.Ordinal);

        shop.Json("test", "1", "pass", "--at", "2026-05-20");
        Assert.DoesNotContain("JL140", Codes(shop.Json("label", "1", "--out", File("good.pdf"), "--at", "2026-05-20")));
        Assert.Contains("use by", OutsideProgram.PdfToText.Run("-layout", File("good.pdf"), "-"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_that_is_cut_short_says_so()
    {
        using var three = new Shop();
        foreach (var day in (string[])["2026-03-09", "2026-03-10", "2026-03-11"])
        {
            three.Json("mix", "--grade", "garnet", "--cut", "1.5", "--pour", "350 mL", "--solvent", "ethanol-95", "--no-label", "--at", day);
        }

        Assert.StartsWith("The 2 of 3 jars that are due soonest, ", three.Run("shelf", "--first", "2", "--at", "2026-03-12").Result, StringComparison.Ordinal);
        Assert.Equal([1, 2], three.Json("shelf", "--first", "2", "--at", "2026-03-12")["jars"]!.AsArray().Select(j => j!["number"]!.GetValue<int>()));
        Assert.StartsWith("3 jars, ", three.Run("shelf", "--at", "2026-03-12").Result, StringComparison.Ordinal);
        Assert.Contains("--first", three.Run("shelf", "--first", "0").Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Poppler_reads_every_jar_and_its_state_from_the_paper()
    {
        shop.Json("test", "1", "pass", "--at", "2026-06-01");
        shop.Json("shelf", "--out", File("shelf.pdf"), "--at", "2026-06-20", "--paper", "a4");
        var said = OutsideProgram.PdfToText.Run("-layout", File("shelf.pdf"), "-");
        foreach (var words in (string[])["1-9", "2-7", "1½ lb garnet", "passed 1 Jun 2026", "today 20 Jun 2026", "use by (estimate)", "test first"])
        {
            Assert.Contains(words, said, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_kind_is_drawn_with_its_tests_and_several_need_a_choice()
    {
        shop.Json("test", "1", "pass", "--at", "2026-06-01");
        shop.Json("test", "2", "fail", "--at", "2026-06-01");
        var run = shop.Run("keeping", "--out", File("k.svg"));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("JL362", run.Errors, StringComparison.Ordinal);
        Assert.Equal(File("k.pdf"), shop.Json("keeping", "--out", File("k.pdf"))["drawing"]!.GetValue<string>());
        Assert.Equal(File("k.svg"), shop.Json("keeping", "--grade", "garnet", "--solvent", "ethanol-95", "--out", File("k.svg"))["drawing"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("JL361", "keeping|--out|k.pdf")]
    [InlineData("JL332", "shelf|--out|shelf.doc")]
    [InlineData("JL118", "shelf|--out|")]
    [InlineData("JL339", "shelf|--out|/no/such/folder/shelf.pdf")]
    [InlineData("--paper", "shelf|--out|shelf.pdf|--paper|a0")]
    public void A_drawing_that_cannot_be_made_is_told(string says, string typed)
    {
        var run = shop.Run(typed.Split('|'));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(says, run.Errors, StringComparison.Ordinal);
    }
}
