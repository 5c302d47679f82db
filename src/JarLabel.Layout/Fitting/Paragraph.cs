namespace JarLabel.Layout.Fitting;

/// <summary>One text, measured once and broken into lines at any size and width. Type scales evenly, so widths are kept per point.
/// Lines break at spaces only; a no-break space (U+00A0) holds. A dot between two parts is left out where the line breaks at it.</summary>
internal sealed class Paragraph
{
    // A voice has a few sizes and a design a few widths; more would be an odd run of labels.
    private const int MostKept = 32;

    /// <summary>Stands between two parts of one line; at a line's end or beginning it parts nothing.</summary>
    internal const string Between = "·";

    private readonly string[] words;
    private readonly double[] widths;
    private readonly double whole;
    private readonly double space;
    private readonly Dictionary<(double Points, double Width), IReadOnlyList<string>> broken = [];

    internal Paragraph(string text, Face face, ITextRuler ruler)
    {
        Text = text;
        Face = face;
        words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        whole = ruler.Width(text, face, 1);
        widths = words.Length == 1 ? [whole] : [.. words.Select(word => ruler.Width(word, face, 1))];
        space = ruler.Width(" ", face, 1);
    }

    internal string Text { get; }

    internal Face Face { get; }

    /// <summary>Width on one line, mm.</summary>
    internal double WidthAt(double points) => whole * points;

    /// <summary>Width of its longest word, mm.</summary>
    internal double WidestWordAt(double points) => widths.DefaultIfEmpty().Max() * points;

    /// <summary>The lines at this width. A word that is wider stands alone on its line and sticks out.</summary>
    internal IReadOnlyList<string> LinesAt(double points, double width)
    {
        if (broken.TryGetValue((points, width), out var lines))
            return lines;
        if (broken.Count >= MostKept)
            broken.Clear();
        return broken[(points, width)] = Break(points, width);
    }

    private List<string> Break(double points, double width)
    {
        if (WidthAt(points) <= width + Fit.Closeness)
            return [Text];
        var lines = new List<string>();
        for (var from = 0; from < words.Length;)
        {
            var to = LineEnd(from, (width + Fit.Closeness) / points);
            var last = to < words.Length && to - from > 1 && words[to - 1] == Between ? to - 1 : to;
            lines.Add(string.Join(' ', words[from..last]));
            from = to < words.Length - 1 && words[to] == Between ? to + 1 : to;
        }

        return lines;
    }

    private int LineEnd(int from, double width)
    {
        var to = from + 1;
        for (var used = widths[from]; to < words.Length && used + space + widths[to] <= width; to++)
            used += space + widths[to];
        return to;
    }
}
