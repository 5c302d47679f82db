namespace JarLabel.Core.Keeping;

/// <summary>When so many jars of a class will still be good.</summary>
/// <param name="StillGood">The share, between 0 and 1.</param>
/// <param name="Low">Nine times of ten the true age is between this</param>
/// <param name="High">and this, in months as at 20 °C.</param>
public readonly record struct LifeBandPoint(double StillGood, double Low, double High);
