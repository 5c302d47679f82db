using TestResult = JarLabel.Core.Jars.TestResult;

namespace JarLabel.Tests.Layout;

public class ShelfChartTests
{
    private static readonly DateTime Now = new(2026, 11, 26, 10, 0, 0);

    private static ShelfChartRow Row(int number, DateOnly mixed, int days, JarState state, params TestResult[] tests) => new(
        JarNumber.From(number).ToString(), "1½ lb garnet, dewaxed in ethanol 95 %", "test first, cellar, 350 mL (11.8 fl oz)", DateWords.Estimate(mixed.AddDays(days)), "test from 9 Jul 2026", state,
        new ShelfChartDays(mixed.ToDateTime(TimeOnly.MinValue), mixed.ToDateTime(TimeOnly.MinValue).AddHours(24), mixed.AddDays(days / 2), mixed.AddDays(days), tests));

    private static IReadOnlyList<Page> Draw(Paper paper, bool cropped, params ShelfChartRow[] rows) => ShelfChart.Of(
        ShelfChartText.For("Alder Lane Lutherie", null, rows, rows.Length, due: false, Volume.FromLiters(4), Now, metric: true), paper, cropped, PlainPages.Ruler);

    private static ShelfChartRow[] Many(int count) => [.. Enumerable.Range(1, count).Select(i => Row(i, new DateOnly(2025, 1, 5).AddDays(i * 700 / count), 240, (JarState)(i % 4)))];

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 1)]
    [InlineData(13, 1)]
    [InlineData(120, 9)]
    public void Every_jar_is_on_one_page_and_nothing_runs_off_it_or_into_something(int jars, int atMost)
    {
        foreach (var paper in (Paper[])[Paper.A4, Paper.Letter])
        {
            var pages = Draw(paper, cropped: false, Many(jars));
            Assert.InRange(pages.Count, 1, atMost);
            Assert.All(pages, page => PlainPages.AssertTidy(page, $"{jars} jars"));
            Assert.All(pages, page => Assert.Equal((paper.Height, paper.Width), (page.Width, page.Height)));
            var shown = pages.SelectMany(p => p.Texts()).Where(t => t.Box == "jar" && t.Face == Face.Bold).Select(t => t.Text);
            Assert.Equal(Enumerable.Range(1, jars).Select(i => JarNumber.From(i).ToString()), shown);
            if (pages.Count > 1)
            {
                Assert.Equal($"page 2 of {pages.Count}", pages[1].Said("page ").Text);
            }
        }
    }

    /// <summary>From 2026-06-01 to the use-by are 244 days; the first half is 122 days long, of which one is for dissolving; the rest of the line is to be tested. Months are the
    /// measure: from the line of July to that of December are 153 days.</summary>
    [Fact]
    public void Days_are_as_long_on_the_paper_as_in_the_calendar()
    {
        var page = Draw(Paper.A4, cropped: false, Row(1, new DateOnly(2026, 6, 1), 244, JarState.Test))[0];
        var months = page.Texts().Where(t => t.Box == "months").GroupBy(t => t.Text).ToDictionary(g => g.Key, g => g.First().X);
        var day = (months["Dec"] - months["Jul"]) / 153;
        var green = page.Marks.OfType<BarMark>().First(b => b.Box == "life" && b.Ink == Ink.Green);
        var orange = page.Marks.OfType<BarMark>().First(b => b.Box == "life" && b.Ink == Ink.Orange && Math.Abs(b.Y - green.Y) < 1);
        var today = page.Marks.OfType<BarMark>().First(b => b.Box == "today");
        Assert.Equal(121 * day, green.Width, 0.02);
        Assert.Equal(122 * day, orange.Width + 0.6, 0.02);
        Assert.Equal(months["Jul"] + (148 * day) + (day * 10 / 24), today.X + (today.Width / 2), 0.05);
    }

    /// <summary>Two jars of the same state have the same shape; four states have four, also in black and white.</summary>
    [Fact]
    public void A_state_is_told_by_its_shape_without_colour()
    {
        var page = Draw(Paper.A4, cropped: false, [.. Enumerable.Range(0, 4).Select(i => Row(i + 1, new DateOnly(2026, 6, 1), 244, (JarState)i))])[0];
        var signs = page.Marks.OfType<PathMark>().Where(p => p.Box == "counts").Select(p => (Ink: OneBit.Of(p.Ink), p.Data)).ToArray();
        Assert.Equal(1 + 3 + 8 + 1, signs.Length);
        Assert.Equal(4, page.Texts().Count(t => t.Box == "counts"));
    }

    [Fact]
    public void Tests_stand_on_the_line_and_a_failed_one_ends_it()
    {
        TestResult[] tests = [new(new DateOnly(2026, 8, 1), true), new(new DateOnly(2026, 10, 1), false)];
        var row = Row(1, new DateOnly(2026, 6, 1), 244, JarState.Past, tests);
        Assert.Equal(new DateOnly(2026, 10, 1), row.Days.Ends);
        var (without, with) = (Draw(Paper.A4, false, Row(1, new DateOnly(2026, 6, 1), 244, JarState.Past))[0], Draw(Paper.A4, false, row)[0]);
        int Discs(Page page) => page.Marks.OfType<PathMark>().Count(p => p.Box == "life");
        Assert.True(Discs(with) > Discs(without));
        Assert.True(Hatched(with) < Hatched(without), "what follows a failure is not to be tested but over");

        double Hatched(Page page) => page.Marks.OfType<BarMark>().First(b => b.Box == "life" && b.Ink == Ink.Orange).Width;
    }

    [Fact]
    public void A_picture_ends_under_its_last_jar() => Assert.True(Draw(Paper.A4, cropped: true, Many(3))[0].Height < 130);

    [Fact]
    public void More_jars_than_are_drawn_are_told()
    {
        var text = ShelfChartText.For(null, "main", Many(5), 200, due: false, Volume.FromLiters(4), Now, metric: true);
        Assert.Contains("the 5 of 200 jars that are due soonest", text.Summary, StringComparison.Ordinal);
        Assert.Equal("Shellac on shelf main", text.Title);
    }

    [Fact]
    public void A_name_that_has_no_room_ends_in_dots()
    {
        var long_ = Row(1, new DateOnly(2026, 6, 1), 244, JarState.Good) with { What = "2 lb " + string.Join(" + ", Enumerable.Repeat("garnet, dewaxed", 8)) };
        var page = Draw(Paper.A4, cropped: false, long_)[0];
        PlainPages.AssertTidy(page, "long");
        Assert.EndsWith("…", page.Said("2 lb garnet").Text, StringComparison.Ordinal);
    }
}
