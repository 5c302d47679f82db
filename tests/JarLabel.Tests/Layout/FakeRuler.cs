namespace JarLabel.Tests.Layout;

/// <summary>A ruler one can check by hand: every character is half its type size wide, bold ones a tenth wider.</summary>
public sealed class FakeRuler : ITextRuler
{
    public const double MillimetresPerPoint = 25.4 / 72;

    public double Width(string text, Face face, double points) =>
        text.Length * points * MillimetresPerPoint * (face == Face.Bold ? 0.55 : 0.5);

    public FaceMeasures Measures(Face face) => new(1.0, 0.25, 0.7, 0.5);

    /// <summary>It has what lies below U+2600: letters and signs, no emoji.</summary>
    public string? FirstMissing(string text, Face face)
    {
        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            var element = elements.GetTextElement();
            if (char.ConvertToUtf32(element, 0) >= 0x2600)
                return element;
        }

        return null;
    }
}
