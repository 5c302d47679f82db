namespace JarLabel.Layout.Fitting;

/// <summary>Sentences in order of importance, as one running paragraph or a new line each; the last are left out first.</summary>
internal sealed class ListPart : Part
{
    private readonly ListBox box;
    private readonly IReadOnlyList<string> sentences;
    private readonly Typography type;
    private IReadOnlyList<Paragraph> paragraphs = [];
    private int set = -1;

    internal ListPart(Fit fit, ListBox box, Voice voice, Ladder ladder)
        : base(fit, box.Frame)
    {
        this.box = box;
        sentences = fit.Text.Lists.GetValueOrDefault(box.List) ?? [];
        type = new(fit.Ruler, ladder, fit.Sure(box.Face ?? voice.Face, ladder));
        fit.CutShort |= sentences.Count > box.Most;
    }

    internal override int Count => Math.Min(box.Most, sentences.Count);

    internal override int Least => box.Least;

    internal override IEnumerable<string> Moved => sentences.Skip(Count - LeftOut);

    internal override IEnumerable<string> Texts => sentences;

    internal override void Draw(Area area, Ink ink, List<Mark> marks)
    {
        var lines = Lines(area.Width);
        var piece = area.Piece(area.Width, type.HeightOf(lines.Count), Align.Start, Frame.Down);
        type.Set(Frame.Name, lines, piece, Frame.Across, ink, marks);
    }

    protected override double NaturalWidth() => Paragraphs().Max(paragraph => paragraph.WidthAt(type.Points));

    protected override double NaturalHeight(double width)
    {
        foreach (var paragraph in Paragraphs())
            Fit.NeedWidth(this, paragraph.Text, paragraph.WidestWordAt(type.Points), width);
        return type.HeightOf(Lines(width).Count);
    }

    private IReadOnlyList<string> Lines(double width) => Paragraphs() is [var only]
        ? only.LinesAt(type.Points, width)
        : [.. Paragraphs().SelectMany(paragraph => paragraph.LinesAt(type.Points, width))];

    private IReadOnlyList<Paragraph> Paragraphs()
    {
        var count = Count - LeftOut;
        if (set == count)
            return paragraphs;
        set = count;
        var shown = sentences.Take(count).Select(Ended);
        IEnumerable<string> texts = box.Running ? [string.Join(' ', shown)] : shown;
        return paragraphs = [.. texts.Select(text => Fit.ParagraphOf(text, type.Face))];
    }

    // Hazard statements are printed without a full stop in the rules; in a row of sentences they need one.
    private string Ended(string sentence) => !box.Running || sentence.EndsWith('.') ? sentence : sentence + ".";
}

/// <summary>Texts measured before: most words of a run of labels are the same on all of them. Belongs to one thread.</summary>
internal sealed class Paragraphs(ITextRuler ruler)
{
    // A few sheets' worth; a longer run of different texts starts anew instead of growing.
    private const int Most = 2000;

    private readonly Dictionary<(string Text, Face Face), Paragraph> known = [];

    internal ITextRuler Ruler => ruler;

    internal Paragraph Of(string text, Face face)
    {
        if (known.TryGetValue((text, face), out var paragraph))
            return paragraph;
        if (known.Count >= Most)
            known.Clear();
        return known[(text, face)] = new Paragraph(text, face, ruler);
    }
}
