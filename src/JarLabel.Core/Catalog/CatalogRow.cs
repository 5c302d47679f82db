namespace JarLabel.Core.Catalog;

/// <summary>What every row of the catalog has.</summary>
/// <param name="Id">Lower-case name by which commands and other rows mean it; a phrase's is its code.</param>
/// <param name="Source">Where the row comes from; see <see cref="Sources"/>.</param>
public abstract record CatalogRow(string Id, string Source)
{
    /// <summary>Other words that mean this row.</summary>
    public IReadOnlyList<string> Aliases { get; init; } = [];

    /// <summary>True for what is never proposed for another word that somebody typed: it could hurt more than what was meant.</summary>
    public virtual bool IsNamedOnly => false;

    /// <summary>True when nobody has looked the row up in its source: it must be shown as unverified.</summary>
    public bool Unverified => Sources.IsMemory(Source);
}
