namespace JarLabel.Core.Text;

/// <summary>Reads a name, a job or a note that somebody typed: one line, nothing invisible in it.</summary>
public static class PlainText
{
    /// <summary>A letter is written with at most so many signs, its marks among them.</summary>
    private const int MostSigns = 16;

    /// <summary>The text with its white space folded; a problem when it is empty, too long, or holds characters that cannot be seen.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="longest">Most characters as a reader counts them.</param>
    /// <param name="where">The option it was typed for.</param>
    public static Result<string> Read(string text, int longest, string where)
    {
        var line = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (line.Length == 0)
        {
            return TextProblems.Empty(where);
        }

        if (line.EnumerateRunes().Where(IsInvisible).Cast<Rune?>().FirstOrDefault() is { } hidden)
        {
            return TextProblems.Invisible(text, hidden, where);
        }

        var length = new StringInfo(line).LengthInTextElements;
        return length <= longest && line.Length <= longest * MostSigns ? line.Normalize(NormalizationForm.FormC) : TextProblems.TooLong(line, length, longest, where);
    }

    /// <summary>Control characters, marks that turn the direction of what follows, and halves of characters.</summary>
    private static bool IsInvisible(Rune rune) => Rune.IsControl(rune)
        || rune == Rune.ReplacementChar
        || rune.Value is 0xFEFF
        || TurnsDirection(rune);

    /// <summary>A mark that turns the direction of what follows (Unicode, bidirectional formatting characters).</summary>
    internal static bool TurnsDirection(Rune rune) => rune.Value is 0x061C or 0x200E or 0x200F or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);
}

/// <summary>What can be wrong with a name, a job or a note.</summary>
internal static class TextProblems
{
    internal static Problem Empty(string where) => new("JL191", "Read an empty text; write something, or leave the option out.", where);

    internal static Problem Invisible(string read, Rune hidden, string where) => new(
        "JL192",
        string.Create(CultureInfo.InvariantCulture, $"Read {Quoted.Of(read)}, which holds a character that cannot be seen or printed (U+{hidden.Value:X4}). Letters, digits, spaces and punctuation are allowed, for example \"viola top, second coat\"."),
        where);

    internal static Problem TooLong(string read, int length, int longest, string where) => new(
        "JL193",
        string.Create(CultureInfo.InvariantCulture, $"Read a text of {length} characters, {Quoted.Of(read)}; at most {longest} are allowed here. Put the rest into a note."),
        where);
}
