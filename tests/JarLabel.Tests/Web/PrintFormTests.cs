using JarLabel.Operations.Printing;
using JarLabel.Operations.Sheets;
using JarLabel.Store.Printers;
using JarLabel.Tests.Printing;
using JarLabel.Web.Printing;
using static JarLabel.Tests.Printing.FaultyPrinter;

namespace JarLabel.Tests.Web;

/// <summary>Labels that go to a printer from the pages, with a printer on loopback that behaves as it is told.</summary>
public sealed class PrintFormTests : IDisposable
{
    private const string Stock = "letter-2x5-101.6x50.8";

    private readonly FaultyPrinter peer = new();
    private readonly WebShop shop = new();

    public PrintFormTests()
    {
        var folder = ShopFolder.At(shop.Folder).Require();
        ShopSettingsFile.Write(folder, ShopSettingsFile.Read(folder).Require() with { Printers = [new("bench", peer.Uri)] }).Require();
    }

    public void Dispose()
    {
        shop.Dispose();
        peer.Dispose();
    }

    [Theory]
    [InlineData("/mix", true)]
    [InlineData("/J/1-9/thin", true)]
    [InlineData("/J/1-9/thicken", true)]
    [InlineData("/J/1-9/label", true)]
    [InlineData("/J/1-9/move", true)]
    [InlineData("/J/1-9/undo", true)]
    [InlineData("/J/1-9/note", false)]
    [InlineData("/J/1-9/test", false)]
    public async Task The_shops_printers_can_be_chosen_wherever_a_label_is_written(string form, bool offered)
    {
        Assert.Equal(offered, (await shop.Get(form)).Text.Contains("<option value=\"bench\">bench</option>", StringComparison.Ordinal));
        Assert.Empty(peer.Asked);
    }

    [Fact]
    public async Task A_thinning_is_recorded_and_its_label_goes_to_the_printer_that_was_chosen()
    {
        var done = await Ended(await Thin(("print-to", "bench")));
        Assert.Contains("bench: printed, job 7.", done.Seen, StringComparison.Ordinal);
        Assert.Equal(2, shop.Jar(1).Jar.Revision);
        Assert.Equal(
            await File.ReadAllBytesAsync(Directory.GetFiles(Path.Combine(shop.Folder, "labels"), "jar-1-9-r2-*.pdf").Single(), TestContext.Current.CancellationToken),
            peer.The(IppOperation.PrintJob).Document);
        Assert.Equal([1, 2], Taken());
    }

    [Fact]
    public async Task A_job_that_failed_is_told_in_the_words_of_the_command_line_and_its_place_is_free_again()
    {
        peer.On(IppOperation.GetJobAttributes, asked => Reply(asked, 0, Job(7, 8, "aborted-by-system")));
        var done = await Ended(await Thin(("print-to", "bench")));
        Assert.Contains("bench: not printed; everything else is recorded.", done.Seen, StringComparison.Ordinal);
        Assert.Contains("The printer gave the job up: ", done.Seen, StringComparison.Ordinal);
        Assert.Contains("JL517", done.Seen, StringComparison.Ordinal);
        Assert.Contains("JL532", done.Seen, StringComparison.Ordinal);
        Assert.Equal(2, shop.Jar(1).Jar.Revision);
        Assert.Equal([1], Taken());
    }

    [Fact]
    public async Task A_printer_that_cannot_print_is_told_beside_the_field_and_nothing_is_recorded()
    {
        peer.On(IppOperation.GetPrinterAttributes, asked => Reply(asked, 0, Printer(Words("printer-state-reasons", "media-empty"))));
        var page = await Thin(("print-to", "bench"));
        Assert.Equal(422, page.Status);
        Assert.Contains("JL515", page.Seen, StringComparison.Ordinal);
        Assert.Contains("Nothing was recorded.", page.Seen, StringComparison.Ordinal);
        Assert.Contains("<option value=\"bench\" selected>", page.Text, StringComparison.Ordinal);
        Assert.Equal(1, shop.Jar(1).Jar.Revision);
        Assert.Equal([1], Taken());
    }

    [Fact]
    public async Task No_address_that_somebody_sends_is_called()
    {
        var page = await Thin(("print-to", peer.Uri));
        Assert.Equal(422, page.Status);
        Assert.Contains("JL502", page.Seen, StringComparison.Ordinal);
        Assert.Empty(peer.Asked);
        Assert.Equal(1, shop.Jar(1).Jar.Revision);
    }

    [Fact]
    public async Task What_cannot_be_done_or_was_changed_by_somebody_else_is_told_before_a_printer_is_asked()
    {
        Assert.Contains("JL135", (await Thin(("to", "2"), ("print-to", "bench"))).Seen, StringComparison.Ordinal);
        var form = WebShop.Hidden((await shop.Get("/J/1-9/thin")).Text);
        await Thin();
        var second = await shop.Post("/J/1-9/thin", [.. form, ("to", "1"), ("container", "1 L"), ("print-to", "bench"), ("do", "record")]);
        Assert.Equal(409, second.Status);
        Assert.Contains("JL150", second.Seen, StringComparison.Ordinal);
        Assert.Empty(peer.Asked);
    }

