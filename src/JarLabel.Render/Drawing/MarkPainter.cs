using JarLabel.Layout.Marks;
using JarLabel.Render.Text;
using SkiaSharp;

namespace JarLabel.Render.Drawing;

/// <summary>Draws marks on a Skia canvas whose unit is the millimetre. Belongs to one thread.</summary>
/// <param name="colour">What an ink is here.</param>
/// <param name="smooth">Whether edges are smoothed.</param>
/// <param name="dotsPerMillimetre">For a picture of dots, its resolution: QR modules are then put on whole dots. 0 for vectors.</param>
internal sealed class MarkPainter(Func<Ink, SKColor> colour, bool smooth, double dotsPerMillimetre = 0) : IDisposable
{
    private readonly SKPaint paint = new() { IsAntialias = smooth, Style = SKPaintStyle.Fill };
    private readonly Dictionary<(Face Face, double Points), SKFont> fonts = [];
    private readonly Dictionary<string, SKPath> outlines = new(StringComparer.Ordinal);

    internal void Draw(SKCanvas canvas, Page page)
    {
        foreach (var mark in page.Marks)
            Draw(canvas, mark);
    }

    public void Dispose()
    {
        paint.Dispose();
        foreach (var font in fonts.Values)
            font.Dispose();
        foreach (var outline in outlines.Values)
            outline.Dispose();
    }

    private void Draw(SKCanvas canvas, Mark mark)
    {
        switch (mark)
        {
            case TextMark text:
                DrawText(canvas, text);
                break;
            case BarMark bar:
                Fill(bar.Ink);
                canvas.DrawRect((float)bar.X, (float)bar.Y, (float)bar.Width, (float)bar.Height, paint);
                break;
            case PathMark path:
                DrawOutline(canvas, path);
                break;
            case QrMark code:
                DrawCode(canvas, code);
                break;
            default:
                throw new NotSupportedException($"No way to draw a {mark.GetType().Name}.");
        }
    }

    private void Fill(Ink ink) => paint.Color = colour(ink);

    private void DrawText(SKCanvas canvas, TextMark mark)
    {
        if (mark.Text.Length == 0)
            return;
        Fill(mark.Ink);
        using var blob = TextBlobs.Build(mark.Text, Typesetter.For(mark.Face).Set(mark.Text), FontOf(mark));
        if (blob is not null)
            canvas.DrawText(blob, (float)mark.X, (float)mark.Baseline, paint);
    }

    private SKFont FontOf(TextMark mark)
    {
        if (!fonts.TryGetValue((mark.Face, mark.Points), out var font))
        {
            fonts[(mark.Face, mark.Points)] = font = Typefaces.Font(mark.Face, (float)Measure.Millimetres(mark.Points));
            font.Edging = smooth ? SKFontEdging.Antialias : SKFontEdging.Alias;
        }

        return font;
    }

    private void DrawOutline(SKCanvas canvas, PathMark mark)
    {
        Fill(mark.Ink);
        canvas.Save();
        canvas.Translate((float)mark.X, (float)mark.Y);
        canvas.Scale((float)mark.Scale);
        canvas.DrawPath(OutlineOf(mark.Data), paint);
        canvas.Restore();
    }

    private SKPath OutlineOf(string data)
    {
        if (!outlines.TryGetValue(data, out var outline))
        {
            outline = SKPath.ParseSvgPathData(data) ?? throw new FormatException($"Not SVG path data: {data}");
            outline.FillType = SKPathFillType.EvenOdd;
            outlines[data] = outline;
        }

        return outline;
    }

    // Whole module coordinates under one matrix: short numbers in the file, and the same number strings from code to code,
    // which the compressor finds again.
    private void DrawCode(SKCanvas canvas, QrMark mark)
    {
        using var builder = new SKPathBuilder { FillType = SKPathFillType.EvenOdd };
        QrOutline.Trace(mark.Modules, (x, y) => builder.MoveTo(x, y), (x, y) => builder.LineTo(x, y));
        using var path = builder.Detach();
        Fill(Ink.Black);
        paint.IsAntialias = smooth && dotsPerMillimetre == 0;
        canvas.Save();
        canvas.Translate(OnDots(mark.X), OnDots(mark.Y));
        canvas.Scale(ModuleOnDots(mark.Module));
        canvas.DrawPath(path, paint);
        canvas.Restore();
        paint.IsAntialias = smooth;
    }

    private float OnDots(double length) =>
        (float)(dotsPerMillimetre == 0 ? length : Math.Round(length * dotsPerMillimetre) / dotsPerMillimetre);

    // A module within a fiftieth of a whole number of dots is that number; any other stays true to size and its edges fall where they fall.
    private float ModuleOnDots(double module)
    {
        var dots = module * dotsPerMillimetre;
        return Math.Abs(dots - Math.Round(dots)) <= 0.02 ? OnDots(module) : (float)module;
    }
}
