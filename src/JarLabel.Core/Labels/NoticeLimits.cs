namespace JarLabel.Core.Labels;

/// <summary>The storage limits of a region, each with the rule it comes from, the smallest first, under a line that says where they do not hold: the
/// shelf may hang at home, and no rule here is one for dwellings.</summary>
internal static class NoticeLimits
{
    /// <summary>What an empty shelf is taken to be for: alcohols of category 2.</summary>
    private const int Alcohols = 2;

    internal static IReadOnlyList<IReadOnlyList<string>> Of(NoticeFacts facts)
    {
        var passed = facts.Stock.PassedOutsideCabinet(facts.Rules, facts.Catalog).Select(l => l.Id).ToHashSet(StringComparer.Ordinal);
        var categories = facts.Stock.Categories.Select(c => c.Category).OfType<int>().DefaultIfEmpty(Alcohols).ToHashSet();
        return
        [
            ["At home", "ask the fire department what a dwelling may keep: far less than a workplace may, as below."],
            .. facts.Catalog.Storage.Rows
                .Where(l => l.OnlyUnder == facts.Rules && l.Categories.Any(categories.Contains))
                .OrderByDescending(l => passed.Contains(l.Id))
                .ThenBy(l => l.Scope)
                .ThenBy(l => l.Liters ?? l.Kilograms)
                .Select(l => (string[])[l.Amount, Sentence(l, passed.Contains(l.Id))]),
        ];
    }

    private static string Sentence(StorageLimit limit, bool passed) =>
        $"{(passed ? "PASSED NOW. " : "")}{limit.Says} {limit.Rule}{(Sources.IsMemory(limit.Source) ? ", unverified" : "")}";
}
