using JarLabel.Render.Pdf;

namespace JarLabel.Render;

/// <summary>Writes pages as a PDF: vectors only, the fonts embedded from our own files, the paper's exact size, text that reads back,
/// no scaling in the print dialog. The same pages and facts give the same bytes on every thread, run and machine.</summary>
public static class PdfRenderer
{
    // Skia rounds page sizes to whole dots of this resolution. 2540 is a hundredth of a millimetre; at 72 or 300 the paper is wrong.
    private const float HundredthsOfAMillimetre = 2540;

    // Of so many pages that come one by one, each font is a small part.
    private const int Few = 16;

    /// <summary>Draws the pages one after the other as they come, and holds a handful at a time, however many there are. Unless they are
    /// few or a list, they are made on a second thread, a little ahead of the drawing.</summary>
    /// <param name="target">Where the bytes go; it need not be seekable, and is left open.</param>
    /// <param name="pages">The pages, at least one.</param>
    /// <param name="facts">What the file says about itself.</param>
    public static void Write(Stream target, IEnumerable<Page> pages, PdfFacts facts)
    {
        using var sink = new PdfSink();
        using var document = SKDocument.CreatePdf(sink, Metadata(facts));
        using var turning = pages.GetEnumerator();
        var drawn = KnownOr(pages, turning);
        using var parts = drawn is IReadOnlyCollection<Page> ? new PartTypefaces(drawn) : null;
        using var painter = new MarkPainter(Inks.Colour, smooth: true, parts is null ? Typefaces.For : parts.For);
        foreach (var page in ReadAhead.Of(drawn))
        {
            Draw(document, painter, page);
            sink.PassOn(target);
        }

        if (sink.Length == 0)
            throw new ArgumentException("A PDF has at least one page.", nameof(pages));
        document.Close();
        sink.PassOnEnd(target);
    }

    /// <summary>The pages as a list when they are few, so that the fonts can be cut down to what they need; else as they come.</summary>
    private static IEnumerable<Page> KnownOr(IEnumerable<Page> pages, IEnumerator<Page> turning)
    {
        if (pages is IReadOnlyCollection<Page>)
            return pages;
        var first = new List<Page>(Few);
        while (first.Count < Few && turning.MoveNext())
            first.Add(turning.Current);
        return first.Count < Few ? first : first.Concat(Rest(turning));
    }

    private static IEnumerable<Page> Rest(IEnumerator<Page> turning)
    {
        while (turning.MoveNext())
            yield return turning.Current;
    }

    private static void Draw(SKDocument document, MarkPainter painter, Page page)
    {
        using var canvas = document.BeginPage((float)(page.Width * Measure.PointsPerMillimetre), (float)(page.Height * Measure.PointsPerMillimetre));
        canvas.Scale(1f / Measure.GrainsPerPoint);
        painter.Draw(canvas, page);
        document.EndPage();
    }

    // PDF/A is off: Skia then writes an identifier made from the machine's clock.
    private static SKDocumentPdfMetadata Metadata(PdfFacts facts) => new(HundredthsOfAMillimetre)
    {
        Title = facts.Title,
        Creator = facts.Creator,
        Producer = facts.Creator,
        Creation = facts.Moment.UtcDateTime,
        Modified = facts.Moment.UtcDateTime,
        PdfA = false,
    };
}

/// <summary>What a PDF says about itself. The same facts and pages always give the same bytes.</summary>
/// <param name="Title">The document's title, shown in a viewer's window.</param>
/// <param name="Moment">Creation time: the moment of the printed content, never the clock of the machine that draws.</param>
/// <param name="Creator">The program, with its version.</param>
public sealed record PdfFacts(string Title, DateTimeOffset Moment, string Creator = "JarLabel");
