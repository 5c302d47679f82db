namespace JarLabel.Acceptance;

/// <summary>Labels of many jars at once, and lists of batches for a class or a supplier.</summary>
public sealed class ManyLabelTests : IDisposable
{
    private const string Sheet = "a4-3x7-63.5x38.1"; // 21 places

    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    // The open sheet has 4 places used; 3 jars of 7 copies are 21 labels: 17 fill it, 4 begin the next.
    [Fact]
    public void Labels_run_on_from_the_first_free_place_to_the_next_sheet()
    {
        Mix(4);
        Assert.Equal(0, shop.Run("label", "1..4", "--sheet", Sheet).ExitCode);
        var labels = Labels("label", "2..4", "--copies", "7", "--sheet", Sheet);
        Assert.Equal((3, 21, 2), (Number(labels, "jars"), Number(labels, "labels"), Number(labels, "pages")));
        Assert.Equal((1, 5, 2, 4), (Number(labels, "firstSheet"), Number(labels, "firstPosition"), Number(labels, "lastSheet"), Number(labels, "lastPosition")));
        using var pdf = PdfDocument.Open(labels["file"]!.GetValue<string>());
        Assert.Equal([17, 4], pdf.GetPages().Select(page => page.GetWords().Count(word => word.Text == "cut")));

        // Place 5 is the second of the second row: left 7.21 + 66.04, top 15.15 + 38.1, and 2 mm of white inside.
        var first = pdf.GetPage(1).GetWords().Where(word => word.Text.Length > 0).MinBy(word => -word.BoundingBox.Top)!.BoundingBox;
        Assert.InRange(first.Left * 25.4 / 72, 75.24, 139);
        Assert.InRange(297 - (first.Top * 25.4 / 72), 54.9, 91);
    }

    [Fact]
    public void Of_a_run_or_a_shelf_those_on_the_shelf_are_printed_and_the_rest_is_told()
    {
        Mix(4);
        Assert.Equal(0, shop.Run("shop", "set", "shelf", "cellar=14 C").ExitCode);
        Assert.Equal(0, shop.Run("discard", "2").ExitCode);
        Assert.Equal(0, shop.Run("move", "4", "--shelf", "cellar").ExitCode);
        var run = Labels("label", "1..3");
        Assert.Equal(2, Number(run, "jars"));
        Assert.Equal([2], run["leftOut"]!.AsArray().Select(jar => jar!.GetValue<int>()));
        Assert.Equal(1, Number(Labels("label", "--shelf", "cellar"), "jars"));
        Assert.Equal(3, Number(Labels("label", "--all"), "jars"));
        Assert.Equal(0, shop.Run("verify").ExitCode);
    }

    [Fact]
    public void A_jar_named_twice_gets_one_label_and_one_jar_named_alone_prints_as_ever()
    {
        Mix(2);
        Assert.Equal(2, Number(Labels("label", "1", "1-9", "1..2"), "labels"));
        Assert.NotNull(shop.Json("label", "1")["jar"]);
    }

