using UnitsNet;

namespace JarLabel.Core.Keeping;

/// <summary>How warmth changes the pace of ageing and dissolving, compared with 20 °C.</summary>
public static class Warmth
{
    private const double ReferenceCelsius = 20, ColdestCelsius = 5, WarmestCelsius = 35;

    /// <summary>The temperature that figures without a temperature are meant at: 20 °C, 68 °F.</summary>
    public static Temperature Reference { get; } = Temperature.FromDegreesCelsius(ReferenceCelsius);

    /// <summary>How many times as long something takes: 2 at 10 °C, ½ at 30 °C for a Q10 of 2. Held between 5 °C and 35 °C, because
    /// beyond that the rule of thumb says nothing.</summary>
    public static double Stretch(Temperature temperature, KeepingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        var celsius = Math.Clamp(temperature.DegreesCelsius, ColdestCelsius, WarmestCelsius);
        return Math.Pow(settings.Q10, (ReferenceCelsius - celsius) / 10);
    }
}
