namespace JarLabel.Tests.Layout;

public class PlanSheetTests
{
    private static Page Draw(Paper paper, int lines, int steps) => PlanSheet.Of(
        new PlanSheetText(
            "Garnet, dewaxed in ethanol 95 %",
            "Alder Lane Lutherie, 26 Nov 2026: 1.51 L (51.1 fl oz) of liquid. Low confidence: coats and waste differ much.",
            [.. Enumerable.Range(1, lines).Select(i => (string[])[$"{i}", "spray", "1½ lb cut", "8", "1.06 L (35.8 fl oz)", "1.22 L (41.2 fl oz)", "13.3 µm"])],
            [("flakes", "222 g (7.85 oz); in bags 877 g (1 lb 14.9 oz)"), ("fresh air", "156 m³/h (92 cfm) while that coat dries; closed up, 1037 ppm in 50 m³ (limit 1000 ppm), 3.1 % of the lower explosive limit, and more words than one line holds")],
            [.. Enumerable.Range(1, steps).Select(i => i % 3 > 0
                ? ($"mix 1½ lb cut: pour 1.06 L (35.8 fl oz), add 191 g (6.7 oz) of flakes, makes 1.22 L (41.2 fl oz); ready ≈ 27 Nov 2026, 12:30, swirled every hour or two, step {i}", (string?)"jarlabel mix --grade garnet --cut 1.5 --pour \"1059.9 mL\" --solvent ethanol-95")
                : ($"pad 8 coats, step {i}", null))],
            ["Highly flammable.", "Alcohol rags singly outdoors to dry. Rags with drying oil heat by themselves: flat outdoors, or under water in a closed metal can."],
            "The local fire code comes first."),
        paper,
        PlainPages.Ruler);

    [Theory]
    [InlineData(1, 2)]
    [InlineData(3, 9)]
    [InlineData(8, 60)]
    public void Nothing_runs_off_the_sheet_or_into_something(int lines, int steps)
    {
        foreach (var paper in (Paper[])[Paper.A4, Paper.Letter])
        {
            var page = Draw(paper, lines, steps);
            Assert.Equal((paper.Width, paper.Height), (page.Width, page.Height));
            PlainPages.AssertTidy(page, $"{lines} lines, {steps} steps");
            var shown = page.Texts().Count(t => t.Box == "steps" && t.Face == Face.Bold && t.X < 22);
            Assert.Equal(steps < 10 ? steps : shown, shown);
            Assert.Equal(steps - shown, page.Texts().Where(t => t.Text.Contains("no room here", StringComparison.Ordinal)).Select(t => int.Parse(t.Text.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture)).SingleOrDefault());
            Assert.True(page.Said("The local fire code").Baseline > page.Texts().Where(t => t.Box == "steps").Max(t => t.Baseline));
        }
    }

    [Fact]
    public void The_fewer_the_steps_the_larger_they_are_set_and_each_has_a_box_of_its_own()
    {
        var (few, many) = (Draw(Paper.A4, 1, 3), Draw(Paper.A4, 1, 14));
        Assert.True(few.Said("mix").Points > many.Said("mix").Points);
        Assert.True(many.Said("mix").Points >= 8);
        Assert.Equal(4 * 3, few.Marks.OfType<BarMark>().Count(b => b.X < 17 && b.Width < 5 && b.Height < 5));
    }

    [Fact]
    public void Figures_end_under_each_other()
    {
        var page = Draw(Paper.A4, 2, 2);
        var ends = page.Texts().Where(t => t.Text == "13.3 µm").Select(t => t.X + PlainPages.Ruler.Width(t.Text, t.Face, t.Points)).ToArray();
        Assert.Equal(2, ends.Length);
        Assert.All(ends, end => Assert.Equal(210 - 12, end, 0.01));
    }
}
