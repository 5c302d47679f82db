namespace JarLabel.Layout.Sheets;

/// <summary>Reads one sheet file. The members are described in <c>layouts/README.md</c>.</summary>
public static class SheetReader
{
    // A cut tolerance is larger than this; it forgives dimensions rounded from inches.
    private const double Rounding = 0.02;

    private const double LongestPaper = 2000;
    private static readonly Dictionary<string, bool> Inks = new(StringComparer.Ordinal) { ["black"] = true, ["color"] = false };

    /// <summary>Reads and checks it: the labels lie on the paper and do not overlap.</summary>
    /// <param name="file">The file's name; without its folder and ending it must be the sheet's id.</param>
    /// <param name="utf8">The file's bytes.</param>
    public static Result<Sheet> Read(string file, ReadOnlyMemory<byte> utf8) =>
        StrictJson.ReadObject(file, LayoutProblems.SheetFile, utf8, fields => Checked(fields, file, Take(fields)));

    private static Sheet Take(FieldReader fields)
    {
        LayoutKeywords.Schema(fields);
        var (paperWidth, paperHeight) = fields.Member("paper", paper => (Length(paper, "width"), Length(paper, "height")));
        var width = Length(fields, "width");
        var height = Length(fields, "height");
        return new Sheet(
            fields.Text("id"),
            fields.Text("title"),
            paperWidth,
            paperHeight,
            fields.Choice("shape", LayoutKeywords.Shapes),
            width,
            height,
            fields.OptionalNumber("corner", 0, 30) ?? 0,
            fields.OptionalNumber("left", 0, LongestPaper) ?? 0,
            fields.OptionalNumber("top", 0, LongestPaper) ?? 0,
            fields.OptionalNumber("pitchX", 1, LongestPaper) ?? width,
            fields.OptionalNumber("pitchY", 1, LongestPaper) ?? height,
            LayoutKeywords.Optional(fields, "columns", 1, 50, 1),
            LayoutKeywords.Optional(fields, "rows", 1, 100, 1),
            LayoutKeywords.Optional(fields, "dpi", 150, 2400, 300),
            fields.Text("design"),
            fields.Text("source"))
        {
            BlackOnly = fields.Has("ink") && fields.Choice("ink", Inks),
        };
    }

    private static double Length(FieldReader fields, string name) => fields.Number(name, 5, LongestPaper);

    private static Sheet Checked(FieldReader fields, string file, Sheet sheet)
    {
        if (sheet.Id != Path.GetFileNameWithoutExtension(file))
            fields.Refuse("id", LayoutProblems.IdIsNotFileName(sheet.Id, file));
        if (sheet.Shape == LabelShape.Round && sheet.Width != sheet.Height)
            fields.Refuse("height", LayoutProblems.RoundIsNotRound(sheet.Width, sheet.Height));
        CheckAxis(fields, new Axis("columns", "pitchX", "paper width"), sheet.Columns, sheet.PitchX, sheet.Left, sheet.Width, sheet.PaperWidth);
        CheckAxis(fields, new Axis("rows", "pitchY", "paper height"), sheet.Rows, sheet.PitchY, sheet.Top, sheet.Height, sheet.PaperHeight);
        return sheet;
    }

    private static void CheckAxis(FieldReader fields, Axis axis, int count, double pitch, double start, double label, double paper)
    {
        if (count > 1 && pitch < label - Rounding)
            fields.Refuse(axis.Pitch, LayoutProblems.LabelsOverlap(pitch, label));
        var end = start + ((count - 1) * pitch) + label;
        if (end > paper + Rounding)
            fields.Refuse(axis.Count, LayoutProblems.LabelsLeavePaper(axis.Paper, end, paper));
    }

    private readonly record struct Axis(string Count, string Pitch, string Paper);
}
