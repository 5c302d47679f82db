namespace JarLabel.Core.Quantities;

/// <summary>Parts that people write as words before a unit: <c>half a pint</c>, <c>quarter cup</c>, <c>two thirds of a cup</c>.</summary>
internal static partial class NumberWords
{
    private static readonly Dictionary<string, string> Parts = new(StringComparer.OrdinalIgnoreCase)
    {
        ["half"] = "1/2",
        ["third"] = "1/3",
        ["two thirds"] = "2/3",
        ["quarter"] = "1/4",
        ["three quarters"] = "3/4",
    };

    /// <summary>The text with such a part at its start as a fraction: <c>1/2 pint</c>; where there is none, the text.</summary>
    /// <param name="text">Words with one blank between them.</param>
    internal static string AsFraction(string text) => Part().Match(text) is { Success: true } part ? $"{Parts[part.Groups[1].Value]} {text[part.Length..]}" : text;

    [GeneratedRegex("^(?:an? |one )?(half|third|two thirds|quarter|three quarters)(?: of)?(?: an?)? (?=[^ ])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Part();
}
