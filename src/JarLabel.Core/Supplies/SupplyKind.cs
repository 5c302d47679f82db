namespace JarLabel.Core.Supplies;

/// <summary>What batches are mixed from.</summary>
public enum SupplyKind
{
    /// <summary>A bag of dry flakes, counted by weight.</summary>
    Bag,

    /// <summary>A bottle of alcohol, counted by volume.</summary>
    Bottle,
}
