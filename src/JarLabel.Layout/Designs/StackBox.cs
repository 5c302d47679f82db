using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Designs;

/// <summary>Boxes one after the other.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Downwards">True for rows, false for columns.</param>
/// <param name="Gap">White between neighbours, mm.</param>
/// <param name="Pad">White around all of them, mm; a panel's inner edge.</param>
/// <param name="Fill">The panel's colour; null for bare paper.</param>
/// <param name="Ink">The colour of what stands inside; null as outside.</param>
/// <param name="Boxes">What stands inside, in order.</param>
public sealed record StackBox(
    BoxFrame Frame, bool Downwards, double Gap, double Pad, Ink? Fill, Ink? Ink, IReadOnlyList<Box> Boxes) : Box(Frame);
