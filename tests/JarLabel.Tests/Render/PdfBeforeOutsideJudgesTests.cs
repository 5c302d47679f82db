namespace JarLabel.Tests.Render;

/// <summary>PDFs given to poppler, qpdf, zbar and a second barcode library.</summary>
public sealed class PdfBeforeOutsideJudgesTests : IDisposable
{
    private readonly ScratchFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Qpdf_finds_no_fault()
    {
        var report = OutsideProgram.Qpdf.Run("--check", Saved(Samples.Label(), Samples.Label("HTTP://192.168.1.20:5080/J/143-3.1")));
        Assert.Contains("PDF Version: 1.7", report, StringComparison.Ordinal);
        Assert.Contains("No syntax or stream encoding errors found", report, StringComparison.Ordinal);
    }

    [Fact]
    public void Poppler_reads_every_line_exactly()
    {
        var read = OutsideProgram.PdfToText.Run("-enc", "UTF-8", Saved(Samples.Label()), "-");
        Assert.Equal(Samples.Lines, read.Split(['\n', '\f'], StringSplitOptions.RemoveEmptyEntries));
    }

    [Theory]
    [InlineData("office fluff, first filter")]
    [InlineData("¼ ⅓ ½ ⅔ ¾ ⅛ ⅜ ⅝ ⅞ lb")]
    [InlineData("a·b × c ≈ d ≤ e ≥ f – g — h")]
    [InlineData("10 µm, 20 °C, 180 g/L, ±5 %")]
    [InlineData("cafe\u0301 in two characters")]
    [InlineData("Ångström, Größe, crème brûlée")]
    public void Poppler_reads_ligature_traps_fractions_and_signs(string text)
    {
        var read = OutsideProgram.PdfToText.Run("-enc", "UTF-8", Saved(Samples.TextOnly(text)), "-");
        Assert.Equal(text.Normalize(), read.Trim('\n', '\f').Normalize());
    }

    [Fact]
    public void A_no_break_space_parts_words_for_a_reader()
    {
        var read = OutsideProgram.PdfToText.Run("-enc", "UTF-8", Saved(Samples.TextOnly("350\u00A0mL of ethanol")), "-");
        Assert.Equal("350 mL of ethanol", read.Trim('\n', '\f').Replace('\u00A0', ' '));
    }

    [Fact]
    public void Poppler_sees_three_embedded_TrueType_fonts_that_read_back()
    {
        var fonts = OutsideProgram.PdfFonts.Run(Saved(Samples.Label())).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..];
        Assert.Equal(3, fonts.Length);
        Assert.All(fonts, font => Assert.Matches(@"IBMPlexSansCond\S*\s+CID TrueType\s+Identity-H\s+yes yes yes", font));
    }

    [Theory]
    [InlineData(101.6, 50.8, "288 x 144 pts")]
    [InlineData(215.9, 279.4, "612 x 792 pts (letter)")]
    [InlineData(25.4, 12.7, "72 x 36 pts")]
    public void Poppler_sees_the_papers_size(double width, double height, string size) =>
        Assert.Contains($"Page size:       {size}\n", OutsideProgram.PdfInfo.Run(Saved(new Page(width, height, []))), StringComparison.Ordinal);

    [Fact]
    public void Poppler_finds_no_picture_of_dots() =>
        Assert.Equal(2, OutsideProgram.PdfImages.Run("-list", Saved(Samples.Label())).Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);

    [Theory]
    [InlineData(203)]
    [InlineData(300)]
    [InlineData(600)]
    public void Zbar_reads_the_code_from_the_page_as_poppler_draws_it(int dpi) =>
        Assert.Equal(Samples.Payload, OutsideProgram.ZbarImg.Run("--quiet", "--raw", Rasterised(dpi)).Trim());

    [Theory]
    [InlineData(203)]
    [InlineData(300)]
    [InlineData(600)]
    public void Zxing_cpp_reads_the_code_from_the_page_as_poppler_draws_it(int dpi) =>
        Assert.Contains($"\"{Samples.Payload}\"", OutsideProgram.ZXingReader.Run(Rasterised(dpi)), StringComparison.Ordinal);

    private string Rasterised(int dpi)
    {
        OutsideProgram.PdfToPpm.Run("-r", dpi.ToString(CultureInfo.InvariantCulture), "-png", "-singlefile", Saved(Samples.Label()), folder["page"]);
        return folder["page.png"];
    }

    private string Saved(params Page[] pages)
    {
        File.WriteAllBytes(folder["labels.pdf"], Samples.Pdf(pages));
        return folder["labels.pdf"];
    }
}
