namespace JarLabel.Operations.Answers;

/// <summary>The same words for a pipe or a terminal without typography: our own signs spelled out, the user's letters left alone.</summary>
internal static class PlainAscii
{
    private static readonly Dictionary<char, string> Spelled = new()
    {
        ['½'] = "1/2",
        ['¼'] = "1/4",
        ['¾'] = "3/4",
        ['⅓'] = "1/3",
        ['⅔'] = "2/3",
        ['⅛'] = "1/8",
        ['⅜'] = "3/8",
        ['⅝'] = "5/8",
        ['⅞'] = "7/8",
        ['≈'] = "about",
        ['·'] = "-",
        ['×'] = "x",
        ['–'] = "-",
        ['—'] = "-",
        ['→'] = "->",
        ['°'] = "deg",
        ['µ'] = "u",
        ['³'] = "3",
        ['²'] = "2",
        ['≥'] = ">=",
        ['≤'] = "<=",
    };

    internal static string Of(string text)
    {
        var plain = new StringBuilder(text.Length);
        for (var place = 0; place < text.Length; place++)
        {
            var sign = text[place];
            if (!Spelled.TryGetValue(sign, out var spelled))
            {
                plain.Append(sign);
                continue;
            }

            var afterDigit = plain.Length > 0 && char.IsAsciiDigit(plain[^1]) && (sign == '°' || spelled.Contains('/', StringComparison.Ordinal));
            plain.Append(afterDigit ? " " : "").Append(spelled);

            // Of a temperature the scale follows; of an angle nothing does.
            if (sign == '°' && place + 1 < text.Length && char.IsLetter(text[place + 1]))
            {
                plain.Append(' ');
            }
        }

        return plain.ToString();
    }
}
