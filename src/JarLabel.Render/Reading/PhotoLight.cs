using SkiaSharp;
using ZXing;

namespace JarLabel.Render.Reading;

/// <summary>The brightness of a photo's dots, as the code finder wants it: one byte a dot, 0 black.</summary>
internal static class PhotoLight
{
    /// <summary>The photo drawn that way into a picture of that size.</summary>
    internal static LuminanceSource Of(SKBitmap photo, SKMatrix way, SKSizeI size, int edges)
    {
        using var grey = new SKBitmap(size.Width, size.Height, SKColorType.Gray8, SKAlphaType.Opaque);
        using (var canvas = new SKCanvas(grey))
        {
            // A picture with clear parts is looked at on white paper.
            canvas.Clear(SKColors.White);
            canvas.SetMatrix(way);
            canvas.DrawBitmap(photo, 0, 0, Sampling(way));
        }

        var dots = Packed(grey);
        return new RGBLuminanceSource(edges > 0 ? EdgesOf.Brought(dots, grey.Width, edges) : dots, grey.Width, grey.Height, RGBLuminanceSource.BitmapFormat.Gray8);
    }

    private static SKSamplingOptions Sampling(SKMatrix way) => way.IsIdentity ? SKSamplingOptions.Default
        : way.MapRadius(1) < 1 ? new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear)
        : new SKSamplingOptions(SKCubicResampler.Mitchell);

    // Rows may be padded in memory.
    private static byte[] Packed(SKBitmap grey)
    {
        var rows = grey.GetPixelSpan();
        var packed = new byte[grey.Width * grey.Height];
        for (var y = 0; y < grey.Height; y++)
            rows.Slice(y * grey.RowBytes, grey.Width).CopyTo(packed.AsSpan(y * grey.Width));
        return packed;
    }
}
