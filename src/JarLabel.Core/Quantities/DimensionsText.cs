namespace JarLabel.Core.Quantities;

/// <summary>Reads lengths that are written one by another: <c>30 x 20 in</c>, <c>1.2 m x 80 cm</c>, <c>20 by 15 by 9 ft</c>. A number without a
/// unit has that of the next length, or of the one before it.</summary>
internal static partial class DimensionsText
{
    /// <summary>No side of a piece or of a room is longer: a kilometre, in centimetres.</summary>
    private const double Longest = 100_000;

    /// <summary>An area or a room, written as its sides or as one amount.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="kind">What it is to be.</param>
    /// <param name="count">How many sides it has.</param>
    /// <param name="most">The most that is taken.</param>
    /// <param name="where">Where it was typed.</param>
    /// <param name="least">The least that is taken; where it is 0, anything above it.</param>
    internal static Result<double> OrAmount(string text, UnitKind kind, int count, double most, string where, double least = 0) => Read(text, kind, count, where) is { } product
        ? product.Then<double>(size => size > 0 && size >= least && size <= most ? size : QuantityProblems.AmountOutOfRange(text, kind, least, most, where))
        : AmountText.Read(text, kind, most, where, least);

    /// <summary>The product in centimetres to the power of the count; null where the text is not written so.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="kind">What it is to be.</param>
    /// <param name="count">How many lengths that takes.</param>
    /// <param name="where">Where it was typed.</param>
    private static Result<double>? Read(string text, UnitKind kind, int count, string where)
    {
        string[] sides = [.. By().Split(text).Select(side => side.Trim())];
        if (sides.Length == 1)
        {
            return null;
        }

        if (sides.Length != count)
        {
            return QuantityProblems.OtherDimensions(text, kind, sides.Length, count, where);
        }

        Result<double>[] read = [.. sides.Index().Select(side => AmountText.Read(WithUnit(sides, side.Index), UnitKind.Length, Longest, where))];
        Problem[] problems = [.. read.SelectMany(side => side.Problems).Select(problem => QuantityProblems.InDimensions(text, problem)).Distinct()];
        return problems.Length > 0 ? Result<double>.Failed(problems) : read.Aggregate(1.0, (product, side) => product * side.Require());
    }

    private static string WithUnit(string[] sides, int index) =>
        NumberText.Take(sides[index]) is not { After: var after } || after.Trim().Length > 0 ? sides[index] : $"{sides[index]} {sides[(index + 1)..].Concat(sides[..index].Reverse()).Select(Unit).FirstOrDefault(unit => unit.Length > 0)}";

    /// <summary>The unit of a side that has one number; empty for none, and for several.</summary>
    private static string Unit(string side) => NumberText.Take(side) is { } number && !number.After.Any(char.IsAsciiDigit) ? number.After.Trim() : "";

    [GeneratedRegex(@"\s*[×*]\s*|(?<![\p{L}])\s*x\s*(?=[\d.½¼¾⅓⅔⅛⅜⅝⅞])|\s+x\s+|\s+by\s+", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex By();
}
