namespace JarLabel.Layout;

/// <summary>What people write themselves - jobs, names, notes - before the label typeface. What it cannot draw is refused where it is typed;
/// where it is on record already a visible sign stands for it, so that no old word keeps a jar from its label.</summary>
public static class OwnWords
{
    /// <summary>What is printed for each character that cannot be drawn.</summary>
    public const string StandIn = "?";

    private static readonly string[] Keys = ["job", "note", "by"];

    private static readonly string[] Tables = ["history"];

    private static readonly Face[] Faces = Enum.GetValues<Face>();

    /// <summary>The text, unless a label could not show all of it.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="where">The option it was typed for.</param>
    /// <param name="ruler">Knows the typeface.</param>
    public static Result<string> Demand(string text, string where, ITextRuler ruler) =>
        Missing([text], ruler) is [var first, ..] ? LayoutProblems.MissingGlyph(where, first, text) : text;

    /// <summary>Every character in these texts that some weight of the typeface cannot draw, each once.</summary>
    public static IReadOnlyList<string> Missing(IEnumerable<string?> texts, ITextRuler ruler)
    {
        return [.. texts.OfType<string>().Where(text => !IsDrawn(text, ruler)).SelectMany(Elements).Where(element => !IsDrawn(element, ruler)).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>The same label with a stand-in for each character of people's own words that cannot be drawn.</summary>
    public static LabelText Drawn(LabelText text, ITextRuler ruler)
    {
        return text with
        {
            Words = With(text.Words, Keys, wordings => [.. wordings.Select(Drawn)]),
            Tables = With(text.Tables, Tables, rows => [.. rows.Select(row => (IReadOnlyList<string>)[.. row.Select(Drawn)])]),
        };

        string Drawn(string words) => IsDrawn(words, ruler) ? words : string.Concat(Elements(words).Select(element => IsDrawn(element, ruler) ? element : StandIn));
    }

    // The plain signs of a keyboard are in every typeface; they are the usual case, and no font is opened for them.
    private static bool IsDrawn(string text, ITextRuler ruler) =>
        !text.AsSpan().ContainsAnyExceptInRange(' ', '~') || (!text.Any(char.IsControl) && Faces.All(face => ruler.FirstMissing(text, face) is null));

    private static Dictionary<string, T> With<T>(IReadOnlyDictionary<string, T> all, IEnumerable<string> keys, Func<T, T> change)
    {
        var changed = new Dictionary<string, T>(all, StringComparer.Ordinal);
        foreach (var key in keys.Where(changed.ContainsKey))
        {
            changed[key] = change(changed[key]);
        }

        return changed;
    }

    private static IEnumerable<string> Elements(string text)
    {
        var elements = StringInfo.GetTextElementEnumerator(text);
        while (elements.MoveNext())
        {
            yield return elements.GetTextElement();
        }
    }
}
