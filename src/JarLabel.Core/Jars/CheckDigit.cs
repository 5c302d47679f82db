namespace JarLabel.Core.Jars;

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
