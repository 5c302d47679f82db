using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Fitting;

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
