namespace JarLabel.Layout.Marks;

/// <summary>A filled outline: pictograms and signs.</summary>
/// <param name="Box">The design box it came from.</param>
/// <param name="X">Left edge of the drawing's frame, mm.</param>
/// <param name="Y">Top edge of the drawing's frame, mm.</param>
/// <param name="Scale">Millimetres per unit of the path data.</param>
/// <param name="Data">SVG path data, filled by the even-odd rule.</param>
/// <param name="Ink">The colour.</param>
public sealed record PathMark(string Box, double X, double Y, double Scale, string Data, Ink Ink) : Mark(Box);
