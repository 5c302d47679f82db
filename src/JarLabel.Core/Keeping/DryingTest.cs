namespace JarLabel.Core.Keeping;

/// <summary>One drying test of a jar.</summary>
/// <param name="Age">The jar's age then, in days as at 20 °C.</param>
/// <param name="Passed">True when the drops dried hard.</param>
public readonly record struct DryingTest(double Age, bool Passed);
