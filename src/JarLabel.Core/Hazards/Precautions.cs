using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>Which precautionary statements belong to a set of hazards, the most important first.</summary>
internal static class Precautions
{
    /// <summary>As many as a label is asked to carry at most (CLP Article 28(3)).</summary>
    internal const int OnLabel = 6;

    /// <summary>Everything the classes ask for, less what a stronger statement says already (CLP Article 28(1)).</summary>
    internal static IReadOnlyList<string> Of(IReadOnlyList<Hazard> hazards, CatalogTable<Phrase> phrases)
    {
        var asked = hazards.SelectMany(h => h.Class.Precautions).ToHashSet(StringComparer.Ordinal);
        var inOrder = phrases.Rows.Where(p => asked.Contains(p.Id)).ToArray();
        var outranked = inOrder.SelectMany(p => p.Outranks).ToHashSet(StringComparer.Ordinal);
        return [.. inOrder.Select(p => p.Id).Where(id => !outranked.Contains(id))];
    }
}
