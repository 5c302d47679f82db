namespace JarLabel.Core.Supplies;

/// <summary>The number of a bag or of a bottle: 1 to 999 999 999, written with its check digit behind a hyphen, <c>12-9</c>. Bags and
/// bottles are counted apart. <c>default</c> is none.</summary>
public readonly record struct SupplyNumber
{
    private SupplyNumber(int value) => Value = value;

    /// <summary>The bare number.</summary>
    public int Value { get; }

    /// <summary>Takes a bare number; throws below 1 and above 999 999 999.</summary>
    public static SupplyNumber From(int value) => new(CheckedNumber.Demand(value));

    /// <summary>Reads <c>12</c> or <c>12-9</c> as a bag; a wrong check digit is refused.</summary>
    public static Result<SupplyNumber> ReadBag(string text, string where) => Read(SupplyKind.Bag, text, where);

    /// <summary>Reads <c>12</c> or <c>12-9</c> as a bottle; a wrong check digit is refused.</summary>
    public static Result<SupplyNumber> ReadBottle(string text, string where) => Read(SupplyKind.Bottle, text, where);

    /// <summary>Reads <c>12</c> or <c>12-9</c>; a wrong check digit is refused.</summary>
    public static Result<SupplyNumber> Read(SupplyKind kind, string text, string where) =>
        !CheckedNumber.TryRead(text, out var value, out var fits) ? SupplyProblems.NotANumber(kind, text, where)
        : fits ? From(value)
        : SupplyProblems.WrongCheckDigit(kind, text, From(value), where);

    /// <summary>With its check digit.</summary>
    public override string ToString() => CheckedNumber.Write(Value);
}
