namespace JarLabel.Tests.Layout;

public class AirChartTests
{
    private static readonly SkiaRuler Ruler = new();

    private static AirAssessment Air(string solvent, double milliliters, double room, double? hours, double changes, RuleSet rules) => RoomAirAssessor.Assess(
        ShopCatalog.Ours.Solvents.Find(solvent)!,
        AirQuestion.Of(Volume.FromMilliliters(milliliters), Volume.FromCubicMeters(room), hours is { } h ? Duration.FromHours(h) : null, changes).Require(),
        rules).Require();

    private static Page Draw(AirAssessment air) => AirChart.Of(air, AirChartText.For(air, metric: true), Ruler);

    private static TextMark Said(Page page, string start) => page.Marks.OfType<TextMark>().First(m => m.Text.StartsWith(start, StringComparison.Ordinal));

    /// <summary>Ethanol: 1000 ppm over a shift (29 CFR 1910.1000 table Z-1) and 3.3 % LEL, so a quarter of it is 8250 ppm.</summary>
    [Fact, Cites(References.NioshPocketGuide, "ethyl alcohol: REL and PEL 1000 ppm, LEL 3.3 %")]
    public void Both_limits_of_ethanol_are_named_beside_their_lines()
    {
        var page = Draw(Air("ethanol-99", 500, 50, 1, 2, RuleSet.Osha));
        Assert.Equal("exposure limit: 1000 ppm", Said(page, "exposure").Text);
        Assert.Equal("25 % of LEL: 8250 ppm", Said(page, "25 %").Text);
        Assert.Equal("10 % of LEL: 3300 ppm", Said(page, "10 %").Text);
        Assert.Contains(page.Marks.OfType<TextMark>(), m => m.Text.StartsWith("Health governs, long before fire", StringComparison.Ordinal));
    }

    /// <summary>A US gallon in 30 m³ is half as much again as the 3.3 % that burn.</summary>
    [Fact, Cites(References.NioshPocketGuide, "ethyl alcohol: LEL 3.3 %")]
    public void Air_that_can_burn_is_told_first_and_health_is_no_all_clear_beside_it()
    {
        var page = Draw(Air("ethanol-95", 3785, 30, null, 0, RuleSet.Osha));
        Assert.StartsWith("THE AIR CAN BURN: 149.7 %", AirChartText.For(Air("ethanol-95", 3785, 30, null, 0, RuleSet.Osha), metric: true).Notes[0], StringComparison.Ordinal);
        Assert.Contains(page.Marks.OfType<TextMark>(), m => m.Text.StartsWith("THE AIR CAN BURN", StringComparison.Ordinal));
        Assert.DoesNotContain(page.Marks.OfType<TextMark>(), m => m.Text.Contains("long before fire", StringComparison.Ordinal));
    }

    /// <summary>On an axis by logarithm equal ratios are equal lengths: from 1000 to 10 000 as from 10 000 to 100 000, and 3300 lies
    /// log10(3.3) = 0.5185 of a decade above 1000.</summary>
    [Fact]
    public void Lines_lie_where_their_figures_are_on_the_axis()
    {
        var page = Draw(Air("ethanol-99", 500, 50, 1, 2, RuleSet.Osha));
        double Tick(string figure) => page.Marks.OfType<TextMark>().Single(m => m.Text == figure).Baseline - 1;
        var lines = page.Marks.OfType<BarMark>().Where(b => b.Width > 100 && b.Y < Tick("100") - 1).Select(b => b.Y + (b.Height / 2)).ToArray();
        var decade = Tick("1000") - Tick("10000");
        Assert.Equal(decade, Tick("10000") - Tick("100000"), 1e-6);
        Assert.Equal(4, lines.Length);
        Assert.Contains(lines, y => Math.Abs(y - Tick("1000")) < 1e-6);
        Assert.Contains(lines, y => Math.Abs(y - (Tick("1000") - (0.5185 * decade))) < 0.01);
    }

    /// <summary>Half a litre at once in a closed room stays: the curve is one level line, and the page says that it does not clear.</summary>
    [Fact]
    public void A_closed_room_does_not_clear()
    {
        var page = Draw(Air("ethanol-99", 500, 50, null, 0, RuleSet.Osha));
        Assert.Contains(page.Marks.OfType<TextMark>(), m => m.Text.Contains("does not clear", StringComparison.Ordinal));
    }

    [Fact]
    public void A_limit_from_memory_has_its_star_and_the_star_its_line()
    {
        var air = Air("ethanol-99", 500, 50, 1, 2, RuleSet.Clp);
        var page = Draw(air with { Parts = [.. air.Parts.Select(p => p with { Limit = p.Limit! with { Source = "memory" } })] });
        Assert.EndsWith("*", Said(page, "exposure").Text, StringComparison.Ordinal);
        Assert.StartsWith("* from memory", Said(page, "*").Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, 5000, null, 0)]
    [InlineData(250, 50, 1.0, 0)]
    [InlineData(20000, 12, 0.1, 1)]
    [InlineData(3785, 40, 8.0, 30)]
    [InlineData(50, 100, 900.0, 0.2)]
    public void Nothing_runs_off_the_paper_or_into_each_other(double milliliters, double room, double? hours, double changes)
    {
        foreach (var solvent in ShopCatalog.Ours.Solvents.Rows.Select(s => s.Id))
            foreach (var rules in (RuleSet[])[RuleSet.Osha, RuleSet.Clp])
            {
                var page = Draw(Air(solvent, milliliters, room, hours, changes, rules));
                var boxes = page.Marks.OfType<TextMark>().Select(m => (m.Text, m.X, Top: m.Baseline - (m.Points * 0.27), Right: m.X + Ruler.Width(m.Text, m.Face, m.Points), Bottom: m.Baseline + (m.Points * 0.08))).ToArray();
                Assert.All(boxes, b => Assert.True(b.X >= 2 && b.Right <= page.Width - 2 && b.Top >= 2 && b.Bottom <= page.Height - 2, $"{solvent}: {b}"));
                var clash = boxes.SelectMany((a, i) => boxes.Skip(i + 1).Where(b => a.X < b.Right && b.X < a.Right && a.Top < b.Bottom && b.Top < a.Bottom).Select(b => $"{solvent}: {a.Text} | {b.Text}"));
                Assert.Empty(clash);
            }
    }
}
