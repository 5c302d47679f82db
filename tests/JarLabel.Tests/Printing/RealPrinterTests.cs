namespace JarLabel.Tests.Printing;

/// <summary>Before somebody else's printer.</summary>
public class RealPrinterTests
{
    private static CancellationToken Now => TestContext.Current.CancellationToken;

    [Fact]
    public async Task It_takes_a_label_whole_at_actual_size_on_the_paper_named_and_says_when_it_is_done()
    {
        using var peer = await EvePrinter.Start();
        using var printer = Of(peer);
        var pdf = Encoding.ASCII.GetBytes("%PDF-1.7\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj 2 0 obj<</Type/Pages/Kids[]/Count 0>>endobj\ntrailer<</Root 1 0 R>>\n%%EOF\n" + new string('x', 300_000));
        var order = new PrintOrder("Jar 142-5", pdf, 215.9, 279.4, "bench");
        var ready = (await Readiness.Of(printer, order, 300, Now)).Require();
        Assert.Empty(ready.Cautions);
        Assert.Equal(new PaperMargins(6.35, 4.23, 6.35, 4.23), ready.Facts.MarginsOf(215.9, 279.4));
        var result = await PrintRun.Go(printer, order, ready.Facts, _ => { }, Now);
        Assert.Equal((PrintEnd.Printed, null), (result.End, result.Problem?.Message));
        Assert.Equal(pdf, await File.ReadAllBytesAsync(Assert.Single(Directory.EnumerateFiles(peer.Spool, "*.pdf")), Now));
        var said = peer.Said;
        Assert.Contains("print-scaling (keyword) none", said, StringComparison.Ordinal);
        Assert.Contains("x-dimension=21590", said, StringComparison.Ordinal);
        Assert.Contains("y-dimension=27940", said, StringComparison.Ordinal);
        Assert.DoesNotContain("copies (integer)", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_refuses_paper_that_it_does_not_have_in_the_words_of_the_standard()
    {
        using var peer = await EvePrinter.Start();
        using var printer = Of(peer);
        var order = new PrintOrder("Jar 142-5", [], 57, 32, "bench");
        Assert.Equal("JL513", Assert.Single((await Readiness.Of(printer, order, 300, Now)).Problems).Code);

        var facts = (await printer.Facts(Now)).Require();
        var refused = Assert.Single((await printer.Validate(order, facts, Now)).Problems);
        Assert.Equal("JL511", refused.Code);
        Assert.Contains("media-col", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_path_without_a_printer_is_told()
    {
        using var peer = await EvePrinter.Start();
        using var printer = new Printer(PrinterAddress.Read(peer.Uri.Replace("/ipp/print", "/nowhere", StringComparison.Ordinal), "print-to").Require(), PrintPatience.Usual, "bench");
        Assert.Contains(Assert.Single((await printer.Facts(Now)).Problems).Code, (string[])["JL509", "JL528", "JL511"]);
    }

    private static Printer Of(EvePrinter peer) => new(PrinterAddress.Read(peer.Uri, "print-to").Require(), PrintPatience.Usual, "bench");
}
