namespace JarLabel.Layout.Designs;

/// <summary>Hazard pictograms or safety signs in a row.</summary>
/// <param name="Frame">What every box has.</param>
/// <param name="Codes">Which ones; empty for those of the label.</param>
/// <param name="Sizes">Widths from the largest to the smallest allowed, mm. A pictogram on its point is measured from tip to tip,
/// so a side of 10 mm is 14.2 here.</param>
/// <param name="Gap">White between neighbours, mm.</param>
/// <param name="PerRow">How many stand side by side before a new row.</param>
/// <param name="With">A word of the label without which they are not shown, such as <c>poison</c>; null for always.</param>
/// <param name="Unless">A pictogram of the label beside which they say nothing more, such as <c>GHS06</c>; null for none.</param>
public sealed record SymbolsBox(BoxFrame Frame, IReadOnlyList<string> Codes, IReadOnlyList<double> Sizes, double Gap, int PerRow, string? With, string? Unless) : Box(Frame);
