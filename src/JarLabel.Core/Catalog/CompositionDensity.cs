namespace JarLabel.Core.Catalog;

/// <summary>The density of a liquid from what it is made of: ethanol and water together by the international formula; where there is no
/// ethanol, water and an alcohol whose mixtures with it were measured by that measurement; everything else added volume to volume with its
/// own density, by its table or its expansion. A trace whose density nobody has looked up is taken to be as dense as the rest.</summary>
public static class CompositionDensity
{
    /// <summary>Density at a temperature; the formula's range, -20 °C to +40 °C, is kept.</summary>
    public static Density DensityAt(this Composition composition, Temperature temperature)
    {
        var celsius = Math.Clamp(temperature.DegreesCelsius, EthanolWater.ColdestCelsius, EthanolWater.WarmestCelsius);
        var volume = VolumeOfEthanolAndWater(composition, celsius) - VolumeLostToWater(composition, celsius)
            + composition.Ingredients.Where(i => IsOther(i) && HasDensity(i)).Sum(i => (double)i.Percent / DensityOf(i.Substance, celsius));
        return Density.FromKilogramsPerCubicMeter((double)composition.Ingredients.Where(HasDensity).Sum(i => i.Percent) / volume);
    }

    /// <summary>Water, as percent of the liquid's volume at 20 °C.</summary>
    public static double WaterPercentByVolume(this Composition composition)
    {
        var water = (double)composition.PercentOf(Substance.WaterId);
        return water * composition.DensityAt(Temperature.FromDegreesCelsius(20)).KilogramsPerCubicMeter / EthanolWater.KilogramsPerCubicMeter(0, 20);
    }

    private static double VolumeOfEthanolAndWater(Composition composition, double celsius)
    {
        var ethanol = (double)composition.PercentOf(Substance.EthanolId);
        var both = ethanol + (double)composition.PercentOf(Substance.WaterId);
        return both == 0 ? 0 : both / EthanolWater.KilogramsPerCubicMeter(Math.Clamp(ethanol / both, 0, 1), celsius);
    }

    /// <summary>How much less room water and an alcohol other than ethanol take up together than apart; measured at 20 °C, and taken to
    /// grow with them.</summary>
    private static double VolumeLostToWater(Composition composition, double celsius)
    {
        var water = (double)composition.PercentOf(Substance.WaterId);
        if (water == 0 || composition.PercentOf(Substance.EthanolId) > 0
            || composition.Ingredients.FirstOrDefault(i => i.Substance.WithWater is not null) is not { Substance.WithWater: { } measured } alcohol)
        {
            return 0;
        }

        var both = water + (double)alcohol.Percent;
        var together = both / measured.KilogramsPerCubicMeter(100 * (double)alcohol.Percent / both);
        return Apart(celsius) * (1 - (together / Apart(20)));

        double Apart(double at) => (water / EthanolWater.KilogramsPerCubicMeter(0, at)) + ((double)alcohol.Percent / DensityOf(alcohol.Substance, at));
    }

    private static bool IsOther(Ingredient ingredient) => ingredient.Substance.Id is not (Substance.EthanolId or Substance.WaterId);

    private static bool HasDensity(Ingredient ingredient) => ingredient.Substance.Density is not null;

    private static double DensityOf(Substance substance, double celsius)
    {
        if (substance.Densities.Count > 1)
        {
            return DensityPoint.Between(substance.Densities, celsius);
        }

        var at20 = (double)(substance.Density?.Value ?? throw new InvalidOperationException($"{substance.Id} has no density."));
        return at20 / (1 + ((double)(substance.Expansion?.Value ?? 0) * (celsius - 20)));
    }
}
