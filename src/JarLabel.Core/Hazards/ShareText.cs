namespace JarLabel.Core.Hazards;

/// <summary>One share as data sheets print it: <c>5</c>, <c>5 %</c>, <c>30-60</c>, <c>&lt;3</c>, <c>&gt;=50</c>, or <c>rest</c> for what the others leave.</summary>
internal static class ShareText
{
    private static readonly string[] Between = ["..", "–", "-", " to "];

    /// <summary>From so many percent to so many; null where it cannot be meant.</summary>
    internal static (decimal Least, decimal Most)? Read(string typed)
    {
        var text = typed.Replace('%', ' ').Trim();
        if (text.Equals("rest", StringComparison.OrdinalIgnoreCase))
        {
            return (0, 100);
        }

        if (text.StartsWith('<') || text.StartsWith('≤'))
        {
            return Percent(text[1..].TrimStart('=')) is { } most ? (0, most) : null;
        }

        if (text.StartsWith('>') || text.StartsWith('≥'))
        {
            return Percent(text[1..].TrimStart('=')) is { } least ? (least, 100) : null;
        }

        return Array.Find(Between, text.Contains) is { } between
            ? text.Split(between, 2) is [var from, var to] && Percent(from) is { } lower && Percent(to) is { } upper && lower <= upper ? (lower, upper) : null
            : Percent(text) is { } exact ? (exact, exact) : null;
    }

    private static decimal? Percent(string text) =>
        decimal.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) && percent <= 100 ? percent : null;
}
