using JarLabel.Core.Catalog;
using UnitsNet;

namespace JarLabel.Tests.Catalog;

public class SubstanceTests
{
    /// <summary>Molar mass by hand from the formula: ethanol C2H6O, butanone C4H8O, denatonium benzoate C28H34N2O3, and so on.</summary>
    public static TheoryData<string, double> MolarMasses { get; } = new()
    {
        { "ethanol", 46.069 },
        { "water", 18.015 },
        { "propan-2-ol", 60.096 },
        { "methanol", 32.042 },
        { "butanone", 72.107 },
        { "acetone", 58.080 },
        { "1-butanol", 74.123 },
        { "denatonium", 446.591 },
    };

    [Theory, MemberData(nameof(MolarMasses)), Cites(References.IupacWeights, "abridged standard atomic weights")]
    public void Molar_mass_follows_from_the_formula(string id, double gramsPerMole) =>
        Assert.Equal(gramsPerMole, (double)Named(id).MolarMass!.Value, 0.01);

    /// <summary>Density in kg/m³ at 20 °C and flash point in °C from sources other than the catalog's own.</summary>
    [Theory, Cites(References.SupplierSheet, "densities and flash points of other makers")]
    [Cites(References.NiteGhs, "1-butanol, flash point 29 °C (ICSC)")]
    [InlineData("ethanol", 789.3, 12.7)]
    [InlineData("propan-2-ol", 785, 12)]
    [InlineData("methanol", 792, 12.2)]
    [InlineData("butanone", 805, -6)]
    [InlineData("acetone", 790, -18)]
    [InlineData("1-butanol", 812, 29)]
    public void Density_and_flash_point_agree_with_other_books(string id, double density, double flash)
    {
        Assert.Equal(density, (double)Named(id).Density!.Value, 2.5);
        Assert.InRange((double)Named(id).Flash!.Value, flash - 4, flash + 1);
    }

    [Fact, Cites(References.FineWoodworking, "an old painters' manual: 10 lb of shellac in 2 gallons make 3 gallons")]
    public void Ten_pounds_of_dissolved_resin_take_up_a_gallon() =>
        Assert.Equal(10, DissolvedPoundsPerGallon, 0.1);

    [Fact, Cites(References.Cfr27, "21.80 and 21.161, formula 45: 300 lb of shellac in 29.8 gallons are 10.067 lb/gal; by 129.8 gallons to a tenth, 10.05 to 10.08")]
    public void Dissolved_resin_is_as_dense_as_the_regulation_has_it() => Assert.InRange(DissolvedPoundsPerGallon, 300 / 29.85, 300 / 29.75);

    [Theory, CommonPractice]
    [InlineData("unknown")]
    public void What_is_undeclared_is_toxic_by_nobody_knows_how_much(string id) => Assert.True(Named(id).Undeclared);

    [Fact]
    public void Every_substance_has_a_check_row() => Assert.Equal(
        ShopCatalog.Ours.Substances.Ids.Order(StringComparer.Ordinal),
        MolarMasses.Select(row => row.Data.Item1).Concat(["shellac-resin", "unknown"]).Order(StringComparer.Ordinal));

    [Fact]
    public void The_ranges_that_can_burn_are_the_right_way_round() =>
        Assert.All(ShopCatalog.Ours.Substances.Rows.Where(s => s.Lel is not null), s => Assert.True(s.Lel!.Value < s.Uel!.Value));

    private static double DissolvedPoundsPerGallon =>
        (Density.FromKilogramsPerCubicMeter((double)Named("shellac-resin").Density!.Value) * Volume.FromUsGallons(1)).Pounds;

    private static Substance Named(string id) => ShopCatalog.Ours.Substances.Named(id).Require();
}
