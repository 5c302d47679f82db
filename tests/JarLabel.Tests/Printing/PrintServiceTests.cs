using JarLabel.Operations.Calibrating;
using JarLabel.Operations.Printing;
using JarLabel.Operations.Sheets;
using static JarLabel.Tests.Printing.FaultyPrinter;

namespace JarLabel.Tests.Printing;

public sealed class PrintServiceTests : IDisposable
{
    private const string Stock = "letter-2x5-101.6x50.8";
    private readonly string folder = Directory.CreateTempSubdirectory("jarlabel-desk-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_place_stays_taken_when_its_label_is_on_paper()
    {
        using var peer = new FaultyPrinter();
        var outcome = Print(peer);
        Assert.Equal((PrintEnd.Printed, 0), (outcome.End, outcome.Problems.Count));
        Assert.Equal([1], Taken());
        Assert.Equal(File.ReadAllBytes(Directory.GetFiles(Path.Combine(folder, "labels")).Single()), peer.The(IppOperation.PrintJob).Document);
    }

    [Fact]
    public void A_place_is_free_again_when_the_job_failed_and_the_next_label_takes_it()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.GetJobAttributes, asked => Reply(asked, 0, Job(7, 8, "aborted-by-system")));
        var outcome = Print(peer);
        Assert.Equal(PrintEnd.Failed, outcome.End);
        Assert.Equal(["JL517", "JL532"], outcome.Problems.Select(p => p.Code));
        Assert.Empty(Taken());

        peer.On(IppOperation.GetJobAttributes, asked => Reply(asked, 0, Job(7, 9)));
        Assert.Equal(PrintEnd.Printed, Print(peer).End);
        Assert.Equal([1], Taken());
    }

    [Fact]
    public void A_place_is_free_again_when_the_printer_refuses_the_job_itself()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.PrintJob, asked => Reply(asked, 0x0506));
        Assert.Equal(["JL511", "JL532"], Print(peer).Problems.Select(p => p.Code));
        Assert.Empty(Taken());
    }

    [Fact]
    public void A_place_stays_taken_when_nobody_can_tell_whether_paper_came_out()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.GetJobAttributes, asked => Reply(asked, 0x0406));
        var outcome = Print(peer);
        Assert.Equal(PrintEnd.Unknown, outcome.End);
        Assert.Equal(["JL519", "JL533"], outcome.Problems.Select(p => p.Code));
        Assert.Contains("sheet back 1 1", outcome.Problems[^1].Message, StringComparison.Ordinal);
        Assert.Equal([1], Taken());
    }

    [Fact]
    public void A_file_that_is_gone_before_it_is_sent_is_told_and_its_place_is_free_again()
    {
        using var peer = new FaultyPrinter();
        var bench = Bench();
        using var desk = PrintService.Open(bench, new PrintRequest(peer.Uri, Stock), _ => null, TestContext.Current.CancellationToken).Require();
        Step(bench);
        var file = Assert.Single(bench.LastStep!.Files);
        File.Delete(file);
        var outcome = desk.Print("a label", _ => { }, TestContext.Current.CancellationToken);
        Assert.Equal(PrintEnd.Failed, outcome.End);
        Assert.Equal([("JL534", file), ("JL532", file)], outcome.Problems.Select(p => (p.Code, p.Where)));
        Assert.Equal(0, peer.Count(IppOperation.PrintJob));
        Assert.Empty(Taken());
    }

    /// <summary>The sheet that shows where a printer prints takes no place of any stock.</summary>
    [Fact]
    public void A_file_without_places_is_kept_when_its_job_failed()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.PrintJob, asked => Reply(asked, 0x0506));
        var bench = Bench();
        using var desk = PrintService.Open(bench, new PrintRequest(peer.Uri, Stock), _ => null, TestContext.Current.CancellationToken).Require();
        CalibrateSheet.Print(bench, Stock, null, null).Require();
        var file = Assert.Single(bench.LastStep!.Files);
        var outcome = desk.Print("a sheet", _ => { }, TestContext.Current.CancellationToken);
        Assert.Equal(["JL511", "JL531"], outcome.Problems.Select(p => p.Code));
        Assert.Equal(file, outcome.Problems[^1].Where);
        Assert.True(File.Exists(file));
    }

    [Fact]
    public void Nothing_is_recorded_when_the_printer_cannot_print_it()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.GetPrinterAttributes, asked => Reply(asked, 0, Printer(Words("printer-state-reasons", "media-empty"))));
        Assert.Equal("JL515", Assert.Single(PrintService.Open(Bench(), new PrintRequest(peer.Uri, Stock), _ => null, TestContext.Current.CancellationToken).Problems).Code);
        Assert.False(Directory.Exists(Path.Combine(folder, "labels")));
    }

    [Fact]
    public void A_place_in_the_edge_that_the_printer_cannot_print_is_a_caution()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.GetPrinterAttributes, asked => Reply(asked, 0, Printer(
            Numbers("media-left-margin-supported", 635), Numbers("media-right-margin-supported", 635), Numbers("media-top-margin-supported", 423), Numbers("media-bottom-margin-supported", 423))));

        // 6.35 mm cannot be printed at the left; the label begins at 3.97 mm and its first 2 mm stay white: 0.4 mm are lost.
        var caution = Assert.Single(Print(peer).Cautions);
        Assert.Equal("JL521", caution.Code);
        Assert.Contains("Place 1 of this stock reaches 0.4 mm", caution.Message, StringComparison.Ordinal);
    }

    private PrintOutcome Print(FaultyPrinter peer)
    {
        var bench = Bench();
        using var desk = PrintService.Open(bench, new PrintRequest(peer.Uri, Stock), _ => null).Require();
        Step(bench);
        return desk.Print("a label", _ => { }, TestContext.Current.CancellationToken);
    }

    private static void Step(Workbench bench) => MixJar.Do(bench, new MixRequest(
        bench.Catalog.Grades.Find("garnet")!,
        bench.Catalog.Solvents.Find("ethanol-95")!,
        new BatchRequest(PoundCut.FromPoundsPerUsGallon(1.5), Volume.FromMilliliters(350)),
        new Container(ContainerMaterial.Glass, Volume.FromMilliliters(500)),
        Label: new LabelChoice(Sheet: Stock))).Require();

    private IReadOnlyList<int> Taken() => [.. SheetsInUse.State(Bench()).Require().Single().InUse.Taken.Order()];

    private Workbench Bench() => Workbench.Open(new WorkbenchOptions(folder, new DateTime(2026, 3, 9, 10, 0, 0)), _ => null).Require();
}
