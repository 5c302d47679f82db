namespace JarLabel.Core.Quantities;

/// <summary>Reads how far a liquid spreads: <c>400 sqft/gal</c>, <c>9 m2/L</c>. The thickness of the wet coat follows.</summary>
public static class SpreadText
{
    /// <summary>The wet coat that the spread means; from a micrometre to a millimetre.</summary>
    public static Result<Length> Read(string text, string where)
    {
        return text.Split('/') is [var area, var volume]
            ? AreaText.Read(area, where).Then(a => VolumeText.ReadPart(NumberText.Take(volume) is null ? "1 " + volume : volume, where).Then(v => WetCoat(v / a, text, where)))
            : QuantityProblems.NotASpread(text, where);
    }

    private static Result<Length> WetCoat(Length coat, string text, string where) =>
        coat.Micrometers is >= 1 and <= 1000 ? coat : QuantityProblems.NotASpread(text, where);
}

/// <summary>Reads an area: <c>14 sq ft</c>, <c>1.3 m2</c>, <c>30 x 20 in</c>.</summary>
public static class AreaText
{
    private const double Most = 1e8;

    /// <summary>More than nothing, at most ten thousand square metres.</summary>
    public static Result<Area> Read(string text, string where) =>
        DimensionsText.OrAmount(text, UnitKind.Area, 2, Most, where).Then<Area>(size => Area.FromSquareCentimeters(size));
}
