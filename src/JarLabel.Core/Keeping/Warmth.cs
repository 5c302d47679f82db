namespace JarLabel.Core.Keeping;

/// <summary>How warmth changes the pace of ageing and dissolving, compared with 20 °C.</summary>
public static class Warmth
{
    private const double ReferenceCelsius = 20, ColdestCelsius = 5, WarmestCelsius = 35;

    /// <summary>The temperature that figures without a temperature are meant at: 20 °C, 68 °F.</summary>
    public static Temperature Reference { get; } = Temperature.FromDegreesCelsius(ReferenceCelsius);

    /// <summary>How many times as long something takes: 2 at 10 °C, ½ at 30 °C for a Q10 of 2.</summary>
    public static double Stretch(Temperature temperature, double q10) => Math.Pow(q10, -TensAbove(temperature));

    /// <summary>How many times as long a jar is taken to keep as at 20 °C, before any test: no longer on a cool shelf than the convention says, shorter on a
    /// warm one.</summary>
    public static double Keeping(Temperature temperature, KeepingSettings settings) =>
        Stretch(temperature, TensAbove(temperature) > 0 ? settings.WarmingQ10 : settings.CoolingQ10);

    /// <summary>How many times 10 °C it is warmer than 20 °C. Held between 5 °C and 35 °C, because beyond that the rule says nothing.</summary>
    internal static double TensAbove(Temperature temperature) => (Math.Clamp(temperature.DegreesCelsius, ColdestCelsius, WarmestCelsius) - ReferenceCelsius) / 10;
}
