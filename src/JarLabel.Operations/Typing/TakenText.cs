using System.Text.RegularExpressions;

namespace JarLabel.Operations.Typing;

/// <summary>How much is taken out of a jar: a volume, a share of what is in it, or all.</summary>
/// <param name="Volume">So much; null for a share, or for all.</param>
/// <param name="Share">Such a share, above 0 and below 1; null for a volume, or for all.</param>
public readonly partial record struct TakenText(Volume? Volume, double? Share = null)
{
    /// <summary>More new jars are not filled at once.</summary>
    private const int MostTimes = 100;

    private const double LeastPercent = 0.1;
    private const double UsualPercent = 40;

    private static readonly Dictionary<string, double> Shares = new(StringComparer.OrdinalIgnoreCase)
    {
        ["half"] = 1.0 / 2,
        ["half of it"] = 1.0 / 2,
        ["1/2"] = 1.0 / 2,
        ["½"] = 1.0 / 2,
        ["a third"] = 1.0 / 3,
        ["third"] = 1.0 / 3,
        ["1/3"] = 1.0 / 3,
        ["a quarter"] = 1.0 / 4,
        ["quarter"] = 1.0 / 4,
        ["1/4"] = 1.0 / 4,
        ["¼"] = 1.0 / 4,
        ["two thirds"] = 2.0 / 3,
        ["2/3"] = 2.0 / 3,
        ["⅔"] = 2.0 / 3,
        ["three quarters"] = 3.0 / 4,
        ["3/4"] = 3.0 / 4,
        ["¾"] = 3.0 / 4,
    };

    /// <summary>A volume.</summary>
    public static implicit operator TakenText(Volume volume) => new(volume);

    /// <summary>The volume that it is of so much; null for all of it.</summary>
    internal Volume? Of(Volume liquid) => Share is { } share ? liquid * share : Volume;

    /// <summary>Reads several of them, parted by commas: <c>200 mL, 0,5 L, all</c>, or <c>3 x 200 mL</c>. A comma between two digits is a decimal
    /// comma, and no amount is left out between two others.</summary>
    public static Result<IReadOnlyList<TakenText>> ReadList(string text, string where)
    {
        Result<IReadOnlyList<TakenText>>[] amounts = [.. Commas().Split(text).Select(part => string.IsNullOrWhiteSpace(part) ? TypingProblems.AmountLeftOut(text, where) : ReadTimes(part, where))];
        Problem[] problems = [.. amounts.SelectMany(amount => amount.Problems).Distinct()];
        return problems.Length > 0 ? Result<IReadOnlyList<TakenText>>.Failed(problems) : Result<IReadOnlyList<TakenText>>.Of([.. amounts.SelectMany(amount => amount.Require())]);
    }

    /// <summary>Reads <c>100 mL</c>, <c>half</c>, <c>50 %</c> or <c>all</c>.</summary>
    public static Result<TakenText> Read(string text, string where) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)) switch
    {
        var all when all.Equals("all", StringComparison.OrdinalIgnoreCase) => default(TakenText),
        var word when Shares.TryGetValue(word, out var share) => new TakenText(null, share),
        [.., '%'] percent => ValueReader.Percent(LeastPercent, 100, UsualPercent)(percent, where).Then<TakenText>(part => part < 100 ? new TakenText(null, part / 100) : default),
        var word when !word.Any(char.IsAsciiDigit) && VolumeText.Read(text, where).Problems is [var told, ..] => TypingProblems.NoAmount(told, text, ["all", .. Shares.Keys.Where(known => char.IsAsciiLetter(known[0]))]),
        _ => VolumeText.Read(text, where).Then<TakenText>(v => new TakenText(v)),
    };

    private static Result<IReadOnlyList<TakenText>> ReadTimes(string text, string where)
    {
        if (Times().Match(text) is not { Success: true } match)
        {
            return Read(text, where).Then(one => Result<IReadOnlyList<TakenText>>.Of([one]));
        }

        return ValueReader.WholeNumber(1, MostTimes, 3)(match.Groups["times"].Value, where)
            .Then(times => Read(match.Groups["amount"].Value, where).Then(one => Result<IReadOnlyList<TakenText>>.Of([.. Enumerable.Repeat(one, times)])));
    }

    [GeneratedRegex("(?<![0-9])\\s*,|,(?![0-9])")]
    private static partial Regex Commas();

    [GeneratedRegex(@"^\s*(?<times>[0-9]+)\s*(?:[xX×*]|times\b)\s*(?<amount>.+)$", RegexOptions.CultureInvariant)]
    private static partial Regex Times();
}
