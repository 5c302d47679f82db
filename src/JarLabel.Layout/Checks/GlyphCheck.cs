using JarLabel.Core;
using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Checks;

/// <summary>Finds what the typeface cannot draw.</summary>
internal static class GlyphCheck
{
    internal static IEnumerable<Problem> Problems(string design, IEnumerable<SetText> texts, ITextRuler ruler)
    {
        foreach (var (mark, _) in texts)
        {
            foreach (var problem in OfText($"{design}/{mark.Box}", mark.Text, [mark.Face], ruler))
                yield return problem;
        }
    }

    internal static IEnumerable<Problem> OfText(string where, string text, IEnumerable<Face> faces, ITextRuler ruler)
    {
        var control = text.FirstOrDefault(char.IsControl);
        foreach (var face in faces)
        {
            if (control != default)
                yield return LayoutProblems.ControlCharacter(where, control, text);
            else if (ruler.FirstMissing(text, face) is { } missing)
                yield return LayoutProblems.MissingGlyph(where, missing, text);
        }
    }
}
