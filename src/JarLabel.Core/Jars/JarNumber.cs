namespace JarLabel.Core.Jars;

/// <summary>The number of a jar: 1 to 999 999 999, written with its check digit behind a hyphen, <c>142-5</c>. <c>default</c> is no jar.</summary>
public readonly record struct JarNumber : IComparable<JarNumber>
{
    private JarNumber(int value) => Value = value;

    /// <summary>The bare number.</summary>
    public int Value { get; }

    /// <summary>Takes a bare number; throws below 1 and above 999 999 999.</summary>
    public static JarNumber From(int value) => new(CheckedNumber.Demand(value));

    /// <summary>Reads <c>142</c> or <c>142-5</c>; a wrong check digit is refused.</summary>
    public static Result<JarNumber> Read(string text, string where) =>
        !CheckedNumber.TryRead(text, out var value, out var fits) ? JarProblems.NotAJarNumber(text, where)
        : fits ? new JarNumber(value)
        : JarProblems.WrongCheckDigit(text, new JarNumber(value), where);

    /// <inheritdoc/>
    public int CompareTo(JarNumber other) => Value.CompareTo(other.Value);

    /// <summary>With its check digit.</summary>
    public override string ToString() => CheckedNumber.Write(Value);

    /// <summary>Lower.</summary>
    public static bool operator <(JarNumber left, JarNumber right) => left.Value < right.Value;

    /// <summary>Higher.</summary>
    public static bool operator >(JarNumber left, JarNumber right) => left.Value > right.Value;

    /// <summary>Lower or the same.</summary>
    public static bool operator <=(JarNumber left, JarNumber right) => left.Value <= right.Value;

    /// <summary>Higher or the same.</summary>
    public static bool operator >=(JarNumber left, JarNumber right) => left.Value >= right.Value;
}
