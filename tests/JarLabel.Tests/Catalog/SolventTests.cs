using JarLabel.Core.Catalog;
using UnitsNet;

namespace JarLabel.Tests.Catalog;

public class SolventTests
{
    private static Solvent Solvent(string id) => ShopCatalog.Ours.Solvents.Named(id).Require();

    [Fact, Cites(References.Cfr27, "21.161: formula no. 1, 190 proof, weighs 6.788 lb/gal at 60 °F")]
    public void Denatured_formula_1_weighs_as_the_regulation_says()
    {
        var density = Solvent("denatured-sda1").DensityAt(Temperature.FromDegreesFahrenheit(60));
        Assert.Equal(6.788, (density * Volume.FromUsGallons(1)).Pounds, 0.01);
    }

    [Fact, Cites(References.OimlR22, "general formula, 95 % vol at 20 °C")]
    public void Alcohol_of_95_percent_weighs_as_the_international_table_says() =>
        Assert.Equal(811.38, Solvent("ethanol-95").DensityAt(Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter, 0.01);
}
