using System.Net;
using System.Text;

namespace JarLabel.Render.Svg;

/// <summary>One SVG document in the making: first the outlines of the letters it uses, then the marks in order.</summary>
internal sealed class SvgPage(TextWriter text)
{
    internal void Write(Page page)
    {
        text.WriteLine($"""<svg xmlns="http://www.w3.org/2000/svg" width="{N(page.Width)}mm" height="{N(page.Height)}mm" viewBox="0 0 {N(page.Width)} {N(page.Height)}">""");
        text.WriteLine("<!-- JarLabel -->");
        WriteLetters(page.Marks.OfType<TextMark>());
        text.WriteLine($"""<rect width="{N(page.Width)}" height="{N(page.Height)}" fill="#FFFFFF"/>""");
        foreach (var mark in page.Marks)
            Write(mark);
        text.WriteLine("</svg>");
    }

    private static string N(double value) => Math.Round(value, 4).ToString("0.####", CultureInfo.InvariantCulture);

    private static string Fill(Ink ink) => string.Create(CultureInfo.InvariantCulture, $"fill=\"#{Inks.Rgb(ink):X6}\"");

    private static string Id(Face face, ushort glyph) => string.Create(CultureInfo.InvariantCulture, $"{char.ToLowerInvariant(face.ToString()[0])}{glyph}");

    private void WriteLetters(IEnumerable<TextMark> marks)
    {
        text.WriteLine("<defs>");
        var used = marks.SelectMany(mark => Set(mark).Glyphs.Select(glyph => (mark.Face, glyph.Number))).Distinct().Order();
        foreach (var (face, glyph) in used)
            WriteLetter(face, glyph);
        text.WriteLine("</defs>");
    }

    private static ShapedLine Set(TextMark mark) => Typesetter.For(mark.Face).Set(mark.Text);

    // Outlines are taken at the font's own units, where their numbers are whole.
    private void WriteLetter(Face face, ushort glyph)
    {
        using var font = Typefaces.Font(Typefaces.For(face), Typesetter.Em);
        using var outline = font.GetGlyphPath(glyph);
        text.WriteLine($"""<path id="{Id(face, glyph)}" d="{outline?.ToSvgPathData()}"/>""");
    }

    private void Write(Mark mark)
    {
        switch (mark)
        {
            case TextMark line:
                Write(line);
                break;
            case BarMark bar:
                text.WriteLine($"""<rect x="{N(bar.X)}" y="{N(bar.Y)}" width="{N(bar.Width)}" height="{N(bar.Height)}" {Fill(bar.Ink)}/>""");
                break;
            case PathMark path:
                text.WriteLine($"""<path transform="translate({N(path.X)} {N(path.Y)}) scale({path.Scale.ToString("R", CultureInfo.InvariantCulture)})" fill-rule="evenodd" {Fill(path.Ink)} d="{WebUtility.HtmlEncode(path.Data)}"/>""");
                break;
            case QrMark code:
                text.WriteLine($"""<path transform="translate({N(code.X)} {N(code.Y)}) scale({N(code.Module)})" shape-rendering="crispEdges" fill-rule="evenodd" {Fill(Ink.Black)} d="{Outline(code.Modules)}"/>""");
                break;
            default:
                throw new NotSupportedException($"No way to draw a {mark.GetType().Name}.");
        }
    }

    private void Write(TextMark mark)
    {
        var scale = Measure.Millimetres(mark.Points) / Typesetter.Em;
        text.Write($"""<g role="img" aria-label="{WebUtility.HtmlEncode(mark.Text)}" transform="translate({N(mark.X)} {N(mark.Baseline)}) scale({scale.ToString("0.########", CultureInfo.InvariantCulture)})" {Fill(mark.Ink)}>""");
        foreach (var glyph in Set(mark).Glyphs)
            text.Write($"""<use href="#{Id(mark.Face, glyph.Number)}" x="{N(glyph.X)}" y="{N(glyph.Y)}"/>""");
        text.WriteLine("</g>");
    }

    private static string Outline(QrModules modules)
    {
        var data = new StringBuilder();
        foreach (var ring in QrOutline.Trace(modules))
            data.Append('M').AppendJoin('L', ring.Select(corner => string.Create(CultureInfo.InvariantCulture, $"{corner.X} {corner.Y}"))).Append('Z');
        return data.ToString();
    }
}
