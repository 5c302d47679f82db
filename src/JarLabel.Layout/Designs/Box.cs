namespace JarLabel.Layout.Designs;

/// <summary>One box of a design's tree. A box whose text or symbols are absent from the label takes no room at all.</summary>
/// <param name="Frame">What every box has.</param>
public abstract record Box(BoxFrame Frame);
