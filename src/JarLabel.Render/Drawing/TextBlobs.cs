using System.Text;
namespace JarLabel.Render.Drawing;

/// <summary>Shaped lines as Skia draws them.</summary>
internal static class TextBlobs
{
    internal static SKTextBlob? Build(string text, ShapedLine line, SKFont font)
    {
        using var builder = new SKTextBlobBuilder();
        if (line.Legible)
            Place(line, font.Size, builder.AllocateRawPositionedRun(font, line.Glyphs.Count));
        else
            PlaceWithText(text, line, font, builder);
        return builder.Build();
    }

    private static void Place(ShapedLine line, float size, SKRawRunBuffer<SKPoint> run)
    {
        var scale = size / Typesetter.Em;
        for (var i = 0; i < line.Glyphs.Count; i++)
        {
            run.Glyphs[i] = line.Glyphs[i].Number;
            run.Positions[i] = new SKPoint(line.Glyphs[i].X * scale, line.Glyphs[i].Y * scale);
        }
    }

    // The PDF back end then writes the characters beside the glyphs (ActualText), so that the line reads back exactly.
    private static void PlaceWithText(string text, ShapedLine line, SKFont font, SKTextBlobBuilder builder)
    {
        var utf8 = Encoding.UTF8.GetBytes(text);
        var run = builder.AllocateRawPositionedTextRun(font, line.Glyphs.Count, utf8.Length);
        Place(line, font.Size, run);
        utf8.CopyTo(run.Text);
        for (var i = 0; i < line.Glyphs.Count; i++)
            run.Clusters[i] = (uint)Encoding.UTF8.GetByteCount(text.AsSpan(0, line.Glyphs[i].Cluster));
    }
}
