namespace JarLabel.Core.Catalog;

/// <summary>Which rows of a catalog somebody means who did not write an id: by the words that ids and aliases are made of. Only what can be one
/// row is chosen; of several the person chooses, and what could hurt more than what was typed is never proposed for a slip.</summary>
internal static class MeantWords
{
    private static readonly char[] Between = [' ', '-', '_', ',', '/', '%', '\t'];

    /// <summary>The row that has a name of just these words, in whatever order; null for none and for several.</summary>
    internal static T? Same<T>(IReadOnlyDictionary<string, T> byWord, string typed)
        where T : CatalogRow
    {
        var words = Words(typed);
        T[] rows = [.. byWord.Where(name => words.Count > 0 && words.SetEquals(Words(name.Key))).Select(name => name.Value).Distinct()];
        return rows is [var one] ? one : null;
    }

    /// <summary>The ids of what may be meant.</summary>
    internal static IReadOnlyList<string> Candidates<T>(IReadOnlyDictionary<string, T> byWord, string typed)
        where T : CatalogRow
    {
        var words = Words(typed);
        var proposed = byWord.Where(name => !name.Value.IsNamedOnly).ToDictionary();
        var careful = proposed.Count < byWord.Count;
        var all = Ids(byWord.Where(name => words.Count > 0 && words.IsSubsetOf(Words(name.Key))));
        if (all.Count > 0)
        {
            return Careful(all);
        }

        // Where a slip can hurt, a word that was written whole says more than letters that are alike.
        var some = Ids(byWord.Where(name => words.Overlaps(Words(name.Key).Where(word => !char.IsAsciiDigit(word[0])))));
        if (careful && some.Count > 0)
        {
            return Careful(some);
        }

        if (Nearest.To(typed, proposed.Keys) is { } near)
        {
            return [careful ? proposed[near].Id : near];
        }

        return some.Count > 0 ? some : Ids(proposed.Where(name => Words(name.Key).Any(word => word.Length > 3 && words.Any(said => Nearest.IsSlip(said, word)))));

        // One word of a name is not the name of a poison.
        IReadOnlyList<string> Careful(List<string> ids) => ids is [var only] && !proposed.Values.Any(row => row.Id == only) ? [] : ids;
    }

    private static HashSet<string> Words(string name) =>
        name.Split(Between, StringSplitOptions.RemoveEmptyEntries).ToHashSet(StringComparer.OrdinalIgnoreCase);

    private static List<string> Ids<T>(IEnumerable<KeyValuePair<string, T>> names)
        where T : CatalogRow => [.. names.Select(name => name.Value.Id).Distinct()];
}
