using UnitsNet;

namespace JarLabel.Core.Quantities;

/// <summary>Reads how far a liquid spreads: <c>400 sqft/gal</c>, <c>9 m2/L</c>. The thickness of the wet coat follows.</summary>
public static class SpreadText
{
    /// <summary>The wet coat that the spread means; from a micrometre to a millimetre.</summary>
    public static Result<Length> Read(string text, string where)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Split('/') is [var area, var volume]
            ? AreaText.Read(area, where).Then(a => VolumeText.ReadPart(NumberText.Take(volume) is null ? "1 " + volume : volume, where).Then(v => WetCoat(v / a, text, where)))
            : QuantityProblems.NotASpread(text, where);
    }

    private static Result<Length> WetCoat(Length coat, string text, string where) =>
        coat.Micrometers is >= 1 and <= 1000 ? coat : QuantityProblems.NotASpread(text, where);
}
