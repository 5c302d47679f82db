namespace JarLabel.Core.Labels;

/// <summary>The words of the chart of how long one kind of jar keeps.</summary>
/// <param name="Title">Which kind.</param>
/// <param name="Answer">The use-by age and its band.</param>
/// <param name="Basis">On how many tests it stands, and what claims say.</param>
/// <param name="Jars">What stands over the tested jars.</param>
/// <param name="Notes">Short lines under the chart.</param>
public sealed record LifeChartText(string Title, string Answer, string Basis, string Jars, IReadOnlyList<string> Notes)
{
    /// <summary>Names the upright axis.</summary>
    public const string ExifOrientation = "jars that still dry hard";

    /// <summary>Names the axis of age.</summary>
    public const string Across = "age in months, as at 20 °C";

    /// <summary>The words of the key.</summary>
    public const string Curve = "the estimate", Band = "90 % band", Claims = "published claims", Passed = "test passed", Failed = "test failed", Between = "ended in between", Still = "still good then", Slow = "test passed slowly", Expected = "end expected";

    /// <summary>Everything that is printed on the chart.</summary>
    /// <param name="life">What is known of the kind.</param>
    /// <param name="stillGood">The share that the use-by is meant for.</param>
    /// <param name="shown">How many of its tested jars are drawn.</param>
    /// <param name="catalog">Names.</param>
    public static LifeChartText For(LifeEstimate life, double stillGood, int shown, ShopCatalog catalog)
    {
        var tested = life.Lives.Count;
        return new(
            $"{Capital.Of(life.Class.NameIn(catalog))} shellac in {catalog.Solvents.Find(life.Class.Solvent)?.ShortName ?? life.Class.Solvent}",
            Say($"Use by ≈ {life.Months:0.0} months at 20 °C: {100 * stillGood:0.##} % of jars should still dry hard then. 90 % band {life.Low:0.0} to {life.High:0.0} months."),
            Say($"Published claims say {life.BaseMonths:0.0}. Learned from {CountWords.Of(life.Tests, "drying test")} of {CountWords.Of(tested, "jar")} here, {life.Lives.Count(l => l.Ended)} failed{(life.Lives.Count(l => l.Expected) is > 0 and var slow ? $", {slow} slow" : "")}{(life.Related > 0 ? $", and {CountWords.Of(life.Related, "tested jar")} of other kinds" : "")}."),
            shown == 0 ? "No jar of this kind was tested yet."
                : shown < tested ? Say($"The {shown} of {tested} tested jars that were tested last")
                : "The tested jars",
            [.. UnderIt(life)]);
    }

    private static IEnumerable<string> UnderIt(LifeEstimate life)
    {
        if (life.Months > life.High)
        {
            yield return "The estimate lies beyond the band: it is too hopeful, so go by the band.";
        }

        yield return "Warmer shelves age jars sooner. An estimate; a few drops on glass decide.";
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
