namespace JarLabel.Layout.Designs;

/// <summary>The label's largest figure, its fraction stacked over a bar as on a rule: it keeps the whole number wide and reads from afar,
/// where a typeface's own fraction glyph falls apart.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Word">Its key in the label's words, such as <c>cut</c>.</param>
/// <param name="Voice">The voice it speaks in.</param>
public sealed record FigureBox(BoxFrame Frame, string Word, string Voice) : Box(Frame);
