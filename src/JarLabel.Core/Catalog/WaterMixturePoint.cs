using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>One measured density of an alcohol in water, at 20 °C.</summary>
/// <param name="PercentByWeight">Of the alcohol.</param>
/// <param name="KilogramsPerCubicMeter">Of the two together.</param>
public sealed record WaterMixturePoint(double PercentByWeight, double KilogramsPerCubicMeter)
{
    internal static WaterMixturePoint Read(FieldReader fields) =>
        new(fields.Number("percentByWeight", 0, 100), fields.Number("kilogramsPerCubicMeter", 100, 2000));
}
