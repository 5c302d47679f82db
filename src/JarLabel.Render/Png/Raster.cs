namespace JarLabel.Render.Png;

/// <summary>A page as dots.</summary>
internal static class Raster
{
    /// <summary>Draws on white paper. The caller disposes the bitmap.</summary>
    internal static SKBitmap Draw(Page page, int dpi, Func<Ink, SKColor> colour, bool smooth)
    {
        var dots = dpi / Measure.MillimetresPerInch;
        var bitmap = new SKBitmap(Dots(page.Width * dots), Dots(page.Height * dots), SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        canvas.Clear(SKColors.White);
        canvas.Scale((float)(dpi / Measure.GrainsPerInch));
        using var painter = new MarkPainter(colour, smooth, Typefaces.For, dots);
        painter.Draw(canvas, page);
        return bitmap;
    }

    private static int Dots(double length) => Math.Max(1, (int)Math.Round(length));
}
