namespace JarLabel.Core.Quantities;

/// <summary>Words that go on with an amount that somebody began with a number: <c>2 lb</c>, <c>8 fl oz</c>, <c>1 1/2 pt</c>, <c>2 lb in 3 gal</c>.</summary>
public static class AmountWords
{
    private static readonly string[] Between = ["x", "×", "by", "in", "per", "cut", "imp", "us", "c", "f", "°c", "°f", "/"];

    /// <summary>True where a word can stand behind a number as a part of the same amount.</summary>
    public static bool GoesOn(string word) => word.Split('@')[0] is var part && word.Length > 0 && (Goes(part) || part.Length == 0);

    private static bool Goes(string word) =>
        Between.Contains(word, StringComparer.OrdinalIgnoreCase)
        || NumberText.Take(word) is not null
        || UnitWord.All.Any(unit => unit.Words.Any(name => name.Split(' ').Contains(word.TrimEnd('.'), StringComparer.OrdinalIgnoreCase)));

    /// <summary>True where a text begins as an amount does.</summary>
    public static bool Begins(string text) => NumberText.Take(text) is not null;
}
