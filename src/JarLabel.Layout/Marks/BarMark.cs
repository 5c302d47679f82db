namespace JarLabel.Layout.Marks;

/// <summary>A filled upright rectangle: rules, squares of the tone bar, panels.</summary>
/// <param name="Box">The design box it came from.</param>
/// <param name="X">Left edge, mm.</param>
/// <param name="Y">Top edge, mm.</param>
/// <param name="Width">Width, mm.</param>
/// <param name="Height">Height, mm.</param>
/// <param name="Ink">The colour.</param>
public sealed record BarMark(string Box, double X, double Y, double Width, double Height, Ink Ink) : Mark(Box);
