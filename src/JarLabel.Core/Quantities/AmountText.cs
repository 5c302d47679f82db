namespace JarLabel.Core.Quantities;

/// <summary>Reads an amount as people write it: numbers and unit words, one pair or several that go from large to small (<c>1 lb 4 oz</c>);
/// a half or a quarter may stand as a word.</summary>
internal static class AmountText
{
    /// <summary>The amount in the kind's base unit, more than nothing, at least <paramref name="least"/> and at most <paramref name="most"/>.</summary>
    internal static Result<double> Read(string text, UnitKind kind, double most, string where, double least = 0)
    {
        var written = NumberWords.AsFraction(string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
        if (NumberText.IsAmbiguous(written))
        {
            return QuantityProblems.AmbiguousComma(text, where);
        }

        var (sum, last) = (0.0, double.PositiveInfinity);
        for (var rest = written; rest.Length > 0;)
        {
            if (TakePair(rest, kind, text, where) is var pair && !pair.TryGet(out var taken, out var problems))
            {
                return Result<double>.Failed(problems);
            }

            if (taken.Unit.Size >= last)
            {
                return QuantityProblems.SecondAmount(text, written[..^rest.Length].Trim(), rest, where);
            }

            sum += taken.Number * taken.Unit.Size;
            (rest, last) = (taken.After, taken.Unit.Size);
        }

        return sum > 0 && sum >= least && sum <= most ? sum : QuantityProblems.AmountOutOfRange(text, kind, least, most, where);
    }

    private static Result<(double Number, UnitWord Unit, string After)> TakePair(string rest, UnitKind kind, string whole, string where)
    {
        if (NumberText.Take(rest) is not { } number)
        {
            return QuantityProblems.NotAnAmount(whole, kind, where);
        }

        var word = WordAtStart(number.After);
        return UnitWord.Find(word) switch
        {
            null when word.Trim().Length == 0 => QuantityProblems.UnitMissing(whole, kind, where),
            null => QuantityProblems.UnitUnknown(whole, word.Trim(), kind, where),
            { } unit when !unit.Measures(kind) => QuantityProblems.WrongKind(whole, unit, kind, where),
            { Size: 1 } when NumberText.MayPartThousands(rest[..^number.After.Length].Trim()) => QuantityProblems.AmbiguousPoint(whole, number.Value, word.Trim(), where),
            { } unit => (number.Value, unit, number.After[word.Length..].TrimStart()),
        };
    }

    /// <summary>The unit's word: up to the next number that stands by itself, so that <c>m3</c> stays whole.</summary>
    private static string WordAtStart(string text)
    {
        for (var i = 1; i < text.Length; i++)
        {
            if (text[i - 1] == ' ' && StartsNumber(text[i]) && text[..i].Trim().Length > 0)
            {
                return text[..i];
            }
        }

        return text;
    }

    private static bool StartsNumber(char c) => char.IsAsciiDigit(c) || c is '-' or '+' or '.' || (c > 127 && char.GetNumericValue(c) is > 0 and < 1);
}
