namespace JarLabel.Core.Keeping;

/// <summary>A pace of ageing that is thought possible.</summary>
/// <param name="Q10">How many times faster when it is 10 °C warmer.</param>
/// <param name="Weight">How likely it is thought beside the others.</param>
public readonly record struct AgingPace(double Q10, double Weight);
