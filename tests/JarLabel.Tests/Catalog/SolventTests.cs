using JarLabel.Core.Catalog;
using UnitsNet;

namespace JarLabel.Tests.Catalog;

public class SolventTests
{
    /// <summary>Percent by weight of the substance named, by hand from the stated parts and the densities of pure liquids, and water by
    /// volume.</summary>
    public static TheoryData<string, string, double, double> Solvents { get; } = new()
    {
        { "ethanol-95", "ethanol", 92.408, 6.17 },
        { "ethanol-96", "ethanol", 93.84, 4.98 },
        { "ethanol-99", "ethanol", 98.39, 1.29 },
        { "denatured-sda1", "methanol", 3.755, 5.93 },
        { "denatured-sda3a", "methanol", 4.650, 5.88 },
        { "denatured-eu", "butanone", 0.978, 4.88 },
        { "denatured-methanol-50", "methanol", 50, 4.0 },
        { "denatured-unknown", "ethanol", 92.5, 6.1 },
        { "isopropanol-99", "propan-2-ol", 98.733, 1 },
        { "isopropanol-91", "propan-2-ol", 88.835, 9 },
        { "isopropanol-70", "propan-2-ol", 64.74, 30 },
        { "methanol", "methanol", 100, 0 },
    };

    [Theory, MemberData(nameof(Solvents)), Cites(References.OimlR22, "table: 95 % vol is 92.41 % by mass, 96 % 93.84, 99 % 98.38")]
    [Cites(References.Cfr27, "formula no. 1: 4 gallons of methyl alcohol to 100 gallons; no. 3-A, 5 gallons, from memory")]
    public void Parts_on_the_can_become_percent_by_weight(string id, string substance, double percent, double waterByVolume)
    {
        Assert.Equal(percent, (double)Solvent(id).Composition.PercentOf(substance), 0.015);
        Assert.Equal(waterByVolume, Solvent(id).WaterPercentByVolume, 0.06);
    }

    [Fact]
    public void Every_solvent_has_its_check_row() => Assert.Equal(
        ShopCatalog.Ours.Solvents.Ids.Order(StringComparer.Ordinal), Solvents.Select(row => row.Data.Item1).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_composition_adds_up_to_a_hundred() => Assert.All(
        ShopCatalog.Ours.Solvents.Rows.SelectMany(s => s.Compositions),
        c => Assert.Equal(100m, Math.Round(c.Ingredients.Sum(i => i.Percent), 20)));

    [Theory, CommonPractice]
    [InlineData("ethanol-95", false)]
    [InlineData("isopropanol-99", false)]
    [InlineData("isopropanol-91", true)]
    [InlineData("isopropanol-70", true)]
    public void Drugstore_isopropyl_is_too_wet_for_shellac(string id, bool tooWet) => Assert.Equal(tooWet, Solvent(id).TooWet);

    [Fact, Cites(References.Cfr27, "21.161: formula no. 1, 190 proof, weighs 6.788 lb/gal at 60 °F")]
    public void Denatured_formula_1_weighs_as_the_regulation_says()
    {
        var density = Solvent("denatured-sda1").DensityAt(Temperature.FromDegreesFahrenheit(60));
        Assert.Equal(6.788, (density * Volume.FromUsGallons(1)).Pounds, 0.015);
    }

    [Fact, Cites(References.SolventsHandbook, "table 6.1: methanol 6.63 lb/gal at 60 °F")]
    public void Methanol_weighs_as_the_handbook_says()
    {
        var density = Solvent("methanol").DensityAt(Temperature.FromDegreesFahrenheit(60));
        Assert.Equal(6.63, (density * Volume.FromUsGallons(1)).Pounds, 0.01);
    }

    [Fact, Cites(References.OimlR22, "general formula, 95 % vol at 20 °C")]
    public void Alcohol_of_95_percent_weighs_as_the_international_table_says() =>
        Assert.Equal(811.38, Solvent("ethanol-95").DensityAt(Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter, 0.01);

    private static Solvent Solvent(string id) => ShopCatalog.Ours.Solvents.Named(id).Require();
}
