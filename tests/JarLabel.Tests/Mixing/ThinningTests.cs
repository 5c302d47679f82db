namespace JarLabel.Tests.Mixing;

public class ThinningTests
{
    private static readonly Gen<PoundCut> AnyCut = Gen.Double[0.1, 8].Select(PoundCut.FromPoundsPerUsGallon);
    private static readonly Gen<Volume> AnyVolume = Gen.Double[1, 10_000].Select(v => Volume.FromMilliliters(v));

    [Theory, Cites(References.FineWoodworking, "Shellac Conversion Ratios: parts of alcohol to one part of liquid")]
    [InlineData(5, 2, 1, 0.07)]
    [InlineData(3, 1, 1.5, 0.07)]
    [InlineData(3, 1.5, 0.75, 0.07)]
    [InlineData(4, 1, 2, 0.08)]
    [InlineData(4, 2, 0.75, 0.07)]
    [InlineData(4, 1.5, 1.25, 0.07)]
    [InlineData(5, 1.5, 1.5, 0.07)]
    [InlineData(3, 2, 1 / 3.0, 0.16)]
    public void The_thinning_chart_of_the_trade_agrees_to_within_its_rounding(double from, double to, double parts, double tolerance)
    {
        var thinning = Thinning.Solve(C(from), C(to), Volume.FromMilliliters(1000)).Require();
        Assert.InRange(thinning.PartsPerPart, parts * (1 - tolerance), parts * (1 + tolerance));
    }

    [Fact, Cites(References.FineWoodworking, "article: 5 parts of 3-lb and 2 parts of alcohol are about a 2-lb cut")]
    public void Five_parts_of_three_pound_and_two_of_alcohol_are_about_two_pounds()
    {
        var thinning = Thinning.Solve(C(3), C(2), Volume.FromMilliliters(500)).Require();
        Assert.Equal(200, thinning.Add.Milliliters, 10.0);
    }

    [Fact]
    public void Leaving_out_the_volume_of_the_resin_would_thin_too_far()
    {
        // One part of 3 lb and two parts of alcohol, as simple proportion has it, come to 0.83 lb: worked by hand from v = 0.0993 gal/lb.
        var poured = 1 / 1.2979;
        Assert.Equal(0.83, 3 * poured / (poured + 2), 0.005);
        Assert.Equal(2 / 1.2979, Thinning.Solve(C(3), C(1), Volume.FromMilliliters(1)).Require().PartsPerPart, 1e-12);
    }

    [Fact]
    public void Thinning_then_thickening_comes_back() => Gen.Select(AnyCut, AnyCut, AnyVolume).Where((a, b, _) => a > b).Sample((strong, weak, liquid) =>
    {
        var thinned = Thinning.Solve(strong, weak, liquid).Require();
        var back = Thickening.Solve(weak, strong, thinned.Makes).Require();
        var flakesBefore = strong.FlakesFor(Shellac.PouredIn(liquid, strong)).Grams;
        var flakesThinned = weak.FlakesFor(Shellac.PouredIn(thinned.Makes, weak)).Grams;
        var pouredBack = Shellac.PouredIn(back.Makes, strong).Milliliters;
        Assert.Equal(flakesBefore, flakesThinned, flakesBefore * 1e-9);
        Assert.Equal((flakesThinned + back.Add.Grams) / 1000 / pouredBack * 1e6, strong.GramsPerLiter, strong.GramsPerLiter * 1e-9);
    });

    [Fact]
    public void A_thinned_liquid_is_a_blend_with_pure_solvent_in_the_limit() => Gen.Select(AnyCut, AnyCut, AnyVolume).Where((a, b, _) => a > b).Sample((strong, weak, liquid) =>
    {
        var thinned = Thinning.Solve(strong, weak, liquid).Require();
        var almostNothing = PoundCut.FromPoundsPerUsGallon(PoundCut.Weakest);
        var blend = Blend.Solve([(liquid, strong), (thinned.Add * Shellac.Swelling(almostNothing), almostNothing)]).Require();
        return Math.Abs(blend.Cut.PoundsPerUsGallon - weak.PoundsPerUsGallon) <= PoundCut.Weakest;
    });

    [Theory]
    [InlineData(2, 2)]
    [InlineData(1, 2)]
    public void Thinning_upwards_is_refused(double from, double to) =>
        Assert.Equal("JL135", Assert.Single(Thinning.Solve(C(from), C(to), Volume.FromLiters(1)).Problems).Code);

    [Theory]
    [InlineData(2, 2)]
    [InlineData(2, 1)]
    public void Thickening_downwards_is_refused(double from, double to) =>
        Assert.Equal("JL136", Assert.Single(Thickening.Solve(C(from), C(to), Volume.FromLiters(1)).Problems).Code);

    private static PoundCut C(double pounds) => PoundCut.FromPoundsPerUsGallon(pounds);
}
