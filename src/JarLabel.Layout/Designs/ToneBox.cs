namespace JarLabel.Layout.Designs;

/// <summary>Five small squares, filled from the left by how dark the grade is; the last is ringed when the grade holds its wax.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Side">Side of one square, mm.</param>
/// <param name="Downwards">True when the squares stand below each other, filled from the bottom.</param>
public sealed record ToneBox(BoxFrame Frame, double Side, bool Downwards) : Box(Frame);
