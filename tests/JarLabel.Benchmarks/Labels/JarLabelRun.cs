using JarLabel.Layout.Codes;

namespace JarLabel.Benchmarks.Labels;

/// <summary>JarLabel: marks placed and codes encoded page by page as the PDF is drawn.</summary>
internal static class JarLabelRun
{
    internal static void Draw(int labels, string file)
    {
        using var target = File.Create(file);
        PdfRenderer.Write(target, Pages(labels), new PdfFacts("Labels", DateTimeOffset.UnixEpoch));
    }

    private static IEnumerable<Page> Pages(int labels) =>
        Enumerable.Range(0, labels).Chunk(Content.PerPage).Select(sheet => new Page(Content.PageWidth, Content.PageHeight, [.. sheet.SelectMany(Marks)]));

    private static IEnumerable<Mark> Marks(int label)
    {
        var (x, y) = Content.CodeCorner(label);
        return [.. Content.Lines(label), new QrMark("code", x, y, Content.Module, QrEncoder.Encode(Content.Payload(label)))];
    }
}
