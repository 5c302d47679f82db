namespace JarLabel.Core.Supplies;

/// <summary>How a pinch of a bag last dissolved.</summary>
/// <param name="Day">The day.</param>
/// <param name="Pinch">What became of it.</param>
public sealed record PinchTest(DateOnly Day, Pinch Pinch);
