using SkiaSharp;
using ZXing;

namespace JarLabel.Render.Reading;

/// <summary>The brightness of a photo's dots, as the code finder wants it: one byte a dot, 0 black.</summary>
internal static class PhotoLight
{
    internal static LuminanceSource Of(SKBitmap photo)
    {
        using var grey = new SKBitmap(photo.Width, photo.Height, SKColorType.Gray8, SKAlphaType.Opaque);
        using (var canvas = new SKCanvas(grey))
        {
            // A picture with clear parts is looked at on white paper.
            canvas.Clear(SKColors.White);
            canvas.DrawBitmap(photo, 0, 0, SKSamplingOptions.Default);
        }

        return new RGBLuminanceSource(Packed(grey), grey.Width, grey.Height, RGBLuminanceSource.BitmapFormat.Gray8);
    }

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
