using JarLabel.Layout.Marks;

namespace JarLabel.Layout.Designs;

/// <summary>Sentences in order of importance.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="List">Its key in the label's lists.</param>
/// <param name="Voice">The voice it speaks in.</param>
/// <param name="Face">A weight other than the voice's; null for the voice's.</param>
/// <param name="Running">True for one running paragraph, false for a new line each.</param>
/// <param name="Least">How many sentences must stay when <see cref="BoxFrame.Drop"/> is set.</param>
/// <param name="Most">How many are shown at most.</param>
public sealed record ListBox(BoxFrame Frame, string List, string Voice, Face? Face, bool Running, int Least, int Most) : Box(Frame);
