namespace JarLabel.Core.Catalog;

/// <summary>One published density of a liquid.</summary>
/// <param name="Celsius">At this temperature, °C.</param>
/// <param name="KilogramsPerCubicMeter">kg/m³.</param>
/// <param name="Source">Where it was printed.</param>
public sealed record DensityPoint(double Celsius, double KilogramsPerCubicMeter, string Source)
{
    internal static DensityPoint Read(FieldReader fields) =>
        new(fields.Number("celsius", -100, 200), fields.Number("kilogramsPerCubicMeter", 100, 2000), fields.Text("source"));

    /// <summary>The density between published points; beyond them as between the last two.</summary>
    internal static double Between(IReadOnlyList<DensityPoint> points, double celsius)
    {
        var after = 1;
        while (after < points.Count - 1 && points[after].Celsius < celsius)
        {
            after++;
        }

        var (cooler, warmer) = (points[after - 1], points[after]);
        var share = (celsius - cooler.Celsius) / (warmer.Celsius - cooler.Celsius);
        return cooler.KilogramsPerCubicMeter + (share * (warmer.KilogramsPerCubicMeter - cooler.KilogramsPerCubicMeter));
    }
}
