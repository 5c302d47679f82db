namespace JarLabel.Render.Drawing;

/// <summary>The faces of a document whose pages are all known beforehand, with no more glyphs than those pages draw: Skia puts a whole
/// font into a PDF, five times as much as the rest of a label.</summary>
internal sealed class PartTypefaces : IDisposable
{
    private readonly Dictionary<Face, SKTypeface> parts = [];

    /// <param name="pages">All of them.</param>
    internal PartTypefaces(IEnumerable<Page> pages)
    {
        foreach (var face in pages.SelectMany(page => page.Marks).OfType<TextMark>().GroupBy(mark => mark.Face))
        {
            if (Load(face.Key, [.. face.Select(mark => mark.Text).Distinct()]) is { } part)
                parts.Add(face.Key, part);
        }
    }

    internal SKTypeface For(Face face) => parts.GetValueOrDefault(face) ?? Typefaces.For(face);

    public void Dispose()
    {
        foreach (var part in parts.Values)
            part.Dispose();
    }

    private static SKTypeface? Load(Face face, string[] texts)
    {
        var setter = Typesetter.For(face);
        var bytes = Subsetter.Part(
            FontFile.Of(face),
            texts.SelectMany(text => text.EnumerateRunes()).Select(letter => (uint)letter.Value),
            texts.SelectMany(text => setter.Set(text).Glyphs).Select(glyph => glyph.Number));
        if (bytes is null)
            return null;
        using var data = SKData.CreateCopy(bytes);
        return SKTypeface.FromData(data);
    }
}
