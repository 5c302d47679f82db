namespace JarLabel.Core;

/// <summary>Words as a sentence or a title begins with them.</summary>
public static class Capital
{
    /// <summary><c>garnet, dewaxed</c> as <c>Garnet, dewaxed</c>.</summary>
    /// <param name="words">At least one character.</param>
    public static string Of(string words)
    {
        ArgumentException.ThrowIfNullOrEmpty(words);
        return char.ToUpperInvariant(words[0]) + words[1..];
    }
}
