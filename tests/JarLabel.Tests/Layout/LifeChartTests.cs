namespace JarLabel.Tests.Layout;

public class LifeChartTests
{
    private static readonly LifeClass Garnet = new("dewaxed", "ethanol-95");

    private static Page Draw(params LifeChartJar[] jars)
    {
        var lives = new LearnedLives(
            jars.Length == 0 ? new Dictionary<LifeClass, ClassTests>() : new() { [Garnet] = new ClassTests([.. jars.Select(j => j.Life)], jars.Sum(j => j.Tests.Count)) },
            ShopCatalog.Ours.Keeping,
            LearningSettings.Usual);
        return LifeChart.Of(lives.Of(Garnet), 0.9, lives.Band(Garnet, LifeChart.BandShares), jars, LifeChartText.For(lives.Of(Garnet), 0.9, jars.Length, ShopCatalog.Ours), PlainPages.Ruler);
    }

    private static LifeChartJar Jar(int number, params (double Age, bool Passed)[] tests) => LifeChartJar.Of(JarNumber.From(number), tests.Select(t => new DryingTest(t.Age, t.Passed)))!;

    /// <summary>Without a test: 8 months are claimed for dewaxed flakes, and the band reaches a factor of two each way.</summary>
    [Fact, CommonPractice]
    public void Without_tests_the_claim_its_spread_and_its_share_are_drawn()
    {
        var page = Draw();
        Assert.Equal("Use by ≈ 8.0 months at 20 °C: 90 % of jars should still dry hard then. 90 % band 4.0 to 16.0 months.", page.Said("Use by").Text);
        Assert.Equal("No jar of this kind was tested yet.", page.Said("No jar").Text);
        double Mark(string age) => page.Texts().Where(t => t.Text == age && Math.Abs(t.Baseline - page.Said("0 %").Baseline) < 6 && t.Face == Face.Regular).Select(t => t.X + (PlainPages.Ruler.Width(age, t.Face, t.Points) / 2)).First();
        var month = (Mark("12") - Mark("4")) / 8;
        var band = page.Marks.OfType<BarMark>().Single(b => b.Height == 0.8 && b.Box == "life");
        Assert.Equal(12 * month, band.Width, 0.2);
        Assert.Equal(Mark("4"), band.X, 0.1);
        Assert.Equal(page.Said("90 %").Baseline - 1, band.Y + 0.4, 1e-6);
    }

    /// <summary>A ring is two discs, a cross two strokes; a life that ended has a bar between its last pass and its failure, one that lasts an arrow.
    /// The key shows one of each.</summary>
    [Fact]
    public void Passed_and_failed_tests_stand_in_their_jars_lanes()
    {
        var page = Draw(Jar(1, (60, true), (120, true)), Jar(2, (90, true), (150, false)));
        var drawn = page.Marks.Where(m => m.Box == "jars").ToArray();
        Assert.Equal((3 * 2) + 2 + 1 + (2 + 2 + 1), drawn.OfType<PathMark>().Count());
        var lanes = page.Said("The tested jars").Baseline;
        var ended = drawn.OfType<BarMark>().Single(b => b.Height == 0.8 && b.Y > lanes);
        var lane = drawn.OfType<BarMark>().First(b => Math.Abs(b.Y + (b.Height / 2) - ended.Y - 0.4) < 0.01 && b.Height < 0.3);
        Assert.Equal(60.0 / 150, ended.Width / lane.Width, 1e-6);
        Assert.Equal(["1-9", "2-7"], drawn.OfType<TextMark>().Select(t => t.Text).Order(StringComparer.Ordinal));
    }

    /// <summary>A jar that dried slowly at 90 days is expected to end by 180: two thin lines reach there, beyond its test.</summary>
    [Fact]
    public void A_slow_test_and_the_end_expected_of_it_are_drawn_and_explained_only_where_there_is_one()
    {
        Assert.DoesNotContain(Draw(Jar(1, (60, true))).Texts(), t => t.Text == LifeChartText.Slow);
        var page = Draw(LifeChartJar.Of(JarNumber.From(1), [new(90, Drying.Slow)])!);
        Assert.Contains(page.Texts(), t => t.Text == LifeChartText.Slow);
        var lanes = page.Said("The tested jars").Baseline;
        var lines = page.Marks.OfType<BarMark>().Where(b => b.Box == "jars" && b.Y > lanes).ToArray();
        var lane = lines.Single(b => b.X < lines.Max(l => l.X));
        var expected = lines.Where(b => b != lane).ToArray();
        Assert.Equal(2, expected.Length);
        Assert.All(expected, b => Assert.Equal((lane.X + lane.Width, lane.Width), (b.X, b.Width), ((double, double) a, (double, double) c) => Math.Abs(a.Item1 - c.Item1) < 1e-6 && Math.Abs(a.Item2 - c.Item2) < 1e-6));
        Assert.Equal("Published claims say 8.0. Learned from 1 drying test of 1 jar here, 0 failed, 1 slow.", page.Said("Published claims say").Text);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(25)]
    [InlineData(LifeChart.MostJars)]
    public void Nothing_runs_off_the_paper_or_into_something(int jars)
    {
        var page = Draw([.. Enumerable.Range(1, jars).Select(i => Jar(i, (20 + (3 * i), true), (60 + (4 * i), i % 3 > 0)))]);
        PlainPages.AssertTidy(page, $"{jars} jars");
        Assert.True(page.Height < 279, "it fits on letter and A4");
    }
}
