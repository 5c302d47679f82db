namespace JarLabel.Layout.Designs;

/// <summary>The label's code, with its quiet zone inside the box.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Module">Side of one module that is wanted, mm; it is brought to whole printer dots.</param>
/// <param name="LeastModule">Smallest side allowed, mm.</param>
public sealed record QrBox(BoxFrame Frame, double Module, double LeastModule) : Box(Frame);
