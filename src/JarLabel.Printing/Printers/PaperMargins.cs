namespace JarLabel.Printing.Printers;

/// <summary>The edges of the paper that cannot be printed, in mm.</summary>
/// <param name="Left">On the left.</param>
/// <param name="Top">On top.</param>
/// <param name="Right">On the right.</param>
/// <param name="Bottom">At the bottom.</param>
public sealed record PaperMargins(double Left, double Top, double Right, double Bottom);