    [Fact]
    public async Task Without_a_new_label_no_printer_is_asked()
    {
        Assert.Equal(303, (await Thin(("no-label", "yes"), ("print-to", "bench"))).Status);
        Assert.Empty(peer.Asked);
    }

    [Fact]
    public async Task While_a_printer_works_the_page_says_how_it_stands_and_a_server_that_ends_takes_the_job_back()
    {
        var cancelled = false;
        peer.On(IppOperation.CancelJob, asked =>
        {
            cancelled = true;
            return Reply(asked, 0);
        });
        peer.On(IppOperation.GetJobAttributes, asked => Reply(asked, 0, cancelled ? Job(7, 7, "job-canceled-by-user") : Job(7, 5, "job-printing")));
        var sent = await Thin(("print-to", "bench"));
        var page = await Until(sent, seen => seen.Contains("is printing", StringComparison.Ordinal));
        Assert.Contains("bench: job 7 is printing", page.Seen, StringComparison.Ordinal);
        Assert.Equal([1, 2], Taken());

        shop.Stop();
        Assert.Equal(1, peer.Count(IppOperation.CancelJob));
        Assert.Equal(2, shop.Jar(1).Jar.Revision);
        Assert.Equal([1], Taken());
    }

    [Theory]
    [InlineData("print-to")]
    [InlineData("printer")]
    public async Task A_label_is_placed_by_what_was_measured_on_its_printer(string field)
    {
        CalibrationFile.Keep(ShopFolder.At(shop.Folder).Require(), new Calibration("bench", Stock, 2, 0, 1, 1, new DateOnly(2026, 3, 1))).Require();
        var plain = await LeftOfLabel(("start", "3"));
        var placed = await LeftOfLabel(("start", "5"), (field, "bench"));

        // Places 3 and 5 stand in one column. That printer prints 2 mm too far right; 1 pt is 1/72 inch.
        Assert.Equal(plain - (2 / 25.4 * 72), placed, 0.01);
    }

    /// <summary>The fault is put here: the service is let go of before it has printed.</summary>
    [Fact]
    public async Task A_fault_of_ours_while_printing_is_told_and_the_step_stays_recorded()
    {
        var said = new List<string>();
        using var papers = new PaperRuns(said.Add);
        var bench = shop.Bench();
        var service = papers.Ask(bench, new PrintRequest("bench", Stock)).Require();
        LabelJar.Do(bench, JarNumber.From(1), new LabelChoice(Sheet: Stock), null).Require();
        service.Dispose();
        var run = papers.Begin(service, "bench", "Jar 1-9");
        for (var tries = 0; run.Outcome is null && tries < 100; tries++)
        {
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        Assert.Equal(PrintEnd.Unknown, run.Outcome!.End);
        var problem = Assert.Single(run.Outcome.Problems);
        Assert.Equal("JL620", problem.Code);
        Assert.Contains("The step is recorded", problem.Message, StringComparison.Ordinal);
        Assert.Contains(nameof(ObjectDisposedException), Assert.Single(said), StringComparison.Ordinal);
        Assert.DoesNotContain(nameof(ObjectDisposedException), problem.Message, StringComparison.Ordinal);
        Assert.Equal([1, 2], Taken());
    }

    private async Task<double> LeftOfLabel(params (string, string)[] fields)
    {
        await Ended(await shop.Fill("/J/1-9/label", [.. fields, ("sheet", Stock), ("do", "record")]));
        using var pdf = PdfDocument.Open(Directory.GetFiles(Path.Combine(shop.Folder, "labels")).MaxBy(File.GetLastWriteTimeUtc)!);
        return pdf.GetPage(1).Letters.Min(letter => letter.BoundingBox.Left);
    }

    private Task<Page> Thin(params (string Name, string Value)[] more)
    {
        (string Name, string Value)[] usual = [("to", "1"), ("container", "1 L")];
        return shop.Fill("/J/1-9/thin", [.. usual.Where(u => more.All(m => m.Name != u.Name)), .. more, ("do", "record")]);
    }

    private Task<Page> Ended(Page sent) => Until(sent, seen => !seen.Contains("How it stands now", StringComparison.Ordinal));

    private async Task<Page> Until(Page sent, Func<string, bool> so)
    {
        Assert.True(sent.Status == 303, sent.Seen);
        for (var tries = 0; tries < 100; tries++)
        {
            if (await shop.Get(sent.Location!) is var page && so(page.Seen))
            {
                return page;
            }

            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        Assert.Fail("It does not come to that.");
        return sent;
    }

    private IReadOnlyList<int> Taken() => [.. SheetsInUse.State(shop.Bench()).Require().Single(sheet => sheet.InUse.Stock == Stock).InUse.Taken.Order()];
}
