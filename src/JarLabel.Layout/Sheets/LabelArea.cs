namespace JarLabel.Layout.Sheets;

/// <summary>One label's place on its page.</summary>
/// <param name="Shape">Its outline.</param>
/// <param name="X">Left edge, mm from the page's left.</param>
/// <param name="Y">Top edge, mm from the page's top.</param>
/// <param name="Width">Width, mm.</param>
/// <param name="Height">Height, mm.</param>
/// <param name="Dpi">Printer dots per inch; QR modules stand on whole dots of it.</param>
public readonly record struct LabelArea(LabelShape Shape, double X, double Y, double Width, double Height, int Dpi)
{
    /// <summary>True where the printer has black and nothing else: no colours, no greys, nothing thinner than two of its dots.</summary>
    public bool BlackOnly { get; init; }
}
