namespace JarLabel.Layout.Charts;

/// <summary>Lines of type on a drawing.</summary>
/// <param name="ruler">Measures text.</param>
internal sealed class ChartType(ITextRuler ruler)
{
    private const string Cut = " …";

    internal double Width(string words, Face face, double points) => ruler.Width(words, face, points);

    /// <summary>How far under its middle a line's baseline lies.</summary>
    internal double HalfCap(Face face, double points) => ruler.Measures(face).CapHeight * points * TypePoint.Millimetres / 2;

    internal static TextMark At(string box, double x, double baseline, string words, Face face, double points, Ink ink = Ink.Black) => new(box, x, baseline, words, face, points, ink);

    /// <summary>The line with its middle at <paramref name="x"/>.</summary>
    internal TextMark Centred(string box, double x, double baseline, string words, Face face, double points, Ink ink = Ink.Black) =>
        new(box, x - (Width(words, face, points) / 2), baseline, words, face, points, ink);

    /// <summary>The line with its end at <paramref name="right"/>.</summary>
    internal TextMark EndingAt(string box, double right, double baseline, string words, Face face, double points) =>
        new(box, right - Width(words, face, points), baseline, words, face, points, Ink.Black);

    /// <summary>The line in the largest of the sizes in which it has room; when in none, its words up to where it ends in dots.</summary>
    internal TextMark Within(string box, double x, double baseline, double width, string words, Face face, params ReadOnlySpan<double> sizes)
    {
        foreach (var size in sizes)
        {
            if (Width(words, face, size) <= width)
            {
                return At(box, x, baseline, words, face, size);
            }
        }

        var (all, shown) = (words.Split(' '), words.Split(' ').Length);
        while (shown > 1 && Width(string.Join(' ', all[..shown]) + Cut, face, sizes[^1]) > width)
        {
            shown--;
        }

        return At(box, x, baseline, Shortened(string.Join(' ', all[..shown]), width, face, sizes[^1]), face, sizes[^1]);
    }

    /// <summary>A single word that is too long is cut between letters.</summary>
    private string Shortened(string words, double width, Face face, double points)
    {
        var elements = new System.Globalization.StringInfo(words);
        var length = elements.LengthInTextElements;
        while (length > 1 && Width(elements.SubstringByTextElements(0, length) + Cut, face, points) > width)
        {
            length--;
        }

        return elements.SubstringByTextElements(0, length) + Cut;
    }
}
