namespace JarLabel.Core.Labels;

/// <summary>A cut in words.</summary>
public static class CutWords
{
    /// <summary><c>1½ lb cut</c>.</summary>
    public static string Of(PoundCut cut) => $"{VulgarFraction.Of(cut.PoundsPerUsGallon)} lb cut";

    /// <summary><c>180 g/L</c>: grams of flakes per litre poured, to the nearest whole gram.</summary>
    public static string Metric(PoundCut cut) => $"{Math.Round(cut.GramsPerLiter, MidpointRounding.AwayFromZero)} g/L";
}
