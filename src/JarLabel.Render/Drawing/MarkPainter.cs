namespace JarLabel.Render.Drawing;

/// <summary>Draws marks on a Skia canvas whose unit is the grain. Belongs to one thread.</summary>
/// <param name="colour">What an ink is here.</param>
/// <param name="smooth">Whether edges are smoothed.</param>
/// <param name="faces">The typeface that stands for a face.</param>
/// <param name="dotsPerMillimetre">For a picture of dots, its resolution: QR modules are then put on whole dots. 0 for vectors.</param>
internal sealed class MarkPainter(Func<Ink, SKColor> colour, bool smooth, Func<Face, SKTypeface> faces, double dotsPerMillimetre = 0) : IDisposable
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
                DrawBar(canvas, bar);
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

    // From edge to edge, so that bars that meet on paper meet in grains.
    private void DrawBar(SKCanvas canvas, BarMark bar)
    {
        var (right, bottom) = (Measure.Grains(bar.X + bar.Width), Measure.Grains(bar.Y + bar.Height));
        canvas.DrawRect(new SKRect(Measure.Grains(bar.X), Measure.Grains(bar.Y), right, bottom), paint);
    }

    private void Fill(Ink ink) => paint.Color = colour(ink);

    private void DrawText(SKCanvas canvas, TextMark mark)
    {
        if (mark.Text.Length == 0)
            return;
        Fill(mark.Ink);
        using var blob = TextBlobs.Build(mark.Text, Typesetter.For(mark.Face).Set(mark.Text), FontOf(mark));
        if (blob is null)
            return;
        if (dotsPerMillimetre == 0)
            canvas.DrawText(blob, Measure.Grains(mark.X), Measure.Grains(mark.Baseline), paint);
        else
            DrawInPoints(canvas, blob, mark);
    }

    private void DrawInPoints(SKCanvas canvas, SKTextBlob blob, TextMark mark)
    {
        canvas.Save();
        canvas.Translate(Measure.Grains(mark.X), Measure.Grains(mark.Baseline));
        canvas.Scale(Measure.GrainsPerPoint);
        canvas.DrawText(blob, 0, 0, paint);
        canvas.Restore();
    }

    // Skia quietly draws a font of more than 16,384 units at another size when it makes dots: there the font's unit is the point.
    private double FontUnitsPerPoint => dotsPerMillimetre == 0 ? Measure.GrainsPerPoint : 1;

    private SKFont FontOf(TextMark mark)
    {
        if (!fonts.TryGetValue((mark.Face, mark.Points), out var font))
        {
            fonts[(mark.Face, mark.Points)] = font = Typefaces.Font(faces(mark.Face), (float)(mark.Points * FontUnitsPerPoint));
            font.Edging = smooth ? SKFontEdging.Antialias : SKFontEdging.Alias;
        }

        return font;
    }

    private void DrawOutline(SKCanvas canvas, PathMark mark)
    {
        Fill(mark.Ink);
        canvas.Save();
        canvas.Translate(Measure.Grains(mark.X), Measure.Grains(mark.Y));
        canvas.Scale((float)(mark.Scale * Measure.GrainsPerMillimetre));
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
        foreach (var ring in QrOutline.Trace(mark.Modules))
            builder.AddPoly(Array.ConvertAll(ring, corner => new SKPoint(corner.X, corner.Y)), close: false);
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
        dotsPerMillimetre == 0 ? Measure.Grains(length) : Measure.Grains(Math.Round(length * dotsPerMillimetre) / dotsPerMillimetre);

    // A module within a fiftieth of a whole number of dots is that number; any other stays true to size and its edges fall where they fall.
    private float ModuleOnDots(double module)
    {
        var dots = module * dotsPerMillimetre;
        return Math.Abs(dots - Math.Round(dots)) <= 0.02 ? OnDots(module) : Measure.Grains(module);
    }
}
