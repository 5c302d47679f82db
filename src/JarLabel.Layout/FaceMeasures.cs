namespace JarLabel.Layout;

/// <summary>Vertical measures of a face as fractions of the type size, all positive.</summary>
/// <param name="Ascent">Highest reach above the baseline.</param>
/// <param name="Descent">Lowest reach below the baseline.</param>
/// <param name="CapHeight">Height of a capital H.</param>
/// <param name="XHeight">Height of a small x.</param>
public readonly record struct FaceMeasures(double Ascent, double Descent, double CapHeight, double XHeight);