    [Fact]
    public void A_wish_that_cannot_be_met_is_named_and_nothing_is_written()
    {
        Mix(21);
        (string Code, string Wish)[] cases =
        [
            ("JL336", "1 99"), ("JL194", "150-160"), ("JL335", "50..90"), ("JL409", "--shelf nowhere"), ("JL110", "1 --copies 0"),
            ("JL331", "1..3 --sheet roll-57x32 --out labels.png"), ("JL333", "--all --copies 1000"), ("JL119", ""),
        ];
        foreach (var (code, wish) in cases)
        {
            var run = shop.Run(["label", .. wish.Split(' ', StringSplitOptions.RemoveEmptyEntries)]);
            Assert.Equal(2, run.ExitCode);
            Assert.Contains(code, run.Errors, StringComparison.Ordinal);
        }

        Assert.False(Directory.Exists(shop.Labels) && Directory.EnumerateFiles(shop.Labels).Any());
        Assert.Contains("No sheet is open", shop.Run("sheet", "state").Result, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_jar_whose_label_cannot_be_drawn_is_named_at_once()
    {
        Mix(1);
        Directory.CreateDirectory(Path.Combine(shop.Folder, "catalog"));
        Write("catalog/grades.json", """[{ "id": "far", "name": "\u65e5\u672c", "color": "red", "darkness": 3, "waxy": true, "keeping": "waxy", "form": "flake", "note": "invented", "source": "practice" }]""");
        Assert.Equal(0, shop.Run("mix", "--grade", "far", "--cut", "2", "--fill", "1 pt", "--solvent", "ethanol-95", "--no-label").ExitCode);
        Assert.Equal(0, shop.Run("mix", "--grade", "far", "--cut", "2", "--fill", "1 pt", "--solvent", "ethanol-95", "--no-label").ExitCode);
        var run = shop.Run("label", "--all", "--sheet", "card-a6");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("jar 2-7", run.Errors, StringComparison.Ordinal);
        Assert.Contains("jar 3-5", run.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("jar 1-9", run.Errors, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(shop.Labels));
    }

    [Theory]
    [InlineData("grade,solvent,cut,fill,job,copies\ngarnet,ethanol-95,2,500 mL,\"viola, top\",1\nblonde,ethanol-95,1.5,250 mL,,2\n")]
    [InlineData("\ufeffGrade;Solvent;Cut;Fill;Job;Copies\r\ngarnet;ethanol-95;2;0,5 L;viola, top;1\r\n;;;;;\r\nblonde;ethanol-95;1,5;250 mL;;2\r\n")]
    [InlineData("solvent\tgrade\tcut\tfill\tjob\tcopies\nethanol-95\tgarnet\t2\t500 mL\tviola, top\t\nethanol-95\tblonde\t1.5\t250 mL\t\t2")]
    public void A_list_mixes_a_jar_a_row_whatever_spreadsheet_saved_it(string csv)
    {
        var answer = shop.Json("mix", "--list", Write("class.csv", csv), "--sheet", Sheet);
        Assert.Equal(["1-9", "2-7"], answer["jars"]!.AsArray().Select(jar => jar!.GetValue<string>()));
        Assert.Equal(3, Number(answer["labels"]!, "labels"));
        Assert.Equal(1.5, shop.Json("jar", "2")["jar"]!["cutPoundsPerGallon"]!.GetValue<double>(), 1e-12);
        Assert.Contains("viola, top", shop.Run("jar", "1").Result, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_fault_of_every_row_is_told_with_its_line_and_nothing_is_recorded()
    {
        var list = Write("class.csv", "grade,solvent,cut,fill,copies\ngarnett,ethanol-95,2,500 mL,1\ngarnet,,abc,500 mL,0\n\ngarnet,ethanol-95,2,,1\ngarnet,ethanol-95,2,500 mL,1,7\ngarnet,ethanol-95,2,500 mL,1\n");
        var run = shop.Run("mix", "--list", list);
        Assert.Equal(2, run.ExitCode);
        foreach (var place in (string[])["line 2, grade", "line 3, solvent", "line 3, cut", "line 3, copies", "line 5", "line 6"])
        {
            Assert.Contains($"class.csv {place}", run.Errors, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("line 7", run.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(shop.Folder, "ledger.db")));
    }

    [Theory]
    [InlineData("JL344", "grade,solvent,cutt\ngarnet,ethanol-95,2\n")]
    [InlineData("JL345", "grade,grade,solvent\ngarnet,ruby,ethanol-95\n")]
    [InlineData("JL346", "grade,cut\ngarnet,2\n")]
    [InlineData("JL343", "grade,solvent\n")]
    [InlineData("JL343", "")]
    public void A_list_that_is_none_is_told_what_a_list_is(string code, string csv)
    {
        var run = shop.Run("mix", "--list", Write("class.csv", csv));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(code, run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_of_jars_on_record_prints_each_as_often_as_it_says()
    {
        Mix(3);
        var labels = Labels("label", "--list", Write("jars.csv", "jar,copies\n1-9,4\n2..3,\n"));
        Assert.Equal((3, 6), (Number(labels, "jars"), Number(labels, "labels")));
        var run = shop.Run("label", "--list", Write("jars.csv", "jar,copies\n1-3,1\n8,1\n"));
        Assert.Contains("jars.csv line 2, jar", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Nobody_who_pipes_the_errors_away_sees_a_progress_line()
    {
        Mix(2);
        Assert.Equal("", shop.Run("label", "--all", "--copies", "200").Errors);
    }

    private void Mix(int jars) => Assert.Equal(0, shop.Run(
        "mix", "--no-label", "--list", Write("mix.csv", "grade,solvent,cut,fill\n" + string.Concat(Enumerable.Repeat("garnet,ethanol-95,2,1 pt\n", jars)))).ExitCode);

    private string Write(string name, string text)
    {
        var file = Path.Combine(shop.Folder, name);
        File.WriteAllText(file, text);
        return file;
    }

    private JsonNode Labels(params string[] arguments) => shop.Json(arguments)["labels"]!;

    private static int Number(JsonNode from, string key) => from[key]!.GetValue<int>();
}
