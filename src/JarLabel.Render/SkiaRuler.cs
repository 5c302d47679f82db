using JarLabel.Layout;

namespace JarLabel.Render;

/// <summary>Measures text with the very glyphs and kerning that the renderers draw. Measured lines are remembered for the whole process;
/// any number of rulers may be used from any thread. Measuring loads HarfBuzz and one font file, never Skia.</summary>
public sealed class SkiaRuler : ITextRuler
{
    /// <inheritdoc/>
    public double Width(string text, Face face, double points) =>
        Typesetter.For(face).Set(text).Width * Measure.Millimetres(points) / Typesetter.Em;

    /// <inheritdoc/>
    public FaceMeasures Measures(Face face) => Typesetter.For(face).Measures;

    /// <inheritdoc/>
    public string? FirstMissing(string text, Face face)
    {
        var typesetter = Typesetter.For(face);
        return typesetter.Set(text).Complete ? null : Elements(text).FirstOrDefault(element => !typesetter.Set(element).Complete);
    }

    private static IEnumerable<string> Elements(string text)
    {
        for (var at = 0; at < text.Length; at += StringInfo.GetNextTextElementLength(text, at))
            yield return StringInfo.GetNextTextElement(text, at);
    }
}
