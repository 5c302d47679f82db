using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;
using Page = JarLabel.Layout.Marks.Page;

namespace JarLabel.Tests.Render;

/// <summary>PDFs read back by PdfPig, a reader that shares no code with the writer.</summary>
public class PdfRendererTests
{
    private const double Millimetre = 72 / 25.4;

    [Theory]
    [InlineData(215.9, 279.4)]
    [InlineData(210, 297)]
    [InlineData(101.6, 50.8)]
    [InlineData(66.675, 25.4)]
    [InlineData(62, 29)]
    [InlineData(57, 32)]
    [InlineData(88.9, 50.8)]
    [InlineData(101.6, 152.4)]
    public void The_paper_is_exact_to_a_hundredth_of_a_millimetre(double width, double height)
    {
        using var document = PdfDocument.Open(Samples.Pdf(new Page(width, height, [])));
        var page = document.GetPage(1);
        Assert.Equal(width, page.Width / Millimetre, 0.01);
        Assert.Equal(height, page.Height / Millimetre, 0.01);
    }

    [Fact]
    public void Every_word_reads_back()
    {
        using var document = PdfDocument.Open(Samples.Pdf(Samples.Label()));
        var words = document.GetPage(1).GetWords().Select(word => word.Text).Order(StringComparer.Ordinal);
        Assert.Equal(string.Join(' ', Samples.Lines).Split(' ').Order(StringComparer.Ordinal), words);
    }

    [Theory]
    [InlineData("AVATAR Two Wax Ty", Face.Bold, 18)]
    [InlineData("1½ lb cut, 2½ gal", Face.SemiBold, 9.25)]
    [InlineData("use by ≈ 9 Nov 2026", Face.Regular, 7.3)]
    public void A_line_begins_at_its_mark_and_ends_where_the_ruler_says(string text, Face face, double points)
    {
        using var document = PdfDocument.Open(Samples.Pdf(Samples.TextOnly(text, face, points)));
        var letters = document.GetPage(1).Letters;
        Assert.Equal(3, letters[0].StartBaseLine.X / Millimetre, 0.005);
        Assert.Equal(50.8 - 10, letters[0].StartBaseLine.Y / Millimetre, 0.005);
        Assert.Equal(3 + new SkiaRuler().Width(text, face, points), letters[^1].EndBaseLine.X / Millimetre, 0.005);
    }

    [Fact]
    public void Each_font_is_embedded_as_TrueType_and_nothing_else_is_used()
    {
        using var document = PdfDocument.Open(Samples.Pdf(Samples.Label()));
        Assert.Equal(3, Dictionaries(document).Count(dictionary => dictionary.ContainsKey(NameToken.FontFile2)));
        Assert.All(document.GetPage(1).Letters, letter => Assert.Contains("IBMPlexSansCond", letter.FontName, StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_on_the_page_is_a_picture_of_dots()
    {
        using var document = PdfDocument.Open(Samples.Pdf(Samples.Label()));
        Assert.Empty(document.GetPage(1).GetImages());
    }

    [Fact]
    public void The_print_dialog_is_asked_not_to_scale()
    {
        using var document = PdfDocument.Open(Samples.Pdf(Samples.Label()));
        var preferences = Assert.IsType<DictionaryToken>(document.Structure.Catalog.CatalogDictionary.Data["ViewerPreferences"]);
        Assert.Equal("None", Assert.IsType<NameToken>(preferences.Data["PrintScaling"]).Data);
        Assert.Equal(1.7, document.Version, 0.001);
    }

    [Fact]
    public void The_file_carries_the_moment_it_was_given_and_not_the_clock()
    {
        using var document = PdfDocument.Open(Samples.Pdf(Samples.Label()));
        Assert.StartsWith("D:20260309103000", document.Information.CreationDate, StringComparison.Ordinal);
        Assert.Equal("Jar 142-5", document.Information.Title);
    }

    [Fact]
    public async Task The_same_pages_give_the_same_bytes_on_every_thread()
    {
        var files = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => Samples.Pdf(Many(12)))));
        Assert.All(files, file => Assert.Equal(files[0], file));
    }

    [Fact]
    public void Pages_made_as_they_are_drawn_give_the_same_bytes_as_pages_in_a_list() =>
        Assert.Equal(Samples.Pdf(Many(12).ToList()), Samples.Pdf(Many(12)));

    /// <summary>Outside judge: PdfPig reads what the files carry. A font of our family has 108 kB; what one label needs of three is less than
    /// a tenth of that.</summary>
    [Fact]
    public void A_label_carries_the_part_of_each_font_that_it_uses_and_a_long_run_the_whole()
    {
        var (one, many) = (Samples.Pdf(Samples.Label()), Samples.Pdf(Many(40)));
        Assert.InRange(FontBytes(one), 3_000, 30_000);
        Assert.InRange(FontBytes(many), 300_000, 340_000);
        using var run = PdfDocument.Open(many);
        using var label = PdfDocument.Open(one);
        Assert.Equal(40, run.NumberOfPages);
        Assert.Equal(label.GetPage(1).Letters.Select(Placed), run.GetPage(17).Letters.Select(Placed));

        static (string, double, double) Placed(Letter letter) => (letter.Value, Math.Round(letter.StartBaseLine.X, 3), Math.Round(letter.Width, 3));
    }

    [Fact]
    public void A_fault_while_making_a_page_comes_out_as_it_is()
    {
        var fault = Assert.Throws<InvalidDataException>(() => Samples.Pdf(Many(5).Concat(Failing())));
        Assert.Equal("no such jar", fault.Message);
    }

    [Fact]
    public void A_fault_of_the_disk_stops_the_making_of_pages()
    {
        var made = 0;
        var pages = Many(100_000).Select(page => (made++, page).page);
        Assert.Throws<IOException>(() => PdfRenderer.Write(new FullDisk(), pages, Samples.Facts));
        Assert.True(made < 10_000);
    }

    private static int FontBytes(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return Dictionaries(document).Where(dictionary => dictionary.ContainsKey(NameToken.FontFile2))
            .Select(dictionary => (StreamToken)document.Structure.GetObject(((IndirectReferenceToken)dictionary.Data[NameToken.FontFile2.Data]).Data).Data)
            .Sum(font => ((NumericToken)font.StreamDictionary.Data["Length1"]).Int);
    }

    private static IEnumerable<Page> Many(int count) =>
        Enumerable.Range(1, count).Select(i => Samples.Label($"HTTP://192.168.1.20:5080/J/{i}"));

    private static IEnumerable<Page> Failing()
    {
        yield return Samples.Label();
        throw new InvalidDataException("no such jar");
    }

    private static IEnumerable<DictionaryToken> Dictionaries(PdfDocument document) =>
        document.Structure.CrossReferenceTable.ObjectOffsets.Keys
            .Select(reference => document.Structure.GetObject(reference).Data).OfType<DictionaryToken>();

    private sealed class FullDisk : MemoryStream
    {
        public override void Write(byte[] buffer, int offset, int count)
        {
            if (Length + count > 200_000)
                throw new IOException("No space left on device");
            base.Write(buffer, offset, count);
        }
    }
}
