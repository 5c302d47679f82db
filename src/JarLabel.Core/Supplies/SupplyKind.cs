namespace JarLabel.Core.Supplies;

/// <summary>What batches are mixed from.</summary>
public enum SupplyKind
{
    /// <summary>A bag of dry flakes, counted by weight.</summary>
    Bag,

    /// <summary>A bottle of alcohol, counted by volume.</summary>
    Bottle,
}

/// <summary>The kinds as people write them.</summary>
public static class SupplyKinds
{
    /// <summary><c>bag</c>, <c>bottle</c>.</summary>
    public static string Word(this SupplyKind kind) => kind == SupplyKind.Bag ? "bag" : "bottle";

    /// <summary>The name of the input that says how much is left.</summary>
    internal static string Amount(this SupplyKind kind) => kind == SupplyKind.Bag ? "weight" : "volume";
}
