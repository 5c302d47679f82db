using JarLabel.Core.Text;

namespace JarLabel.Core;

/// <summary>What was read, as messages show it.</summary>
public static class Quoted
{
    private const int Longest = 60;

    /// <summary>The text in quotes, with what cannot be seen made visible, and cut between two characters when it is long.</summary>
    public static string Of(string read)
    {
        var characters = StringInfo.ParseCombiningCharacters(read);
        return characters.Length > Longest ? $"\"{Visible(read[..characters[Longest]])}...\"" : $"\"{Visible(read)}\"";
    }

    /// <summary>The text with what cannot be seen made visible: a control character as a sign of its own, a mark that turns the direction of
    /// what follows by its number.</summary>
    public static string Visible(string read)
    {
        var shown = new StringBuilder();
        foreach (var rune in read.EnumerateRunes())
        {
            shown.Append(Rune.IsControl(rune) ? "\uFFFD" : PlainText.TurnsDirection(rune) ? string.Create(CultureInfo.InvariantCulture, $"<U+{rune.Value:X4}>") : rune.ToString());
        }

        return shown.ToString();
    }
}
