namespace JarLabel.Core.Labels;

/// <summary>All that the notice for a solvent shelf is made from.</summary>
/// <param name="Shelf">The shelf's name.</param>
/// <param name="Day">The day it speaks of.</param>
/// <param name="Stock">What stands there.</param>
/// <param name="Air">What the worst of it does to the room's air; null when nothing is known of its vapour.</param>
/// <param name="Rules">Whose rules.</param>
/// <param name="Catalog">Where the storage limits are.</param>
/// <param name="Metric">Metric amounts first.</param>
/// <param name="ShopName">The shop, or null.</param>
/// <param name="Contact">Whom to ask, or null.</param>
public sealed record NoticeFacts(
    string Shelf,
    DateOnly Day,
    ShelfStock Stock,
    AirAssessment? Air,
    RuleSet Rules,
    ShopCatalog Catalog,
    bool Metric,
    string? ShopName,
    string? Contact)
{
    /// <summary>The poison center's number as the shop set it; null for that of the rules' region.</summary>
    public string? PoisonCenter { get; init; }
}
