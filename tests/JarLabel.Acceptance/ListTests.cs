namespace JarLabel.Acceptance;

/// <summary>Lists as spreadsheets and people save them. The form is that of RFC 4180, section 2: a text with a quotation mark in it stands in quotes,
/// and the mark is doubled (rules 5 and 7).</summary>
public sealed class ListTests : IDisposable
{
    private const string Header = "grade,solvent,cut,fill,job\n";
    private readonly Shop shop = new();

    public void Dispose() => shop.Dispose();

    /// <summary>Two rows that a stray mark made one jar of.</summary>
    [Fact]
    public void A_stray_quotation_mark_swallows_no_row_and_is_told_with_its_line()
    {
        var run = Mix(Header + "garnet,ethanol-95,2,500 mL,5\" neck\nblonde,ethanol-95,2,500 mL,6\" scroll\n");
        Refused(run, "error JL364: class.csv line 2: Read \"5\" neck\"", "error JL364: class.csv line 3: Read \"6\" scroll\"", "\"5\"\" neck\"");
    }

    [Theory]
    [InlineData("garnet,ethanol-95,2,500 mL,\"viola\nblonde,ethanol-95,2,500 mL,back\n", "JL365", "line 2")]
    [InlineData("garnet,ethanol-95,2,500 mL,\"viola\ntop\"\n", "JL365", "line 2")]
    [InlineData("garnet,ethanol-95,2,500 mL,\"viola\" top\n", "JL364", "line 2")]
    [InlineData("\n\r\n\rgarnet,ethanol-95,2,500 mL,a\"\n", "JL364", "line 5")]
    [InlineData("garnet,ethanol-95,2,500 mL,\"\"\"\n", "JL365", "line 2")]
    public void A_mark_that_is_not_closed_or_not_at_the_ends_is_told_with_its_line(string rows, string code, string line) =>
        Refused(Mix(Header + rows), $"error {code}: class.csv {line}: ");

    [Fact]
    public void Marks_that_are_doubled_in_quotes_are_read_as_one_each()
    {
        Assert.Equal(0, Mix(Header + "garnet,ethanol-95,2,500 mL,\"5\"\" neck, \"\"old\"\"\"\r\nblonde,ethanol-95,2,\"0,5 L\", \"6\"\" scroll\" \r\n").ExitCode);
        Assert.Contains("5\" neck, \"old\"", shop.Run("jar", "1").Result, StringComparison.Ordinal);
        Assert.Contains("6\" scroll", shop.Run("jar", "2").Result, StringComparison.Ordinal);
        Assert.Equal(2, shop.Json("shelf")["jars"]!.AsArray().Count);
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void A_line_ends_as_any_machine_ends_it_and_is_counted_right(string end)
    {
        Assert.Equal(0, Mix($"{Header.TrimEnd()}{end}garnet,ethanol-95,2,500 mL,a{end}{end}blonde,ethanol-95,2,500 mL,b").ExitCode);
        Refused(Mix($"{Header.TrimEnd()}{end}garnet,ethanol-95,2,500 mL,a{end}{end}blondee,ethanol-95,2,500 mL,b"), "class.csv line 4, grade");
    }

    [Fact]
    public void A_jar_in_several_rows_gets_the_copies_of_all_of_them_and_that_is_said()
    {
        Assert.Equal(0, Mix(Header + string.Concat(Enumerable.Repeat("garnet,ethanol-95,2,500 mL,\n", 3))).ExitCode);
        var labels = shop.Json("label", "--list", Write("jars.csv", "jar,copies\n1-9,4\n2,\n1,2\n1..3,1\n"));
        Assert.Equal((3, 10), (labels["labels"]!["jars"]!.GetValue<int>(), labels["labels"]!["labels"]!.GetValue<int>()));
        var caution = labels["warnings"]!.AsArray().Single(warning => warning!["code"]!.GetValue<string>() == "JL367")!["message"]!.GetValue<string>();
        Assert.Contains("jar 1-9 gets 7, jar 2-7 gets 2.", caution, StringComparison.Ordinal);

        var once = shop.Json("label", "--list", Write("jars.csv", "jar,copies\n1,2\n2,1\n"));
        Assert.DoesNotContain("JL367", once.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Runs_that_name_more_jars_than_can_be_looked_up_are_refused_at_once()
    {
        Assert.Equal(0, Mix(Header + "garnet,ethanol-95,2,500 mL,\n").ExitCode);
        var rows = string.Concat(Enumerable.Repeat("1..100000,1000\n", 9000));
        Refused(shop.Run("label", "--list", Write("jars.csv", "jar,copies\n" + rows)), "error JL368: JAR: Read 900000000 jar numbers");
    }

    [Fact]
    public void A_file_without_line_breaks_or_without_end_is_told_and_not_held()
    {
        Refused(Mix(Header + "garnet,ethanol-95,2,500 mL,\"" + new string('x', 16 << 20)), "error JL366: class.csv line 2");
        Refused(Mix(Header + new string('\n', 200_000)), "error JL342: class.csv");
        Refused(Mix(Header + new string(',', 30_000) + "\n"), "error JL343: class.csv");
    }

    [Theory]
    [InlineData("latin1", "error JL341: class.csv line 2: Byte 56 of the file, 0xFC,")]
    [InlineData("utf-16", "error JL341: class.csv line 1: This is UTF-16")]
    [InlineData("utf-16BE", "error JL341: class.csv line 1: This is UTF-16")]
    public void Another_encoding_is_told_with_the_place_it_shows_at(string encoding, string told)
    {
        var file = Path.Combine(shop.Folder, "class.csv");
        File.WriteAllText(file, Header + "garnet,ethanol-95,2,500 mL,für\n", Encoding.GetEncoding(encoding));
        Refused(shop.Run("mix", "--list", file), told);
    }

    [Fact]
    public void A_byte_that_is_no_letter_is_told_with_its_place() =>
        Refused(Mix(Header + "garnet,ethanol-95,2,500 mL,a\0b\n"), "error JL341: class.csv line 2: Byte 56 of the file, 0x00,");

    [Theory]
    [InlineData("\"grade,solvent\n", "JL365")]
    [InlineData("grade\",solvent\n", "JL364")]
    [InlineData("grade,solvent,\ngarnet,ethanol-95,2\n", "JL347")]
    [InlineData("sep=;\ngrade;solvent\n", "JL344")]
    public void A_fault_in_the_first_row_is_told(string csv, string code) => Refused(Mix(csv), $"error {code}: class.csv");

    private Run Mix(string csv) => shop.Run("mix", "--no-label", "--list", Write("class.csv", csv));

    private string Write(string name, string text)
    {
        var file = Path.Combine(shop.Folder, name);
        File.WriteAllText(file, text);
        return file;
    }

    private static void Refused(Run run, params string[] told)
    {
        Assert.Equal((2, ""), (run.ExitCode, run.Result));
        Assert.All(told, words => Assert.Contains(words, run.Errors, StringComparison.Ordinal));
    }
}
