using System.Globalization;

namespace JarLabel.Core.Jars;

/// <summary>The number of a jar: 1 to 999 999 999, written with its check digit behind a hyphen, <c>142-5</c>. <c>default</c> is no jar.</summary>
public readonly record struct JarNumber : IComparable<JarNumber>
{
    private const int Highest = 999_999_999;

    private JarNumber(int value) => Value = value;

    /// <summary>The bare number.</summary>
    public int Value { get; }

    /// <summary>Takes a bare number; throws below 1 and above 999 999 999.</summary>
    public static JarNumber From(int value)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, Highest);
        return new JarNumber(value);
    }

    /// <summary>Reads <c>142</c> or <c>142-5</c>; a wrong check digit is refused.</summary>
    public static Result<JarNumber> Read(string text, string where)
    {
        ArgumentNullException.ThrowIfNull(text);
        var parts = text.Trim().Split('-');
        if (parts.Length > 2 || !TryDigits(parts[0], out var value) || value is < 1 or > Highest)
        {
            return JarProblems.NotAJarNumber(text, where);
        }

        var number = new JarNumber(value);
        return parts.Length == 1 || parts[1] == number.Check ? number : JarProblems.WrongCheckDigit(text, number, where);
    }

    /// <inheritdoc/>
    public int CompareTo(JarNumber other) => Value.CompareTo(other.Value);

    /// <summary>With its check digit.</summary>
    public override string ToString() => $"{Digits}-{Check}";

    /// <summary>Lower.</summary>
    public static bool operator <(JarNumber left, JarNumber right) => left.Value < right.Value;

    /// <summary>Higher.</summary>
    public static bool operator >(JarNumber left, JarNumber right) => left.Value > right.Value;

    /// <summary>Lower or the same.</summary>
    public static bool operator <=(JarNumber left, JarNumber right) => left.Value <= right.Value;

    /// <summary>Higher or the same.</summary>
    public static bool operator >=(JarNumber left, JarNumber right) => left.Value >= right.Value;

    private string Digits => Value.ToString(CultureInfo.InvariantCulture);

    private string Check => CheckDigit.Of(Digits).ToString(CultureInfo.InvariantCulture);

    private static bool TryDigits(string text, out int value) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value);
}
