using System.Text.RegularExpressions;

namespace JarLabel.Operations.Typing;

/// <summary>How much is taken out of a jar.</summary>
/// <param name="Volume">So much; null for all.</param>
public readonly partial record struct TakenText(Volume? Volume)
{
    /// <summary>Reads several of them, parted by commas: <c>200 mL, 0,5 L, all</c>. A comma between two digits is a decimal comma, and no amount is
    /// left out between two others.</summary>
    public static Result<IReadOnlyList<TakenText>> ReadList(string text, string where)
    {
        Result<TakenText>[] amounts = [.. Commas().Split(text).Select(part => string.IsNullOrWhiteSpace(part) ? TypingProblems.AmountLeftOut(text, where) : Read(part, where))];
        Problem[] problems = [.. amounts.SelectMany(amount => amount.Problems).Distinct()];
        return problems.Length > 0 ? Result<IReadOnlyList<TakenText>>.Failed(problems) : Result<IReadOnlyList<TakenText>>.Of([.. amounts.Select(amount => amount.Require())]);
    }

    /// <summary>Reads <c>100 mL</c> or <c>all</c>.</summary>
    public static Result<TakenText> Read(string text, string where) =>
        text.Trim().Equals("all", StringComparison.OrdinalIgnoreCase) ? default(TakenText) : VolumeText.Read(text, where).Then<TakenText>(v => new TakenText(v));

    [GeneratedRegex("(?<![0-9])\\s*,|,(?![0-9])")]
    private static partial Regex Commas();
}
