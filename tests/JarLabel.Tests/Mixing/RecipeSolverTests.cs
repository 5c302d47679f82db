namespace JarLabel.Tests.Mixing;

public class RecipeSolverTests
{
    private static readonly Density Alcohol = Density.FromKilogramsPerLiter(0.81138);

    [Theory, CommonPractice]
    [InlineData("1 gal", "1 lb", 1)]
    [InlineData("1/2 gal", "1 lb", 2)]
    [InlineData("1/4 gal", "1 lb", 4)]
    [InlineData("1 pt", "1/4 lb", 2)]
    [InlineData("1 qt", "1/4 lb", 1)]
    [InlineData("1 qt", "12 oz", 3)]
    public void The_cut_follows_from_flakes_and_solvent(string pour, string flakes, double cut) =>
        Assert.Equal(cut, Solve(new BatchRequest(Pour: V(pour), Flakes: M(flakes))).Cut.PoundsPerUsGallon, 1e-12);

    [Theory, Cites(References.SupplierSheet2001, "table of flakes per pint")]
    [InlineData("1 pt", 1, "2 oz")]
    [InlineData("1 pt", 3, "6 oz")]
    public void Flakes_for_a_pint_are_those_of_the_mixing_sheet(string pour, double cut, string flakes) =>
        Assert.Equal(M(flakes).Grams, Solve(Poured(cut, pour)).Flakes.Grams, 1e-9);

    [Theory, Cites(References.MixingChart2013, "flakes per gallon for 1, 1 1/2, 2 and 3 lb cuts")]
    [InlineData(1, "16 oz")]
    [InlineData(1.5, "24 oz")]
    [InlineData(2, "32 oz")]
    [InlineData(3, "48 oz")]
    public void Flakes_for_a_gallon_are_those_of_the_mixing_chart(double cut, string flakes) =>
        Assert.Equal(M(flakes).Grams, Solve(Poured(cut, "1 gal")).Flakes.Grams, 1e-9);

    [Fact, Cites(References.Cfr27, "21.80, formula 45: 300 lb of shellac to 100 gallons")]
    public void Three_hundred_pounds_in_a_hundred_gallons_are_a_three_pound_cut() =>
        Assert.Equal(3, Solve(new BatchRequest(Pour: V("100 gal"), Flakes: M("300 lb"))).Cut.PoundsPerUsGallon, 1e-12);

    [Theory, Cites(References.FineWoodworking, "Shellac Conversion Ratios, note: 2, 3 and 4 lb in one gallon make 1.2, about 1.3 and 1.4 gallons")]
    [InlineData(2, 1.2)]
    [InlineData(3, 1.3)]
    [InlineData(4, 1.4)]
    public void A_gallon_of_solvent_makes(double cut, double gallons) =>
        Assert.Equal(gallons, Solve(Poured(cut, "1 gal")).Makes.UsGallons, 0.003); // the chart rounds to a tenth

    /// <summary>The weight of a gallon is that in air (21.161), and its alcohol the 190 proof of 30.44: 68.00 lb for ten gallons, to an ounce.</summary>
    [Fact, Cites(References.Cfr27, "21.80 and 21.161, formula 45, 190 proof: 300 lb to 100 gallons make 129.8 gallons of 7.545 lb/gal at 60 °F")]
    public void Three_hundred_pounds_in_a_hundred_gallons_make_what_the_regulation_says()
    {
        var recipe = RecipeSolver.Solve(new BatchRequest(Pour: V("100 gal"), Flakes: M("300 lb")), Density.FromPoundsPerUSGallon(6.800)).Require();
        Assert.Equal(129.8, recipe.Makes.UsGallons, 0.05);
        Assert.Equal(7.545, recipe.LiquidDensity.PoundsPerUSGallon, 0.01);
    }

    [Fact, Cites(References.FineWoodworking, "a gallon of two-pound liquid holds 1.66 lb of shellac")]
    public void A_gallon_of_two_pound_liquid_holds_less_than_two_pounds() =>
        Assert.Equal(1.66, Solve(Poured(2, "1 gal")).FlakesInLiquid.PoundsPerUSGallon, 0.01);

