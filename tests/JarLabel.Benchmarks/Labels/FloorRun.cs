using QRCoder;

namespace JarLabel.Benchmarks.Labels;

/// <summary>The floor: the same text drawn raw with Skia, one call a line, and the same codes encoded and thrown away. No program that
/// draws these labels with these libraries, one step after the other, can be quicker.</summary>
internal static class FloorRun
{
    internal static void Draw(int labels, string file)
    {
        using var document = SKDocument.CreatePdf(file);
        using var paint = new SKPaint { IsAntialias = true };
        var fonts = new Dictionary<(Face, double), SKFont>();
        foreach (var sheet in Enumerable.Range(0, labels).Chunk(Content.PerPage))
        {
            using var canvas = document.BeginPage((float)(Content.PageWidth * 72 / 25.4), (float)(Content.PageHeight * 72 / 25.4));
            canvas.Scale(72 / 25.4f);
            foreach (var label in sheet)
                Draw(canvas, label, fonts, paint);
            document.EndPage();
        }

        document.Close();
    }

    private static void Draw(SKCanvas canvas, int label, Dictionary<(Face, double), SKFont> fonts, SKPaint paint)
    {
        foreach (var line in Content.Lines(label))
            canvas.DrawText(line.Text, (float)line.X, (float)line.Baseline, SKTextAlign.Left, FontOf(line, fonts), paint);
        using var code = QRCodeGenerator.GenerateQrCode(Content.Payload(label), QRCodeGenerator.ECCLevel.M);
    }

    private static SKFont FontOf(TextMark line, Dictionary<(Face, double), SKFont> fonts)
    {
        if (!fonts.TryGetValue((line.Face, line.Points), out var font))
        {
            using var stream = new MemoryStream(FontBytes.Of(line.Face));
            fonts[(line.Face, line.Points)] = font = new SKFont(SKTypeface.FromStream(stream), (float)(line.Points * 25.4 / 72))
            {
                Subpixel = true,
                LinearMetrics = true,
                Hinting = SKFontHinting.None,
            };
        }

        return font;
    }
}
