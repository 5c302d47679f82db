using System.Globalization;

namespace JarLabel.Benchmarks.Labels;

/// <summary>What every contestant draws: thirty labels on a Letter sheet, each with five lines and a code of its own.</summary>
internal static class Content
{
    internal const int PerPage = 30;
    internal const double PageWidth = 215.9;
    internal const double PageHeight = 279.4;
    internal const double Module = 0.508;

    private static readonly (double Y, Face Face, double Points)[] Places =
        [(7, Face.Bold, 14), (11, Face.SemiBold, 9), (15, Face.Regular, 8), (19, Face.Regular, 8), (22.5, Face.Regular, 7)];

    /// <summary>The left top corner of a label, mm.</summary>
    internal static (double X, double Y) Corner(int label)
    {
        var place = label % PerPage;
        return (4.7625 + (place % 3 * 69.85), 12.7 + (place / 3 * 25.4));
    }

    /// <summary>Where the code's first module stands, mm.</summary>
    internal static (double X, double Y) CodeCorner(int label) => (Corner(label).X + 48, Corner(label).Y + 4);

    internal static string Payload(int label) => string.Create(CultureInfo.InvariantCulture, $"HTTP://192.168.1.20:5080/J/{label + 1}-5.1");

    /// <summary>The five lines; two differ from label to label.</summary>
    internal static IEnumerable<TextMark> Lines(int label)
    {
        var (x, y) = Corner(label);
        return Places.Zip(Texts(label), (place, text) => new TextMark("line", x + 2, y + place.Y, text, place.Face, place.Points, Ink.Black));
    }

    private static string[] Texts(int label) =>
    [
        "1½ lb cut",
        "Garnet, dewaxed",
        "mixed 9 Mar 2026",
        string.Create(CultureInfo.InvariantCulture, $"use by ≈ {(label % 28) + 1} Nov 2026"),
        string.Create(CultureInfo.InvariantCulture, $"Jar {label + 1}-5 · 180 g/L · ethanol 95 %"),
    ];
}
