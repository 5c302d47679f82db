namespace JarLabel.Layout.Designs;

/// <summary>A line across its parent's direction.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Thickness">Its thickness, mm, at least 0.25.</param>
public sealed record RuleBox(BoxFrame Frame, double Thickness) : Box(Frame);
