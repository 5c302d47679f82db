namespace JarLabel.Core.Air;

/// <summary>How much vapour a liquid gives, as an ideal gas at 101.325 kPa.</summary>
public static class Vapor
{
    /// <summary>The molar gas constant, J/(mol K), exact since 2019.</summary>
    private const double GasConstant = 8.31446261815324;

    private const double AtmospherePascals = 101_325;

    /// <summary>The vapour of so much of a substance.</summary>
    public static Volume Of(Mass mass, Substance substance, Temperature temperature)
    {
        var molarMass = (double)(substance.MolarMass?.Value ?? throw new ArgumentException($"{substance.Id} has no molar mass.", nameof(substance)));
        return Volume.FromCubicMeters(mass.Grams / molarMass * GasConstant * temperature.Kelvins / AtmospherePascals);
    }

    /// <summary>The most that air can hold of a substance at a temperature, ppm by volume; null when its vapour pressure is unknown.
    /// By Antoine's equation in its range, else from the pressure at 20 °C and the boiling point.</summary>
    public static double? SaturatedPpm(Substance substance, Temperature temperature) =>
        PressureOver(substance, temperature) is { } pressure ? Math.Min(1e6, 1e6 * pressure.Pascals / AtmospherePascals) : null;

    /// <summary>The pressure of the saturated vapour; null when unknown.</summary>
    public static Pressure? PressureOver(Substance substance, Temperature temperature)
    {
        return substance switch
        {
            { Antoine: { } antoine } when antoine.Covers(temperature) => antoine.PressureAt(temperature),
            { VaporPressure: { } at20, Boils: { } boils } => Pressure.FromKilopascals(
                (double)at20.Value * Math.Exp(VaporSlope.Kelvins(at20, boils) * (VaporSlope.Inverse(20) - VaporSlope.Inverse(temperature.DegreesCelsius)))),
            _ => null,
        };
    }
}
