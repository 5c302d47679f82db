namespace JarLabel.Core.Labels;

/// <summary>Amounts that must not be passed, as they are shown: rounded down in both measures, to the steps of <see cref="BenchAmount"/>, so that what is typed as it stands is never more.</summary>
public static class AtMostAmount
{
    /// <summary>Both measures, metric first.</summary>
    public static string Both(Volume volume) => $"{Metric(volume)} ({Us(volume)})";

    /// <inheritdoc cref="Both(Volume)"/>
    public static string Both(Mass mass) => $"{Metric(mass)} ({Us(mass)})";

    /// <summary>Millilitres or litres.</summary>
    public static string Metric(Volume volume) => volume.Milliliters switch
    {
        < 100 => Say($"{Down(volume.Milliliters, 0.5):0.#} mL"),
        < 1000 => Say($"{Down(volume.Milliliters, 1):0} mL"),
        _ => Say($"{Down(volume.Liters, 0.01):0.00} L"),
    };

    private static string Us(Volume volume) => volume.UsGallons < 1 ? Say($"{Down(volume.UsOunces, 0.1):0.#} fl oz") : Say($"{Down(volume.UsGallons, 0.01):0.00} gal");

    private static string Metric(Mass mass) => mass.Grams switch
    {
        < 100 => Say($"{Down(mass.Grams, 0.1):0.#} g"),
        < 1000 => Say($"{Down(mass.Grams, 1):0} g"),
        _ => Say($"{Down(mass.Kilograms, 0.01):0.00} kg"),
    };

    private static string Us(Mass mass) => mass.Ounces < 16 ? Say($"{Down(mass.Ounces, 0.05):0.##} oz") : Say($"{Down(mass.Pounds, 0.01):0.00} lb");

    /// <summary>The whole steps in it; one that sums before left a hair below a whole is whole.</summary>
    private static double Down(double value, double step) => Math.Floor((value / step) + 1e-9) * step;

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
