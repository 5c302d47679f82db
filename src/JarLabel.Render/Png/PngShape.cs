namespace JarLabel.Render.Png;

/// <summary>The frame of a PNG: width and height in dots, dots per inch, and whether a dot is one bit (1 is white) or three bytes
/// (red, green, blue).</summary>
internal readonly record struct PngShape(int Width, int Height, int Dpi, bool OneBit)
{
    internal int BytesPerRow => OneBit ? (Width + 7) / 8 : Width * 3;
}
