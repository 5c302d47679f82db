namespace JarLabel.Core.Mixing;

/// <summary>The density of ethanol and water mixed, by the international formula: OIML R 22, the same as the annex to Directive
/// 76/766/EEC, section 4. It holds from -20 °C to +40 °C.</summary>
public static class EthanolWater
{
    /// <summary>Coldest and warmest the formula is made for, °C.</summary>
    public const double ColdestCelsius = -20, WarmestCelsius = 40;

    private static readonly double[] A =
    [
        9.982012300e2, -1.929769495e2, 3.891238958e2, -1.668103923e3, 1.352215441e4, -8.829278388e4,
        3.062874042e5, -6.138381234e5, 7.470172998e5, -5.478461354e5, 2.234460334e5, -3.903285426e4,
    ];

    private static readonly double[] B =
        [-2.0618513e-1, -5.2682542e-3, 3.6130013e-5, -3.8957702e-7, 7.1693540e-9, -9.9739231e-11];

    private static readonly double[][] C =
    [
        [
            1.693443461530087e-1, -1.046914743455169e1, 7.196353469546523e1, -7.047478054272792e2, 3.924090430035045e3,
            -1.210164659068747e4, 2.248646550400788e4, -2.605562982188164e4, 1.852373922069467e4, -7.420201433430137e3,
            1.285617841998974e3,
        ],
        [
            -1.193013005057010e-2, 2.517399633803461e-1, -2.170575700536993, 1.353034988843029e1, -5.029988758547014e1,
            1.096355666577570e2, -1.422753946421155e2, 1.080435942856230e2, -4.414153236817392e1, 7.442971530188783,
        ],
        [
            -6.802995733503803e-4, 1.876837790289664e-2, -2.002561813734156e-1, 1.022992966719220, -2.895696483903638,
            4.810060584300675, -4.672147440794683, 2.458043105903461, -5.411227621436812e-1,
        ],
        [4.075376675622027e-6, -8.763058573471110e-6, 6.515031360099368e-6, -1.515784836987210e-6],
        [-2.788074354782409e-8, 1.345612883493354e-8],
    ];

    /// <summary>Density at a temperature.</summary>
    /// <param name="massFraction">Ethanol by mass, 0 to 1.</param>
    /// <param name="temperature">-20 °C to +40 °C.</param>
    public static Density DensityAt(double massFraction, Temperature temperature) =>
        Density.FromKilogramsPerCubicMeter(KilogramsPerCubicMeter(massFraction, temperature.DegreesCelsius));

    /// <summary>Density, kg/m³, at a temperature in °C (-20 to +40) for a mass fraction of ethanol (0 to 1).</summary>
    public static double KilogramsPerCubicMeter(double massFraction, double celsius)
    {
        Guard(massFraction, celsius);
        var warmer = celsius - 20;
        var density = PowerSeries(A, massFraction) + (warmer * PowerSeries(B, warmer));
        for (var i = C.Length - 1; i >= 0; i--)
        {
            density += Math.Pow(warmer, i + 1) * massFraction * PowerSeries(C[i], massFraction);
        }

        return density;
    }

    /// <summary>The mass fraction of an alcohol sold as so many percent by volume at 20 °C (0 to 100).</summary>
    public static double MassFraction(double percentByVolumeAt20)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(percentByVolumeAt20, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(percentByVolumeAt20, 100);
        return Bisection.Find(0, 1, fraction => PercentByVolume(fraction) < percentByVolumeAt20);
    }

    /// <summary>Percent by volume at 20 °C of a mass fraction of ethanol.</summary>
    public static double PercentByVolume(double massFraction) =>
        100 * massFraction * KilogramsPerCubicMeter(massFraction, 20) / KilogramsPerCubicMeter(1, 20);

    /// <summary>How much the liquid grows per kelvin at a temperature, as a fraction of its volume.</summary>
    public static double ExpansionPerKelvin(double massFraction, Temperature temperature)
    {
        const double step = 0.05;
        var celsius = Math.Clamp(temperature.DegreesCelsius, ColdestCelsius + step, WarmestCelsius - step);
        var cooler = KilogramsPerCubicMeter(massFraction, celsius - step);
        var hotter = KilogramsPerCubicMeter(massFraction, celsius + step);
        return (cooler - hotter) / (2 * step) / KilogramsPerCubicMeter(massFraction, celsius);
    }

    private static double PowerSeries(double[] coefficients, double x)
    {
        var sum = 0.0;
        for (var i = coefficients.Length - 1; i >= 0; i--)
        {
            sum = (sum * x) + coefficients[i];
        }

        return sum;
    }

    private static void Guard(double massFraction, double celsius)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(massFraction, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(massFraction, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(celsius, ColdestCelsius);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(celsius, WarmestCelsius);
    }
}
