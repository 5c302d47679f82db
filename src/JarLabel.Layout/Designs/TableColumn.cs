using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Designs;

/// <summary>One column of a table.</summary>
/// <param name="Face">Its weight; null for the voice's.</param>
/// <param name="Across">Where its cells stand from left to right.</param>
/// <param name="Grow">True when it takes the width that is left and breaks its cells into lines.</param>
public sealed record TableColumn(Face? Face, Align Across, bool Grow);
