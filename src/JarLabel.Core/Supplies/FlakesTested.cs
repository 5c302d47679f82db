namespace JarLabel.Core.Supplies;

/// <summary>A pinch of the bag's flakes was left in a little alcohol to dissolve.</summary>
/// <param name="At">The moment, when it was looked at.</param>
/// <param name="Pinch">What became of it.</param>
public sealed record FlakesTested(DateTime At, Pinch Pinch) : SupplyEvent(At);
