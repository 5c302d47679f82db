namespace JarLabel.Core.Quantities;

/// <summary>Reads a number as a bench writes it: <c>1</c>, <c>1.5</c>, <c>.5</c>, <c>0,5</c>, <c>1/2</c>, <c>1 1/2</c>, <c>1-1/2</c>,
/// <c>½</c>, <c>1½</c>. A comma
/// parts decimals only between two digits, so that it never swallows what it stands in front of. Always the same, whatever the machine's language; never a sign and never an exponent.</summary>
public static class NumberText
{
    private const char FractionSlash = '\u2044';

    /// <summary>Takes a number from the start of a text.</summary>
    /// <returns>The number and the rest of the text, or null where there is no number, or none that can mean one thing only.</returns>
    internal static (double Value, string After)? Take(string text)
    {
        text = text.TrimStart().Replace(FractionSlash, '/');
        if (TakeFraction(text) is { } fraction)
        {
            return fraction;
        }

        if (TakeDecimal(text) is not { } whole)
        {
            return null;
        }

        return IsWhole(text, whole.After) && TakeFraction(AfterJoin(whole.After)) is { } tail
            ? (whole.Value + tail.Value, tail.After)
            : whole;
    }

    /// <summary>True when a comma could part thousands as well as decimals, as in <c>1,500</c>.</summary>
    public static bool IsAmbiguous(string text)
    {
        var comma = text.IndexOf(',', StringComparison.Ordinal);
        var digitsAfter = text.Skip(comma + 1).TakeWhile(char.IsAsciiDigit).Count();
        return comma > 0 && digitsAfter == 3 && text[..comma].TrimStart().TrimStart('0').Length > 0;
    }

    /// <summary>True when a point could part thousands as well as decimals, as in <c>1.000</c>: three digits that end in 0, which nobody writes of
    /// a small unit who means decimals.</summary>
    public static bool MayPartThousands(string number) =>
        number.Length is > 4 and <= 7 && number[^4] == '.' && number[^1] == '0' && number[0] != '0' && number.Where(c => c != '.').All(char.IsAsciiDigit);

    private static bool IsWhole(string text, string rest) => text[..^rest.Length].All(char.IsAsciiDigit);

    private static string AfterJoin(string rest) => rest.StartsWith('-') ? rest[1..] : rest.TrimStart();

    private static (double Value, string After)? TakeFraction(string text)
    {
        if (text.Length > 0 && !char.IsAsciiDigit(text[0]) && char.GetNumericValue(text[0]) is > 0 and < 1)
        {
            return (char.GetNumericValue(text[0]), text[1..]);
        }

        var over = Digits(text);
        if (over.Length is 0 or > 6 || !text[over.Length..].StartsWith('/'))
        {
            return null;
        }

        var under = Digits(text[(over.Length + 1)..]);
        return under.Length is 0 or > 6 || Whole(under) == 0
            ? null
            : (Whole(over) / Whole(under), text[(over.Length + 1 + under.Length)..]);
    }

    private static (double Value, string After)? TakeDecimal(string text)
    {
        var whole = Digits(text);
        var rest = text[whole.Length..];
        var part = rest.Length > 0 && (rest[0] == '.' || (rest[0] == ',' && whole.Length > 0)) ? Digits(rest[1..]) : "";
        if (whole.Length + part.Length is 0 or > 15)
        {
            return null;
        }

        rest = part.Length > 0 ? rest[(part.Length + 1)..] : rest;
        var value = double.Parse($"0{whole}.{part}0", CultureInfo.InvariantCulture);
        return rest.Length > 0 && (rest[0] is '.' or ',' or '/' || char.IsAsciiDigit(rest[0])) ? null : (value, rest);
    }

    private static string Digits(string text) => new([.. text.TakeWhile(char.IsAsciiDigit)]);

    private static double Whole(string digits) => double.Parse(digits, CultureInfo.InvariantCulture);
}
