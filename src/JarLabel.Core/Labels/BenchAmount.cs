namespace JarLabel.Core.Labels;

/// <summary>Amounts as they are shown, rounded once, to what a bench can weigh or pour:
/// <list type="bullet">
/// <item>weight: 0.1 g below 100 g, 1 g below 1 kg, then 10 g; ounces to 0.05, from a pound on in pounds and ounces to 0.1;</item>
/// <item>volume: 0.5 mL below 100 mL, 1 mL below 1 L, then 10 mL; US in cups, pints, quarts or gallons where the amount is a
/// plain fraction of one within 0.25 %, otherwise fluid ounces to 0.1, from a gallon on gallons to 0.01.</item>
/// <item>what the metric step still shows and the US step would not is shown in ounces to 0.001, in fluid ounces to 0.01.</item>
/// </list></summary>
public static class BenchAmount
{
    private static readonly (string Unit, double Milliliters, double Least)[] PlainUnits =
        [("gal", 3785.411784, 0.5), ("qt", 946.352946, 0.75), ("pt", 473.176473, 0.25)];

    private static readonly double[] PlainFractions = [0, 0.25, 0.5, 0.75, 1];

    private const double MilliliterStep = 0.5, GramStep = 0.1;

    /// <summary>The least volume that is shown, and can be poured.</summary>
    public static Volume LeastVolume { get; } = Volume.FromMilliliters(MilliliterStep);

    /// <summary>The least weight that is shown, and can be weighed.</summary>
    public static Mass LeastMass { get; } = Mass.FromGrams(GramStep);

    /// <summary>True for so little that it would be shown as 0.</summary>
    public static bool IsNothing(Volume volume) => Rounded(volume.Milliliters, MilliliterStep) <= 0;

    /// <inheritdoc cref="IsNothing(Volume)"/>
    public static bool IsNothing(Mass mass) => Rounded(mass.Grams, GramStep) <= 0;

    /// <summary>Grams or kilograms.</summary>
    public static string Metric(Mass mass) => mass.Grams switch
    {
        < 99.95 => Number(Rounded(mass.Grams, GramStep), "0.#") + " g",
        < 999.5 => Number(Rounded(mass.Grams, 1), "0") + " g",
        _ => Number(Rounded(mass.Grams, 10) / 1000, "0.00") + " kg",
    };

    /// <summary>Ounces on a scale, or pounds and ounces.</summary>
    public static string Us(Mass mass)
    {
        if (mass.Ounces < 15.975)
        {
            return Number(Shown(mass.Ounces, 0.05, 0.001), "0.###") + " oz";
        }

        var tenths = Math.Round(mass.Ounces * 10, MidpointRounding.AwayFromZero);
        var pounds = Math.Floor(tenths / 160);
        var ounces = (tenths - (pounds * 160)) / 10;
        return Number(pounds, "0") + " lb" + (ounces > 0 ? $" {Number(ounces, "0.#")} oz" : "");
    }

    /// <summary>Millilitres or litres.</summary>
    public static string Metric(Volume volume) => volume.Milliliters switch
    {
        < 99.75 => Number(Rounded(volume.Milliliters, MilliliterStep), "0.#") + " mL",
        < 999.5 => Number(Rounded(volume.Milliliters, 1), "0") + " mL",
        _ => Number(Rounded(volume.Milliliters, 10) / 1000, "0.00") + " L",
    };

    /// <summary>A plain part of a pint, quart or gallon, or fluid ounces.</summary>
    public static string Us(Volume volume) => Plain(volume) ?? (volume.UsGallons < 1
        ? Number(Shown(volume.UsOunces, 0.1, 0.01), "0.##") + " fl oz"
        : Number(Rounded(volume.UsGallons, 0.01), "0.00") + " gal");

    /// <summary>Both measures, the preferred one first.</summary>
    public static string Both(Volume volume, bool metricFirst = true) => Pair(Metric(volume), Us(volume), metricFirst);

    /// <inheritdoc cref="Both(Volume, bool)"/>
    public static string Both(Mass mass, bool metricFirst = true) => Pair(Metric(mass), Us(mass), metricFirst);

    private static string Pair(string metric, string us, bool metricFirst) => metricFirst ? $"{metric} ({us})" : $"{us} ({metric})";

    private static string? Plain(Volume volume)
    {
        foreach (var (unit, size, least) in PlainUnits)
        {
            var count = volume.Milliliters / size;
            var part = PlainFractions.FirstOrDefault(f => Math.Abs(Math.Floor(count) + f - count) <= 0.0025 * count, -1);
            if (count >= least * 0.9975 && part >= 0 && VulgarFraction.Exact(count, 0.0025) is { } words)
            {
                return $"{words} {unit}";
            }
        }

        return null;
    }

    private static double Shown(double value, double step, double finer) => Rounded(value, step) is > 0 and var coarse ? coarse : Rounded(value, finer);

    /// <summary>Half a step goes up, also where the sums before left it a hair below the half.</summary>
    private static double Rounded(double value, double step) => Math.Round((value / step) + 1e-9, MidpointRounding.AwayFromZero) * step;

    private static string Number(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
