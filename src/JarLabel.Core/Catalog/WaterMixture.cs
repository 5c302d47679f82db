namespace JarLabel.Core.Catalog;

/// <summary>How dense an alcohol and water are together, as measured at 20 °C: they take up less room than apart.</summary>
/// <param name="Points">From water alone to the alcohol alone.</param>
/// <param name="Source">Where they were printed.</param>
public sealed record WaterMixture(IReadOnlyList<WaterMixturePoint> Points, string Source)
{
    /// <summary>kg/m³ at 20 °C of so many percent by weight of the alcohol.</summary>
    public double KilogramsPerCubicMeter(double percentByWeight)
    {
        var after = Points.Skip(1).First(p => p.PercentByWeight >= percentByWeight || p == Points[^1]);
        var before = Points.Last(p => p.PercentByWeight < after.PercentByWeight);
        var share = (percentByWeight - before.PercentByWeight) / (after.PercentByWeight - before.PercentByWeight);
        return before.KilogramsPerCubicMeter + (share * (after.KilogramsPerCubicMeter - before.KilogramsPerCubicMeter));
    }

    /// <summary>Percent by weight of what is sold as so many percent by volume at 20 °C.</summary>
    public double PercentByWeight(double percentByVolume) => Bisection.Find(
        0, 100, weight => weight * KilogramsPerCubicMeter(weight) < percentByVolume * Points[^1].KilogramsPerCubicMeter);

    internal static WaterMixture Read(FieldReader fields)
    {
        var points = fields.List("points", WaterMixturePoint.Read);
        if (points is not [{ PercentByWeight: 0 }, .., { PercentByWeight: 100 }] || points.Zip(points.Skip(1)).Any(two => two.First.PercentByWeight >= two.Second.PercentByWeight))
        {
            fields.Refuse("points", "They must go up from percentByWeight 0, which is water, to 100, which is the alcohol.");
        }

        return new(points, fields.Text("source"));
    }
}

/// <summary>One measured density of an alcohol in water, at 20 °C.</summary>
/// <param name="PercentByWeight">Of the alcohol.</param>
/// <param name="KilogramsPerCubicMeter">Of the two together.</param>
public sealed record WaterMixturePoint(double PercentByWeight, double KilogramsPerCubicMeter)
{
    internal static WaterMixturePoint Read(FieldReader fields) =>
        new(fields.Number("percentByWeight", 0, 100), fields.Number("kilogramsPerCubicMeter", 100, 2000));
}
