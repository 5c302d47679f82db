namespace JarLabel.Core.Supplies;

/// <summary>The bottle stands elsewhere.</summary>
/// <param name="At">The moment.</param>
/// <param name="Shelf">Where.</param>
public sealed record BottleMoved(DateTime At, string Shelf) : SupplyEvent(At);
