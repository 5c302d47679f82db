namespace JarLabel.Core.Catalog;

/// <summary>The steepness of a vapour pressure curve between 20 °C and the boiling point (Clausius and Clapeyron).</summary>
internal static class VaporSlope
{
    private const double AtmosphereKilopascals = 101.325;

    /// <summary>Minus the slope of ln p over 1/T, K; about 5000 for an alcohol.</summary>
    internal static double Kelvins(Figure kilopascalsAt20, Figure boilsCelsius) =>
        Math.Log(AtmosphereKilopascals / (double)kilopascalsAt20.Value) / (Inverse(20) - Inverse((double)boilsCelsius.Value));

    /// <summary>One over the absolute temperature, 1/K.</summary>
    internal static double Inverse(double celsius) => 1 / (celsius + 273.15);
}
