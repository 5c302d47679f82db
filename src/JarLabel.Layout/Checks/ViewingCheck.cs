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

    internal static IEnumerable<Problem> Problems(PlacedLabel label, Length distance, ITextRuler ruler) =>
        Texts(label, distance, ruler).Concat(Signs(label, distance)).DistinctBy(problem => problem.Where);

    private static IEnumerable<Problem> Texts(PlacedLabel label, Length distance, ITextRuler ruler)
    {
        foreach (var text in label.Marks.OfType<TextMark>().Where(text => Far.ContainsKey(text.Box)))
        {
            var height = ruler.Measures(text.Face).CapHeight * text.Points * TypePoint.Millimetres;
            if (height < distance.Millimeters / Far[text.Box])
                yield return LayoutProblems.LettersTooSmallFrom($"{label.Design.Id}/{text.Box}", height, distance.Meters, height * Far[text.Box] / 1000);
        }
    }

    private static IEnumerable<Problem> Signs(PlacedLabel label, Length distance)
    {
        foreach (var sign in label.Marks.OfType<PathMark>().GroupBy(path => (path.Box, path.X, path.Y, path.Scale)))
        {
            var height = HeightOf(sign);
            if (height < distance.Millimeters / DistanceFactor)
                yield return LayoutProblems.SignTooSmallFrom($"{label.Design.Id}/{sign.Key.Box}", height, distance.Meters, height * DistanceFactor / 1000);
        }
    }

    // A triangle is lower than the frame it is drawn in.
    private static double HeightOf(IEnumerable<PathMark> layers)
    {
        var heights = layers.SelectMany(layer => Pair().Matches(layer.Data).Select(pair => layer.Scale * double.Parse(pair.Groups[1].ValueSpan, CultureInfo.InvariantCulture))).ToList();
        return heights.Max() - heights.Min();
    }

    [GeneratedRegex(@"-?[\d.]+,(-?[\d.]+)")]
    private static partial Regex Pair();
}
