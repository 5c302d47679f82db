namespace JarLabel.Tests.Planning;

public class JobPlannerTests
{
    private static readonly Density Ethanol = Density.FromKilogramsPerCubicMeter(811);

    /// <summary>14 sq ft at 400 sq ft a gallon is 0.035 gal a coat; eight coats 0.28 gal; a 1½ lb cut holds 0.14895 volumes of resin
    /// in 1.14895 (0.0993 gal/lb), so that a wet coat of 102 µm dries to 13.2.</summary>
    [Fact, CommonPractice]
    public void Eight_coats_on_fourteen_square_feet_dry_to_thirteen_micrometres_each()
    {
        var line = Line("pad", coats: 8);
        Assert.Equal(0.28, line.Coverage.Liquid.UsGallons, 1e-9);
        Assert.Equal(0.28 * 1.15, line.Needed.UsGallons, 1e-9);
        Assert.Equal(101.86 * 0.14895 / 1.14895, line.Coverage.DryCoat.Micrometers, 0.01);
        Assert.Equal(0.035 * 1.15 / 1.14895, line.EvaporatedPerCoat.UsGallons, 1e-9);
    }

    [Fact]
    public void With_no_jar_all_of_it_is_mixed_and_what_the_stock_lacks_is_missing()
    {
        var plan = Plan([Line("pad", 8)], [], Mass.FromGrams(100), Volume.FromLiters(5));
        var recipe = Assert.Single(plan.Batches).Recipe;
        Assert.Equal(0.28 * 1.15, recipe.Makes.UsGallons, 1e-9);
        Assert.Equal(0.28 * 1.15 / 1.14895 * 1.5, plan.Flakes.Pounds, 1e-9);
        Assert.Equal((0.28 * 1.15 / 1.14895 * 1.5 * 453.59237) - 100, plan.FlakesMissing.Grams, 1e-6);
        Assert.Equal(0, plan.AlcoholMissing.Milliliters);
    }

    /// <summary>5 parts of 3-lb and 2 parts of alcohol is about a 2-lb cut (the chart's own example); the model adds 0.385 parts.</summary>
    [Fact]
    public void The_jar_to_be_used_soonest_serves_first_and_is_thinned()
    {
        var plan = Plan(
            [Line("brush", 1, cut: 2)],
            [Jar(1, 2, 50, "2026-12-01"), Jar(2, 3, 60, "2026-08-01"), Jar(3, 1, 500, "2026-07-01")],
            Mass.Zero,
            Volume.Zero);
        Assert.Equal([2, 1], plan.Serves.Select(s => s.Jar.Number.Value));
        Assert.Equal(60, plan.Serves[0].Take.Milliliters, 1e-6);
        Assert.Equal(60 * 0.5 / 1.2979, plan.Serves[0].Add.Milliliters, 1e-6);
        Assert.Equal(0, plan.Serves[1].Add.Milliliters);
        Assert.Equal((0.035 * 3785.411784 * 1.15) - 60 - (60 * 0.5 / 1.2979) - 50, Assert.Single(plan.Batches).Recipe.Makes.Milliliters, 1e-6);
    }

    [Fact]
    public void What_one_line_took_the_next_does_not_find()
    {
        var plan = Plan([Line("pad", 1), Line("pad", 1)], [Jar(1, 1.5, 200, "2026-12-01")], Mass.Zero, Volume.Zero);
        Assert.Equal(200, plan.Serves.Sum(s => s.Take.Milliliters), 1e-6);
        Assert.Equal([1], Assert.Single(plan.Batches).Lines);
    }

    [Fact]
    public void Whatever_the_jars_hold_the_lines_get_what_they_need() =>
        Gen.Select(Gen.Double[0.5, 4], Gen.Double[1, 600]).Array[0, 6].Select(Gen.Double[0.5, 3], Gen.Int[1, 10]).Sample((jars, cut, coats) =>
        {
            var line = Line("pad", coats, cut);
            var plan = Plan([line], [.. jars.Select((j, i) => Jar(i + 1, j.Item1, j.Item2, "2026-12-01"))], Mass.Zero, Volume.Zero);
            var got = plan.Serves.Sum(s => s.Gives.Milliliters) + plan.Batches.Sum(b => b.Recipe.Makes.Milliliters);
            return Math.Abs(got - line.Needed.Milliliters) < 1.001
                && plan.Serves.All(s => s.Take <= s.Jar.Liquid && s.Jar.Cut.PoundsPerUsGallon > cut * 0.97);
        });

    private static JobPlan Plan(JobLine[] lines, ShelfJar[] jars, Mass flakes, Volume alcohol) => JobPlanner.Solve(lines, jars, flakes, alcohol, Ethanol).Require();

    private static JobLine Line(string kind, int coats, double cut = 1.5) => new(
        JobKind.ByWord[kind], Area.FromSquareFeet(14), coats, PoundCut.FromPoundsPerUsGallon(cut), SpreadText.Read(JobLine.UsualSpread, "").Require(), 0.15);

    private static ShelfJar Jar(int number, double cut, double milliliters, string useBy) => new(
        JarNumber.From(number),
        PoundCut.FromPoundsPerUsGallon(cut),
        Volume.FromMilliliters(milliliters),
        DateOnly.Parse(useBy, System.Globalization.CultureInfo.InvariantCulture),
        TestFirst: false,
        new DateTime(2026, 1, 1));
}
