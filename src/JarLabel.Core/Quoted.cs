namespace JarLabel.Core;

/// <summary>What was read, as messages show it.</summary>
public static class Quoted
{
    private const int Longest = 60;

    /// <summary>The text in quotes, with what cannot be seen made visible, and cut when it is long.</summary>
    public static string Of(string read)
    {
        var shown = new StringBuilder("\"");
        foreach (var rune in read.EnumerateRunes().Take(Longest))
        {
            shown.Append(Rune.IsControl(rune) ? "\uFFFD" : rune.ToString());
        }

        return shown.Append(read.Length > Longest ? "...\"" : "\"").ToString();
    }
}
