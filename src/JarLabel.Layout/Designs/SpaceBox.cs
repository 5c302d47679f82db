namespace JarLabel.Layout.Designs;

/// <summary>White.</summary>
/// <param name="Frame">What every box has.</param>
public sealed record SpaceBox(BoxFrame Frame) : Box(Frame);
