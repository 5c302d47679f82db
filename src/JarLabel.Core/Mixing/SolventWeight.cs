using JarLabel.Core.Catalog;
using UnitsNet;

namespace JarLabel.Core.Mixing;

/// <summary>What a solvent weighs at the bench temperature, so that a scale can replace a measuring cup.</summary>
public static class SolventWeight
{
    /// <summary>The temperature that is meant when nobody says one: 20 °C, 68 °F.</summary>
    public static Temperature Bench { get; } = Temperature.FromDegreesCelsius(20);

    /// <summary>Density at a temperature (-20 °C to +40 °C): ethanol and water by the international formula, every other
    /// ingredient by its own density and expansion, their volumes added.</summary>
    public static Density DensityAt(Solvent solvent, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(solvent);
        double ethanol = 0, water = 0, litersPerKilogram = 0, total = 0;
        foreach (var share in solvent.Composition.Shares)
        {
            var part = (double)share.PercentByWeight;
            total += part;
            switch (share.Substance.Id)
            {
                case "ethanol": ethanol += part; break;
                case "water": water += part; break;
                default: litersPerKilogram += part / share.Substance.DensityAt(temperature).KilogramsPerLiter; break;
            }
        }

        if (ethanol + water > 0)
        {
            litersPerKilogram += (ethanol + water) / EthanolWater.DensityAt(ethanol / (ethanol + water), temperature).KilogramsPerLiter;
        }

        return Density.FromKilogramsPerLiter(total / litersPerKilogram);
    }
}
