namespace JarLabel.Core.Catalog;

/// <summary>Which known word somebody probably meant.</summary>
public static class Nearest
{
    /// <summary>The known word that the fewest single-letter changes lead to; null when all are too far off to be meant.</summary>
    public static string? To(string typed, IEnumerable<string> known)
    {
        var farthest = Math.Max(2, typed.Length / 2);
        return known
            .Select(word => (word, changes: Changes(typed.ToUpperInvariant(), word.ToUpperInvariant())))
            .Where(w => w.changes <= farthest)
            .OrderBy(w => w.changes)
            .ThenBy(w => w.word, StringComparer.Ordinal)
            .Select(w => w.word)
            .FirstOrDefault();
    }

    /// <summary>The question that a message puts behind what it read, a blank before it; empty when nothing known is near.</summary>
    public static string Asked(string typed, IEnumerable<string> known) => Question(To(typed, known));

    /// <summary>The same question about a word that is found already; empty for none.</summary>
    public static string Question(string? meant) => meant is null ? "" : $" Did you mean \"{meant}\"?";

    /// <summary>True where a word differs from a known one by a slip: a letter in six.</summary>
    internal static bool IsSlip(string typed, string word) => Changes(typed.ToUpperInvariant(), word.ToUpperInvariant()) <= Math.Max(1, word.Length / 6);

    /// <summary>Letters to put in, leave out or change: Levenshtein's distance.</summary>
    private static int Changes(string from, string to)
    {
        var above = Enumerable.Range(0, to.Length + 1).ToArray();
        for (var i = 1; i <= from.Length; i++)
        {
            var diagonal = above[0];
            above[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var change = diagonal + (from[i - 1] == to[j - 1] ? 0 : 1);
                diagonal = above[j];
                above[j] = Math.Min(change, Math.Min(above[j], above[j - 1]) + 1);
            }
        }

        return above[to.Length];
    }
}
