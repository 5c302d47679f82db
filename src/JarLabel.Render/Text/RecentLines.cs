namespace JarLabel.Render.Text;

/// <summary>The lines shaped lately, so that fitting and then drawing a label shapes each line once, and the words that every label
/// shares are shaped once in all. Bounded: memory stays flat however many labels pass. Safe to use from several threads.</summary>
internal sealed class RecentLines
{
    private const int Generation = 4096;
    private readonly Lock gate = new();
    private Dictionary<string, ShapedLine> young = new(StringComparer.Ordinal);
    private Dictionary<string, ShapedLine> old = new(StringComparer.Ordinal);

    internal ShapedLine? Find(string text)
    {
        lock (gate)
        {
            if (young.TryGetValue(text, out var line))
                return line;
            if (old.TryGetValue(text, out line))
                Add(text, line);
            return line;
        }
    }

    internal ShapedLine Keep(string text, ShapedLine line)
    {
        lock (gate)
            Add(text, line);
        return line;
    }

    private void Add(string text, ShapedLine line)
    {
        if (young.Count >= Generation)
            (old, young) = (young, new(Generation, StringComparer.Ordinal));
        young[text] = line;
    }
}

/// <summary>One line of text as glyphs, in font units (<see cref="Typesetter.Em"/> to the type size).</summary>
/// <param name="Glyphs">The glyphs in drawing order.</param>
/// <param name="Width">Advance width of the whole line.</param>
/// <param name="Legible">True when a reader of the PDF finds the text again from the glyphs alone.</param>
/// <param name="Complete">False when some character has no glyph.</param>
internal sealed record ShapedLine(IReadOnlyList<ShapedGlyph> Glyphs, int Width, bool Legible, bool Complete);
