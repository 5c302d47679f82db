namespace JarLabel.Layout.Fitting;

/// <summary>One wording: the most telling alternative that fits at the smallest size, then as large as there is room.</summary>
internal sealed class TextPart(Fit fit, TextBox box, Voice voice, Ladder ladder) : Part(fit, box.Frame)
{
    private readonly IReadOnlyList<string> wordings = fit.Text.Words.GetValueOrDefault(box.Word) ?? [];
    private readonly Typography type = new(fit.Ruler, ladder, fit.Sure(box.Face ?? voice.Face, ladder));
    private Paragraph? paragraph;
    private int wording;

    internal override int Count => wordings.Count == 0 ? 0 : 1;

    internal override IEnumerable<string> Moved => LeftOut > 0 ? Texts : [];

    internal override IEnumerable<string> Texts => wordings.Take(1);

    private Paragraph Paragraph => paragraph ??= Fit.ParagraphOf(wordings[wording], type.Face);

    /// <summary>Goes on to the next, shorter wording; false when there is none.</summary>
    internal bool Shorten()
    {
        if (wording + 1 >= wordings.Count)
            return false;
        wording++;
        paragraph = null;
        return true;
    }

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
        var lines = Paragraph.LinesAt(type.Points, area.Width);
        var piece = area.Piece(area.Width, type.HeightOf(lines.Count, box.Trim), Align.Start, Frame.Down);
        type.Set(Frame.Name, lines, piece, Frame.Across, ink, marks);
    }

    protected override double NaturalWidth() => Paragraph.WidthAt(type.Points);

    protected override double NaturalHeight(double width)
    {
        var lines = Paragraph.LinesAt(type.Points, width);
        if (lines.Count > box.Lines)
            Fit.NeedWidth(this, Paragraph.Text, Math.Max(Paragraph.WidthAt(type.Points) / box.Lines, width + (2 * Fit.Closeness)), width);
        Fit.NeedWidth(this, Paragraph.Text, Paragraph.WidestWordAt(type.Points), width);
        return type.HeightOf(lines.Count, box.Trim);
    }
}
