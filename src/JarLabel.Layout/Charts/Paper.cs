namespace JarLabel.Layout.Charts;

/// <summary>A sheet of plain paper.</summary>
/// <param name="Width">mm.</param>
/// <param name="Height">mm.</param>
public readonly record struct Paper(double Width, double Height)
{
    /// <summary>210 x 297 mm, ISO 216.</summary>
    public static Paper A4 { get; } = new(210, 297);

    /// <summary>8½ x 11 inches.</summary>
    public static Paper Letter { get; } = new(215.9, 279.4);

    /// <summary>The same paper turned a quarter.</summary>
    public Paper OnItsSide => new(Height, Width);
}
