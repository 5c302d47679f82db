namespace JarLabel.Core.Jars;

/// <summary>A running number, 1 to 999 999 999, with its check digit behind a hyphen.</summary>
internal static class CheckedNumber
{
    internal const int Highest = 999_999_999;

    /// <summary>The number itself; throws where it is none.</summary>
    internal static int Demand(int value)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, Highest);
        return value;
    }

    /// <summary><c>142-5</c>.</summary>
    internal static string Write(int value) => $"{Digits(value)}-{Check(value)}";

    /// <summary>Reads <c>142</c> or <c>142-5</c>.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="value">The bare number.</param>
    /// <param name="fits">False when a check digit was typed that does not belong to it.</param>
    internal static bool TryRead(string text, out int value, out bool fits)
    {
        var parts = text.Trim().Split('-');
        var read = int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out value) && parts.Length <= 2 && value is >= 1 and <= Highest;
        fits = read && (parts.Length == 1 || parts[1] == Check(value));
        return read;
    }

    private static string Digits(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Check(int value) => CheckDigit.Of(Digits(value)).ToString(CultureInfo.InvariantCulture);
}

/// <summary>The check digit of ISO/IEC 7064 MOD 11,10: it finds every single wrong digit and nearly every swap of two.</summary>
public static class CheckDigit
{
    /// <summary>The digit that belongs behind a number of decimal digits.</summary>
    public static int Of(ReadOnlySpan<char> digits)
    {
        var product = 10;
        foreach (var digit in digits)
        {
            var sum = (product + (digit - '0')) % 10;
            product = (sum == 0 ? 10 : sum) * 2 % 11;
        }

        return (11 - product) % 10;
    }
}