    [Theory, Cites(References.AstmD360, "6.1: least nonvolatile by weight of the 3, 4 and 5 lb bodies, orange")]
    [InlineData(3, 28.5)]
    [InlineData(4, 35.0)]
    [InlineData(5, 40.0)]
    public void Solids_by_weight_lie_a_little_above_the_least_that_the_standard_asks(double cut, double least)
    {
        var solvent = Density.FromPoundsPerUSGallon(6.788);
        var percent = 100 * Solids.OfCut(PoundCut.FromPoundsPerUsGallon(cut), solvent).SolidsByWeight;
        Assert.InRange(percent, least + 1.5, least + 3.1);
    }

    [Theory, Cites(References.Cfr27, "21.161: formula 1 at 190 proof weighs 6.788 lb/gal; solids then worked by hand")]
    [InlineData(3, 30.65)]
    [InlineData(4, 37.08)]
    [InlineData(5, 42.42)]
    public void Solids_by_weight_in_denatured_alcohol(double cut, double percent)
    {
        var solvent = Density.FromPoundsPerUSGallon(6.788);
        Assert.Equal(percent, 100 * Solids.OfCut(PoundCut.FromPoundsPerUsGallon(cut), solvent).SolidsByWeight, 0.005);
        Assert.Equal(cut, Solids.CutOf(percent / 100, solvent).Require().PoundsPerUsGallon, 0.002);
    }

    [Fact]
    public void A_pint_at_two_pounds_worked_by_hand()
    {
        var recipe = Solve(Poured(2, "1 pt"));
        Assert.Equal(473.176473, recipe.Pour.Milliliters, 1e-6);
        Assert.Equal(113.398, recipe.Flakes.Grams, 0.001);
        Assert.Equal(567.149, recipe.Makes.Milliliters, 0.01);
        Assert.Equal(473.176473 * 0.81138, recipe.PourWeight.Grams, 1e-6);
    }

    [Fact]
    public void Finished_volume_and_container_lead_back_to_the_pour()
    {
        Assert.Equal(500 / 1.14895, Solve(new BatchRequest(C(1.5), Makes: V("500 mL"))).Pour.Milliliters, 1e-9);
        Assert.Equal(500, Solve(new BatchRequest(C(1.5), Makes: V("500 mL"))).Makes.Milliliters, 1e-9);
        Assert.Equal(475, Solve(new BatchRequest(C(1.5), Fill: V("500 mL"))).Makes.Milliliters, 1e-9);
        Assert.Equal(226.796185 / 0.2396528537, Solve(new BatchRequest(C(2), Flakes: M("8 oz"))).Pour.Milliliters, 1e-3);
    }

    [Theory]
    [InlineData(null, "350 mL", null, null, "JL131")]
    [InlineData("1.5", null, null, null, "JL132")]
    [InlineData("1.5", "350 mL", null, "400 mL", "JL133")]
    [InlineData("1.5", "350 mL", "60 g", null, "JL133")]
    [InlineData(null, "1 tsp", "1 lb", null, "JL134")]
    public void An_order_that_fixes_too_little_or_too_much_is_told(string? cut, string? pour, string? flakes, string? makes, string code)
    {
        var order = new BatchRequest(
            cut is null ? null : CutText.Read(cut, "cut").Require(),
            pour is null ? null : V(pour),
            flakes is null ? null : M(flakes),
            makes is null ? null : V(makes));
        Assert.Equal(code, Assert.Single(RecipeSolver.Solve(order, Alcohol).Problems).Code);
    }

    private static Recipe Solve(BatchRequest order) => RecipeSolver.Solve(order, Alcohol).Require();

    private static BatchRequest Poured(double cut, string pour) => new(C(cut), Pour: V(pour));

    private static PoundCut C(double pounds) => PoundCut.FromPoundsPerUsGallon(pounds);

    private static Volume V(string text) => VolumeText.Read(text, "").Require();

    private static Mass M(string text) => MassText.Read(text, "").Require();
}
