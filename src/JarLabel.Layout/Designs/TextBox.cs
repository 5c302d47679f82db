using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Designs;

/// <summary>One wording of the label.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Word">Its key in the label's words.</param>
/// <param name="Voice">The voice it speaks in.</param>
/// <param name="Face">A weight other than the voice's; null for the voice's.</param>
/// <param name="Lines">On how many lines it may be broken.</param>
/// <param name="Trim">True when the box ends at the last baseline, so that figures of two sizes stand on one line.</param>
public sealed record TextBox(BoxFrame Frame, string Word, string Voice, Face? Face, int Lines, bool Trim) : Box(Frame);
