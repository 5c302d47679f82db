namespace JarLabel.Layout.Checks;

/// <summary>Finds what the typeface cannot draw.</summary>
internal static class GlyphCheck
{
    internal static IEnumerable<Problem> Problems(string design, IEnumerable<SetText> texts, ITextRuler ruler)
    {
        foreach (var (mark, _) in texts)
        {
            var where = $"{design}/{mark.Box}";
            var control = mark.Text.FirstOrDefault(char.IsControl);
            if (control != default)
                yield return LayoutProblems.ControlCharacter(where, control, mark.Text);
            else if (ruler.FirstMissing(mark.Text, mark.Face) is { } missing)
                yield return LayoutProblems.MissingGlyph(where, missing, mark.Text);
        }
    }
}

/// <summary>A line of text and the room it takes.</summary>
internal readonly record struct SetText(TextMark Mark, Extent Extent);
