using System.Text.RegularExpressions;
using UnitsNet;

namespace JarLabel.Layout.Checks;

/// <summary>Finds what on a wall sign is too small for the distance it is to be read from. Signs by <c>D = Z h</c> with Z = 57 (ISO 3864-1,
/// annex A), the height measured on the drawing itself; capitals 5 mm to the metre; the signal word 1 to 150 (ANSI Z535, annexes).</summary>
internal static partial class ViewingCheck
{
    /// <summary>Distance over height of a sign.</summary>
    internal const double DistanceFactor = 57;

    /// <summary>Distance over height of the capitals that are read from there.</summary>
    internal const double CapitalFactor = 200;

    /// <summary>Distance over height of the signal word.</summary>
    internal const double SignalFactor = 150;

    // What is read from across the room, by what it says; everything else is for whoever steps closer.
    private static readonly Dictionary<string, double> Far = new(StringComparer.Ordinal)
    {
        ["danger"] = SignalFactor,
        ["warning"] = SignalFactor,
        ["sentences"] = CapitalFactor,
    };

    internal static IEnumerable<Problem> Problems(PlacedLabel label, Length distance, ITextRuler ruler)
    {
        (string Box, double Height, double Factor)[] seen = [.. Texts(label, ruler), .. Signs(label)];

        // Whoever asks for the distance that is told must not be refused for another sign then: all of them are surely read from there.
        var all = seen.Length == 0 ? 0 : Math.Floor(10 * seen.Min(one => one.Height * one.Factor / 1000)) / 10;
        return seen.Where(one => one.Height < distance.Millimeters / one.Factor)
            .Select(one => Far.ContainsKey(one.Box)
                ? LayoutProblems.LettersTooSmallFrom($"{label.Design.Id}/{one.Box}", one.Height, distance.Meters, all)
                : LayoutProblems.SignTooSmallFrom($"{label.Design.Id}/{one.Box}", one.Height, distance.Meters, all))
            .DistinctBy(problem => problem.Where);
    }

    private static IEnumerable<(string Box, double Height, double Factor)> Texts(PlacedLabel label, ITextRuler ruler) => label.Marks.OfType<TextMark>()
        .Where(text => Far.ContainsKey(text.Box))
        .Select(text => (text.Box, ruler.Measures(text.Face).CapHeight * text.Points * TypePoint.Millimetres, Far[text.Box]));

    private static IEnumerable<(string Box, double Height, double Factor)> Signs(PlacedLabel label) => label.Marks.OfType<PathMark>()
        .GroupBy(path => (path.Box, path.X, path.Y, path.Scale))
        .Select(sign => (sign.Key.Box, HeightOf(sign), DistanceFactor));

    // A triangle is lower than the frame it is drawn in.
    private static double HeightOf(IEnumerable<PathMark> layers)
    {
        var heights = layers.SelectMany(layer => Pair().Matches(layer.Data).Select(pair => layer.Scale * double.Parse(pair.Groups[1].ValueSpan, CultureInfo.InvariantCulture))).ToList();
        return heights.Max() - heights.Min();
    }

    [GeneratedRegex(@"-?[\d.]+,(-?[\d.]+)")]
    private static partial Regex Pair();
}
