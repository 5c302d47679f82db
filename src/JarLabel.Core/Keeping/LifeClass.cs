namespace JarLabel.Core.Keeping;

/// <summary>Jars whose lifetimes are learned together: flakes of one keeping class in one solvent.</summary>
/// <param name="Keeping">Id of the keeping class.</param>
/// <param name="Solvent">Id of the solvent.</param>
public readonly record struct LifeClass(string Keeping, string Solvent)
{
    /// <summary>The kinds of shellac, as people call them.</summary>
    public string NameIn(ShopCatalog catalog) => catalog.Keeping.Find(Keeping)?.Name ?? Keeping;

    /// <inheritdoc/>
    public override string ToString() => $"{Keeping} in {Solvent}";
}
