namespace JarLabel.Operations.Labels;

/// <summary>The bytes of a printed file and the name it gets when nobody gave one.</summary>
public static class LabelFiles
{
    private const int ScreenDpi = 300;

    /// <summary>The usual name: jar, revision and design. A reprint takes the place of the same label's older print.</summary>
    public static string NameFor(Jar jar, string design) =>
        string.Create(CultureInfo.InvariantCulture, $"jar-{jar.Number}-r{jar.Revision}-{design}.pdf");

    /// <summary>The page as PDF, PNG or SVG by the file's ending.</summary>
    /// <param name="file">The file's name.</param>
    /// <param name="pages">What is drawn; a picture holds one page.</param>
    /// <param name="title">The title inside a PDF.</param>
    /// <param name="moment">The moment the words speak of.</param>
    public static Result<byte[]> Bytes(string file, IReadOnlyList<Page> pages, string title, DateTime moment)
    {
        using var target = new MemoryStream();
        switch (Path.GetExtension(file).ToUpperInvariant())
        {
            case ".PDF":
                PdfRenderer.Write(target, pages, new PdfFacts(title, new DateTimeOffset(DateTime.SpecifyKind(moment, DateTimeKind.Local))));
                break;
            case ".PNG" when pages.Count == 1:
                Picture(target, pages[0]);
                break;
            case ".SVG" when pages.Count == 1:
                SvgRenderer.Write(target, pages[0]);
                break;
            case ".PNG" or ".SVG":
                return OperationProblems.PictureOfManyPages(file, pages.Count);
            default:
                return OperationProblems.UnknownFileKind(file);
        }

        // A buffer that is just full need not be copied.
        return target.Capacity == target.Length ? target.GetBuffer() : target.ToArray();
    }

    // One bit a dot, as the printer has it, where there are no greys.
    private static void Picture(Stream target, Page page)
    {
        if (page.OneBitDpi is { } dpi)
        {
            PngRenderer.WriteMono(target, page, dpi);
        }
        else
        {
            PngRenderer.Write(target, page, ScreenDpi);
        }
    }
}
