using JarLabel.Render.Png;

namespace JarLabel.Render;

/// <summary>Writes a page as a PNG picture that carries its resolution.</summary>
public static class PngRenderer
{
    /// <summary>In colour, letters smoothed; QR modules stand on whole dots.</summary>
    /// <param name="target">Where the bytes go; left open.</param>
    /// <param name="page">The page.</param>
    /// <param name="dpi">Dots per inch: 203, 300 and 600 are what label printers have.</param>
    public static void Write(Stream target, Page page, int dpi)
    {
        using var bitmap = Checked(target, page, dpi, Inks.Colour, smooth: true);
        var dots = bitmap.GetPixelSpan().ToArray();
        PngFile.Write(target, new PngShape(bitmap.Width, bitmap.Height, dpi, OneBit: false), (y, row) => CopyColours(dots, y, row));
    }

    /// <summary>As a one-bit printer would print it: every dot black or white. Colours that carry white drawing (red, blue, green) become
    /// black, those that carry black drawing (orange, yellow) become white; nothing is dithered.</summary>
    /// <param name="target">Where the bytes go; left open.</param>
    /// <param name="page">The page.</param>
    /// <param name="dpi">Dots per inch.</param>
    public static void WriteMono(Stream target, Page page, int dpi)
    {
        using var bitmap = Checked(target, page, dpi, Inks.BlackOrWhite, smooth: false);
        var dots = bitmap.GetPixelSpan().ToArray();
        PngFile.Write(target, new PngShape(bitmap.Width, bitmap.Height, dpi, OneBit: true), (y, row) => PackBits(dots, bitmap.Width, y, row));
    }

    private static SKBitmap Checked(Stream target, Page page, int dpi, Func<Ink, SKColor> colour, bool smooth)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(dpi, 36);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(dpi, 2400);
        return Raster.Draw(page, dpi, colour, smooth);
    }

    private static void CopyColours(byte[] dots, int y, Span<byte> row)
    {
        var from = dots.AsSpan(y * row.Length / 3 * 4);
        for (var x = 0; x < row.Length / 3; x++)
            from.Slice(x * 4, 3).CopyTo(row[(x * 3)..]);
    }

    private static void PackBits(byte[] dots, int width, int y, Span<byte> row)
    {
        row.Clear();
        for (var x = 0; x < width; x++)
        {
            if (dots[((y * width) + x) * 4] >= 128)
                row[x / 8] |= (byte)(0x80 >> (x % 8));
        }
    }
}
