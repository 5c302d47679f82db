namespace JarLabel.Layout.Marks;

/// <summary>One sheet of paper or one label of a roll, ready to be drawn.</summary>
/// <param name="Width">Paper width, mm.</param>
/// <param name="Height">Paper height, mm.</param>
/// <param name="Marks">What is drawn, in drawing order.</param>
public sealed record Page(double Width, double Height, IReadOnlyList<Mark> Marks)
{
    /// <summary>Dots per inch of the one-bit printer it was made for; null where every ink goes.</summary>
    public int? OneBitDpi { get; init; }
}
