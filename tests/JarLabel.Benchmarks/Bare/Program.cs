using QRCoder;
using SkiaSharp;

// The least a program can do that writes one label: five lines and a code, with Skia and QRCoder and nothing else.
const float Point = 72 / 25.4f;
using var document = SKDocument.CreatePdf(args[0]);
using var canvas = document.BeginPage(66.675f * Point, 25.4f * Point);
canvas.Scale(Point);
using var paint = new SKPaint { IsAntialias = true };
Line("1½ lb cut", 7, "IBMPlexSansCondensed_700Bold", 14);
Line("Garnet, dewaxed", 11, "IBMPlexSansCondensed_600SemiBold", 9);
Line("mixed 9 Mar 2026", 15, "IBMPlexSansCondensed_400Regular", 8);
Line("use by ≈ 9 Nov 2026", 19, "IBMPlexSansCondensed_400Regular", 8);
Line("Jar 142-5 · 180 g/L · ethanol 95 %", 22.5f, "IBMPlexSansCondensed_400Regular", 7);
using var code = QRCodeGenerator.GenerateQrCode("HTTP://192.168.1.20:5080/J/142-5.1", QRCodeGenerator.ECCLevel.M);
for (var row = 0; row < code.ModuleMatrix.Count; row++)
{
    for (var column = 0; column < code.ModuleMatrix.Count; column++)
    {
        if (code.ModuleMatrix[row][column])
            canvas.DrawRect(46 + (column * 0.508f), 2 + (row * 0.508f), 0.508f, 0.508f, paint);
    }
}

document.EndPage();
document.Close();

void Line(string text, float y, string font, float points)
{
    using var stream = typeof(Program).Assembly.GetManifestResourceStream(font);
    using var typeface = SKTypeface.FromStream(stream);
    using var size = new SKFont(typeface, points / Point) { Subpixel = true, LinearMetrics = true, Hinting = SKFontHinting.None };
    canvas.DrawText(text, 2, y, SKTextAlign.Left, size, paint);
}
