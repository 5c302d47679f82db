using JarLabel.Layout.Codes;
using PdfSharp.Drawing;
using PdfSharp.Fonts;
using PdfSharp.Pdf;

namespace JarLabel.Benchmarks.Labels;

/// <summary>The peer: the same content drawn with PDFsharp, each dark run of a code as a rectangle, as its own examples draw.</summary>
internal static class PdfSharpRun
{
    private const double Point = 72 / 25.4;

    internal static void Draw(int labels, string file)
    {
        GlobalFontSettings.FontResolver ??= new Resolver();
        using var document = new PdfDocument();
        document.Options.CompressContentStreams = true;
        var fonts = new Dictionary<(Face, double), XFont>();
        foreach (var sheet in Enumerable.Range(0, labels).Chunk(Content.PerPage))
        {
            var page = document.AddPage();
            (page.Width, page.Height) = (XUnit.FromMillimeter(Content.PageWidth), XUnit.FromMillimeter(Content.PageHeight));
            using var canvas = XGraphics.FromPdfPage(page);
            foreach (var label in sheet)
                Draw(canvas, label, fonts);
        }

        document.Save(file);
    }

    private static void Draw(XGraphics canvas, int label, Dictionary<(Face, double), XFont> fonts)
    {
        foreach (var line in Content.Lines(label))
            canvas.DrawString(line.Text, FontOf(line, fonts), XBrushes.Black, line.X * Point, line.Baseline * Point);
        var (x, y) = Content.CodeCorner(label);
        var modules = QrEncoder.Encode(Content.Payload(label));
        for (var row = 0; row < modules.Size; row++)
            DrawRow(canvas, modules, row, x, y + (row * Content.Module));
    }

    private static void DrawRow(XGraphics canvas, QrModules modules, int row, double x, double y)
    {
        for (var from = 0; from < modules.Size; from++)
        {
            var to = from;
            while (to < modules.Size && modules[row, to])
                to++;
            if (to > from)
                canvas.DrawRectangle(XBrushes.Black, (x + (from * Content.Module)) * Point, y * Point, (to - from) * Content.Module * Point, Content.Module * Point);
            from = to;
        }
    }

    private static XFont FontOf(TextMark line, Dictionary<(Face, double), XFont> fonts)
    {
        if (!fonts.TryGetValue((line.Face, line.Points), out var font))
            fonts[(line.Face, line.Points)] = font = new XFont(line.Face.ToString(), line.Points);
        return font;
    }

    private sealed class Resolver : IFontResolver
    {
        public byte[] GetFont(string faceName) => FontBytes.Of(Enum.Parse<Face>(faceName));

        public FontResolverInfo ResolveTypeface(string familyName, bool bold, bool italic) => new(familyName);
    }
}
