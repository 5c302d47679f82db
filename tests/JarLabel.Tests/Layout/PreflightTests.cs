namespace JarLabel.Tests.Layout;

public class PreflightTests
{
    private static readonly QrMark Code = new("qr", 10, 10, 0.508, QrEncoder.Encode("HTTP://192.168.1.20:5080/J/142-5.1"));

    [Theory]
    [InlineData("\U0001F525 hot", "JL312", "U+1F525")]
    [InlineData("bell\a", "JL313", "U+0007")]
    public void What_the_typeface_lacks_is_named(string text, string code, string says)
    {
        var problem = Assert.Single(Check(Line(text, 5, 10)));
        Assert.Equal((code, "own/line"), (problem.Code, problem.Where));
        Assert.Contains(says, problem.Message, StringComparison.Ordinal);
    }

    // The label is 50 x 30 mm, the inset 2 mm: 48 mm is the last that may be printed on.
    [Theory]
    [InlineData(1.9, 5, "0.10")]
    [InlineData(40, 9, "1.00")]
    public void A_mark_beyond_the_inset_is_named(double x, double width, string by)
    {
        var problem = Assert.Single(Check(new BarMark("bar", x, 10, width, 1, Ink.Black)));
        Assert.Equal(("JL316", "own/bar"), (problem.Code, problem.Where));
        Assert.Contains(by, problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_beyond_the_sheet_is_named() =>
        Assert.Equal("JL317", Assert.Single(new Preflight(new FakeRuler()).Check(Label(), 49, 30)).Code);

    [Fact]
    public void Lines_over_each_other_are_named() =>
        Assert.Equal("JL318", Assert.Single(Check(Line("one", 5, 10), new TextMark("other", 6, 10.5, "two", Face.Regular, 10, Ink.Black))).Code);

    [Fact]
    public void A_hairline_is_named() => Assert.Equal("JL322", Assert.Single(Check(new BarMark("rule", 5, 10, 20, 0.2, Ink.Black))).Code);

    // At 203 dpi 0.39 mm are 3.1 dots; 0.40 mm and 4 dots are the least.
    [Theory, CommonPractice]
    [InlineData(0.39, 300, true)]
    [InlineData(0.42, 300, false)]
    [InlineData(0.42, 203, true)]
    [InlineData(0.5005, 203, false)]
    public void A_code_too_small_to_scan_is_named(double module, int dpi, bool refused)
    {
        var label = Label(Code with { Module = module });
        var problems = new Preflight(new FakeRuler()).Check(label with { Area = label.Area with { Dpi = dpi } }, 100, 100);
        Assert.Equal(refused, problems.Any(problem => problem.Code == "JL314"));
        Assert.Equal(refused ? 1 : 0, problems.Count);
    }

    // Four modules of 0.508 mm are 2.032 mm: a bar ending 2 mm before the code stands in its quiet zone.
    [Theory, Cites(References.Iso18004, "quiet zone of 4 modules")]
    [InlineData(7.9, false)]
    [InlineData(8.2, true)]
    public void A_mark_in_the_quiet_zone_is_named(double right, bool refused)
    {
        var problems = Check(Code, new BarMark("bar", 4, 12, right - 4, 1, Ink.Black));
        Assert.Equal(refused ? ["JL315"] : [], problems.Select(problem => problem.Code));
    }

    [Fact]
    public void A_code_that_reads_differently_is_named()
    {
        var problems = new Preflight(new FakeRuler(), _ => "HTTP://OTHER").Check(Label(Code), 100, 100);
        Assert.Equal("JL319", Assert.Single(problems).Code);
        Assert.Empty(new Preflight(new FakeRuler(), modules => modules.Payload).Check(Label(Code), 100, 100));
    }

    private static IReadOnlyList<JarLabel.Core.Problem> Check(params Mark[] marks) => new Preflight(new FakeRuler()).Check(Label(marks), 100, 100);

    private static TextMark Line(string text, double x, double baseline) => new("line", x, baseline, text, Face.Regular, 10, Ink.Black);

    private static PlacedLabel Label(params Mark[] marks) =>
        new(LayoutFiles.DesignOf("""{ "kind": "space" }""").Require(), LayoutFiles.Area(), marks, []);
}
