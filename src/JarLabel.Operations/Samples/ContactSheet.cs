namespace JarLabel.Operations.Samples;

/// <summary>All designs at their true size on one large page, each with the words of the same invented jar, to see the family at a look.</summary>
public static class ContactSheet
{
    private const string Box = "contact";
    private const double Edge = 15;
    private const double Head = 24;
    private const double Line = 0.2;
    private const int Usual = 300;
    private const int Thermal = 203;

    /// <summary>Writes the page and says where.</summary>
    /// <param name="bench">The shop; its own designs are shown with ours.</param>
    /// <param name="file">The file: PDF, PNG or SVG.</param>
    /// <param name="mono">As a thermal printer shows them.</param>
    public static Result<string> Write(Workbench bench, string file, bool mono)
    {
        return Draw(bench, mono).Then(page => LabelFiles.Bytes(file, [page], "Label designs", bench.Now)).Then(bytes => LedgerAccess.Record<string>(bench, step =>
        {
            step.Write(bench, file, bytes);
            return file;
        }));
    }

    /// <summary>The page, or why a design cannot show the jar.</summary>
    public static Result<Page> Draw(Workbench bench, bool mono)
    {
        return LabelComposer.Open(bench).Then(composer => composer.Designs()).Then(designs => SampleTexts.Of(bench).Then(texts => Drawn(designs, texts, mono)));
    }

    private static Result<Page> Drawn(IReadOnlyList<Design> designs, SampleTexts texts, bool mono)
    {
        var (shown, width, height) = ContactPlan.Of(designs);
        var (marks, problems, ruler) = (new List<Mark>(Title(designs.Count, mono)), new List<Problem>(), new SkiaRuler());
        foreach (var (design, x, y) in shown)
        {
            var area = new LabelArea(design.Shape, Edge + x, Edge + Head + y, design.Width, design.Height, mono ? Thermal : Usual) { BlackOnly = mono };
            if (Composer.Place(texts.For(design.Id), design, area, ruler).TryGet(out var label, out var faults))
            {
                marks.AddRange([.. label.Marks, .. Outline(area), .. Caption(design, area, ruler)]);
            }

            problems.AddRange(faults);
        }

        return problems.Count > 0 ? Result<Page>.Failed(problems) : new Page(width + (2 * Edge), height + Head + (2 * Edge), marks) { OneBitDpi = mono ? Thermal : null };
    }

    private static IEnumerable<Mark> Title(int count, bool mono) =>
    [
        new TextMark(Box, Edge, Edge + 8, "Label designs", Face.Bold, 28, Ink.Black),
        new TextMark(Box, Edge, Edge + 15, mono
            ? $"{count} designs at their true size with the words of one invented jar, as a printer with black only and {Thermal} dots to the inch prints them"
            : $"{count} designs at their true size with the words of one invented jar", Face.Regular, 12, Ink.Black),
    ];

    /// <summary>The name below the label and what it measures.</summary>
    private static IEnumerable<Mark> Caption(Design design, LabelArea area, SkiaRuler ruler)
    {
        var baseline = area.Y + area.Height + ContactPlan.Caption - 2;
        yield return new TextMark(Box, area.X, baseline, design.Id, Face.SemiBold, 9, Ink.Black);
        yield return new TextMark(Box, area.X + ruler.Width(design.Id, Face.SemiBold, 9) + 2, baseline, Measures(design), Face.Regular, 9, Ink.Black);
    }

    private static string Measures(Design design) => design.Shape == LabelShape.Round
        ? string.Create(CultureInfo.InvariantCulture, $"{design.Width:0.#} mm across")
        : string.Create(CultureInfo.InvariantCulture, $"{design.Width:0.#} × {design.Height:0.#} mm");

    /// <summary>The label's edge, just outside it.</summary>
    private static IEnumerable<Mark> Outline(LabelArea area)
    {
        var (x, y, width, height) = (area.X - Line, area.Y - Line, area.Width + (2 * Line), area.Height + (2 * Line));
        return area.Shape == LabelShape.Round
            ? [new PathMark(Box, x, y, width / 100, Ring(100 * Line / width), Ink.Black)]
            :
            [
                new BarMark(Box, x, y, width, Line, Ink.Black),
                new BarMark(Box, x, y + height - Line, width, Line, Ink.Black),
                new BarMark(Box, x, y, Line, height, Ink.Black),
                new BarMark(Box, x + width - Line, y, Line, height, Ink.Black),
            ];
    }

    // Two circles in a frame of 100; between them is ink.
    private static string Ring(double thick) => string.Create(CultureInfo.InvariantCulture,
        $"M50,0A50,50,0,1,1,50,100A50,50,0,1,1,50,0ZM50,{thick:0.###}A{50 - thick:0.###},{50 - thick:0.###},0,1,0,50,{100 - thick:0.###}A{50 - thick:0.###},{50 - thick:0.###},0,1,0,50,{thick:0.###}Z");
}
