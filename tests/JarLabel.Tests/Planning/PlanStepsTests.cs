namespace JarLabel.Tests.Planning;

public class PlanStepsTests
{
    private static readonly DateTime Now = new(2026, 3, 9, 10, 0, 0);

    [Fact]
    public void A_jar_in_doubt_is_tried_first_and_both_ends_can_be_recorded()
    {
        var steps = Steps(new ShelfJar(JarNumber.From(1), Cut(2), Volume.FromMilliliters(500), new(2026, 12, 1), TestFirst: true, Now));
        Assert.Equal(["pass", "fail"], steps.Take(2).Select(step => step.Step!.Values.Single(input => input.Name == "verdict").Value));
        Assert.Contains("plan again", steps[1].Words, StringComparison.Ordinal);
        Assert.DoesNotContain("top coat", steps[0].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_jar_that_dried_slowly_is_no_jar_for_a_top_coat()
    {
        var steps = Steps(new ShelfJar(JarNumber.From(1), Cut(2), Volume.FromMilliliters(500), new(2026, 12, 1), TestFirst: true, Now) { Slow = true });
        Assert.Contains("keep it for small or inner work, and mix anew for a top coat", steps[0].Words, StringComparison.Ordinal);
    }

    /// <summary>Alcohol that can blind is mixed in nothing that anybody could drink from, and in a jar that holds it. By hand: 200 mL of 2 lb hold 166.9 mL poured; 55.6 more make 1½ lb, 255.6 mL, and 5 % of head space 270.</summary>
    [Theory]
    [InlineData(200, "into a clean mixing jar that holds 270 mL")]
    [InlineData(1800, "into 3 clean mixing jars of 946 mL")]
    public void What_is_thinned_for_a_job_stands_in_a_labelled_jar_that_holds_it(double milliliters, string says)
    {
        var fetch = Steps(new ShelfJar(JarNumber.From(1), Cut(2), Volume.FromMilliliters(milliliters), new(2026, 12, 1), TestFirst: false, Now), area: 200)[^2].Words;
        Assert.Contains(says, fetch, StringComparison.Ordinal);
        Assert.Contains("labelled; never a drinking glass or cup", fetch, StringComparison.Ordinal);
        Assert.DoesNotContain("clean glass", fetch, StringComparison.Ordinal);
    }

    private static IReadOnlyList<PlanStep> Steps(ShelfJar jar, double area = 14)
    {
        var line = new JobLine(JobKind.ByWord["pad"], Area.FromSquareFeet(area), 1, Cut(1.5), SpreadText.Read(JobLine.UsualSpread, "").Require(), 0.15);
        var plan = JobPlanner.Solve([line], [jar], Mass.Zero, Volume.Zero, Density.FromKilogramsPerCubicMeter(811)).Require();
        return PlanSteps.Of(plan, "garnet", "ethanol-95", [], [], Now, Now, metric: true);
    }

    private static PoundCut Cut(double pounds) => PoundCut.FromPoundsPerUsGallon(pounds);
}
