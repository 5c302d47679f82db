namespace JarLabel.Core.Supplies;

/// <summary>The bag or bottle left the shop.</summary>
/// <param name="At">The moment.</param>
/// <param name="Why">Why, where somebody said.</param>
public sealed record SupplyDiscarded(DateTime At, string? Why = null) : SupplyEvent(At);
