namespace JarLabel.Layout.Marks;

/// <summary>One line of text.</summary>
/// <param name="Box">The design box it came from.</param>
/// <param name="X">Left end of the line, mm.</param>
/// <param name="Baseline">Baseline, mm.</param>
/// <param name="Text">The characters, already wrapped.</param>
/// <param name="Face">The weight of the family.</param>
/// <param name="Points">Type size in points (1/72 inch).</param>
/// <param name="Ink">The colour.</param>
public sealed record TextMark(string Box, double X, double Baseline, string Text, Face Face, double Points, Ink Ink) : Mark(Box);
