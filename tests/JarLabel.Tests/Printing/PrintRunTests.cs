using static JarLabel.Tests.Printing.FaultyPrinter;

namespace JarLabel.Tests.Printing;

public class PrintRunTests
{
    // Long enough for the busiest machine; a test of waiting shortens the one wait it is about.
    private static readonly PrintPatience Patient = new(
        TimeSpan.FromSeconds(30), TimeSpan.FromSeconds(30), TimeSpan.FromSeconds(30), TimeSpan.FromSeconds(30), TimeSpan.FromMilliseconds(20));

    private static readonly TimeSpan Little = TimeSpan.FromMilliseconds(900);

    private static readonly PrintOrder Order = new("Jar 142-5", Encoding.ASCII.GetBytes("%PDF-1.7 a label"), 215.9, 279.4, "bench");

    private static CancellationToken Now => TestContext.Current.CancellationToken;

    [Fact, Cites(References.Rfc8011, "4.2.1, 4.2.3, 4.3.4")]
    public async Task A_job_is_asked_about_sent_once_with_actual_size_and_paper_and_followed_to_its_end()
    {
        using var peer = new FaultyPrinter();
        var states = new Queue<IppGroup>([Job(7, 3), Job(7, 5, "job-printing"), Job(7, 5, "job-printing", sheets: 1), Job(7, 9)]);
        peer.On(IppOperation.GetJobAttributes, asked => Reply(asked, 0, states.Count > 1 ? states.Dequeue() : states.Peek()));
        var heard = new List<JobReport>();
        var (result, cautions) = await Print(peer, heard.Add);
        Assert.Equal((PrintEnd.Printed, 7), (result.End, result.Job));
        Assert.Empty(cautions);
        Assert.Equal(
            [IppOperation.GetPrinterAttributes, IppOperation.ValidateJob, IppOperation.PrintJob, IppOperation.GetJobAttributes],
            peer.Asked.Select(a => a.Operation).Distinct());
        var sent = peer.The(IppOperation.PrintJob);
        Assert.Equal(Order.Pdf, sent.Document);
        var job = sent.Group(IppTag.JobGroup);
        Assert.Equal(("none", "one-sided"), (job.Word("print-scaling"), job.Word("sides")));
        var size = job.First("media-col")!.Members!.First("media-size")!.Members!;
        Assert.Equal((21590, 27940), (size.Number("x-dimension"), size.Number("y-dimension")));
        Assert.Empty(job.All("copies"));
        Assert.Equal(["attributes-charset", "attributes-natural-language", "printer-uri"], sent.Group(IppTag.OperationGroup).Attributes.Take(3).Select(a => a.Name));
        Assert.Equal([JobState.Processing, JobState.Pending, JobState.Processing, JobState.Processing, JobState.Completed], heard.Select(h => h.State));
    }

    [Fact]
    public async Task A_printer_that_chooses_paper_by_name_gets_the_name()
    {
        using var peer = With(Printer(Words("media-col-supported", "media-source")));
        await Print(peer);
        var job = peer.The(IppOperation.PrintJob).Group(IppTag.JobGroup);
        Assert.Equal("na_letter_8.5x11in", job.Word("media"));
        Assert.Empty(job.All("media-col"));
    }

    [Theory]
    [InlineData("JL512", "document-format-supported", "image/pwg-raster", "PDF")]
    [InlineData("JL513", "media-supported", "iso_a6_105x148mm", "105 x 148 mm")]
    [InlineData("JL515", "printer-state-reasons", "media-empty-error", "out of paper")]
    [InlineData("JL515", "printer-state-reasons", "cover-open", "cover is open")]
    [InlineData("JL515", "printer-state-reasons", "offline", "offline")]
    public async Task What_a_printer_cannot_do_now_is_told_before_anything_is_sent(string code, string attribute, string value, string words)
    {
        using var peer = With(Printer(Words(attribute, value)));
        var problem = Assert.Single(await Refused(peer));
        Assert.Equal(code, problem.Code);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
        Assert.Equal(0, peer.Count(IppOperation.PrintJob));
    }

    [Fact]
    public async Task A_printer_that_takes_no_jobs_and_one_that_stands_still_say_so()
    {
        using var closed = With(Printer(new IppField("printer-is-accepting-jobs", [IppValue.Of(false)]), Words("printer-state-reasons", "paused-warning")));
        var problem = Assert.Single(await Refused(closed));
        Assert.Equal("JL514", problem.Code);
        Assert.Contains("takes no jobs now: somebody paused it", problem.Message, StringComparison.Ordinal);
        Assert.Equal(0, closed.Count(IppOperation.PrintJob));
        using var stopped = With(Printer(new IppField("printer-state", [IppValue.Of(5, IppTag.Enum)])));
        Assert.Equal("JL515", Assert.Single(await Refused(stopped)).Code);
    }

    [Fact]
    public async Task What_goes_through_but_should_be_known_is_a_caution()
    {
        using var peer = With(Printer(
            Words("media-ready", "iso_a4_210x297mm"),
            Words("print-scaling-supported", "auto"),
            Words("printer-state-reasons", "toner-low-warning"),
            new IppField("printer-resolution-supported", [new IppValue(IppTag.Resolution, [0, 0, 0, 203, 0, 0, 0, 203, 3])])));
        var (result, cautions) = await Print(peer);
        Assert.Equal(PrintEnd.Printed, result.End);
        Assert.Equal(["JL522", "JL523", "JL524", "JL526"], cautions.Select(c => c.Code).Order());
        Assert.Empty(peer.The(IppOperation.PrintJob).Group(IppTag.JobGroup).All("print-scaling"));
    }

    [Fact, Cites(References.Rfc8011, "appendix B.1.4.12: client-error-attributes-or-values-not-supported, 0x040B")]
    public async Task Paper_refused_at_the_check_is_told_with_the_attribute()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.ValidateJob, asked => Reply(asked, 0x040B, new IppGroup(IppTag.UnsupportedGroup, [Words("media-col", "x")])));
        var problem = Assert.Single(await Refused(peer));
        Assert.Equal("JL511", problem.Code);
        Assert.Contains("media-col", problem.Message, StringComparison.Ordinal);
        Assert.Contains("size of paper", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_job_refused_when_sent_failed()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.PrintJob, asked => Reply(asked, 0x0507));
        var (result, _) = await Print(peer);
        Assert.Equal((PrintEnd.Failed, "JL511"), (result.End, result.Problem!.Code));
    }

    [Theory]
    [InlineData(8, "aborted-by-system", "gave the job up: a fault of its own")]
    [InlineData(7, "job-canceled-at-device", "cancelled it at the printer")]
    public async Task A_job_that_ends_otherwise_than_on_paper_failed(int state, string reason, string words)
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.GetJobAttributes, asked => Reply(asked, 0, Job(7, state, reason)));
        var (result, _) = await Print(peer);
        Assert.Equal(PrintEnd.Failed, result.End);
        Assert.Contains(words, result.Problem!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_job_that_waits_for_paper_too_long_is_taken_back_and_the_printers_reason_told()
    {
        using var peer = new FaultyPrinter();
        var asked = 0;
        peer.On(IppOperation.GetPrinterAttributes, a => Reply(a, 0, Printer(Words("printer-state-reasons", asked++ == 0 ? "none" : "media-empty-error"))));
        var cancelled = false;
        peer.On(IppOperation.GetJobAttributes, a => Reply(a, 0, Job(7, cancelled ? 7 : 6, "printer-stopped")));
        peer.On(IppOperation.CancelJob, a =>
        {
            cancelled = true;
            return Reply(a, 0);
        });
        var (result, _) = await Print(peer, patience: Patient with { Stall = Little });
        Assert.Equal((PrintEnd.Failed, "JL518"), (result.End, result.Problem!.Code));
        Assert.Contains("out of paper", result.Problem.Message, StringComparison.Ordinal);
        Assert.Equal(7, peer.The(IppOperation.CancelJob).Group(IppTag.OperationGroup).Number("job-id"));
    }

    [Fact]
    public async Task Ctrl_C_takes_the_job_back_from_the_printer()
    {
        using var peer = new FaultyPrinter();
        using var stop = new CancellationTokenSource();
        var cancelled = false;
        peer.On(IppOperation.GetJobAttributes, a => Reply(a, 0, Job(7, cancelled ? 7 : 5, "job-printing")));
        peer.On(IppOperation.CancelJob, a =>
        {
            cancelled = true;
            return Reply(a, 0);
        });
        var (result, _) = await Print(peer, _ => stop.CancelAfter(60), stop.Token);
        Assert.Equal((PrintEnd.Failed, "JL516"), (result.End, result.Problem!.Code));
        Assert.True(cancelled);
    }

    [Fact]
    public async Task A_job_that_was_done_before_the_cancel_came_is_done()
    {
        using var peer = new FaultyPrinter();
        using var stop = new CancellationTokenSource();
        var cancelled = false;
        peer.On(IppOperation.GetJobAttributes, a => Reply(a, 0, Job(7, cancelled ? 9 : 5)));
        peer.On(IppOperation.CancelJob, a =>
        {
            cancelled = true;
            return Reply(a, 0x0404);
        });
        var (result, _) = await Print(peer, _ => stop.CancelAfter(60), stop.Token);
        Assert.Equal(PrintEnd.Printed, result.End);
    }

    [Fact]
    public async Task A_job_that_the_printer_does_not_let_go_of_may_be_on_paper()
    {
        using var peer = new FaultyPrinter();
        using var stop = new CancellationTokenSource();
        peer.On(IppOperation.GetJobAttributes, a => Reply(a, 0, Job(7, 5, "job-printing")));
        peer.On(IppOperation.CancelJob, a => Reply(a, 0x0404));
        var (result, _) = await Print(peer, _ => stop.CancelAfter(60), stop.Token);
        Assert.Equal((PrintEnd.Unknown, "JL520"), (result.End, result.Problem!.Code));
        Assert.Contains("Look whether the paper came out", result.Problem.Message, StringComparison.Ordinal);
        Assert.Equal(1, peer.Count(IppOperation.CancelJob));
    }

    [Fact, Cites(References.Rfc8011, "5.3.8: job-completed-with-errors")]
    public async Task A_job_that_is_done_with_errors_is_printed_and_the_errors_are_told()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.GetJobAttributes, a => Reply(a, 0, Job(7, 9, "job-completed-with-errors")));
        var (result, _) = await Print(peer);
        Assert.Equal((PrintEnd.Printed, null), (result.End, result.Problem));
        var caution = Assert.Single(result.Cautions);
        Assert.Equal("JL525", caution.Code);
        Assert.Contains("Look at the label", caution.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_line_that_breaks_before_the_printer_kept_the_job_is_a_failed_job_and_nothing_is_sent_twice()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.PrintJob, a => Close(a));
        var (result, _) = await Print(peer);
        Assert.Equal((PrintEnd.Failed, "JL506"), (result.End, result.Problem!.Code));
        Assert.Equal(1, peer.Count(IppOperation.PrintJob));
    }

    [Theory]
    [InlineData("closes")]
    [InlineData("stalls")]
    [InlineData("garbage")]
    public async Task A_job_whose_number_never_came_back_is_found_by_its_name_and_followed(string manner)
    {
        using var peer = new FaultyPrinter();
        string? name = null;
        peer.On(IppOperation.PrintJob, a =>
        {
            name = a.Group(IppTag.OperationGroup).Word("job-name");
            return manner switch
            {
                "closes" => Close(a),
                "stalls" => Task.Delay(Timeout.Infinite, Now),
                _ => a.Respond("200 OK", "application/ipp", [1, 1, 0, 0, 9]),
            };
        });
        peer.On(IppOperation.GetJobs, a => Reply(a, 0, Job(3, 9, name: "somebody else's"), Job(7, 5, name: name)));
        var (result, _) = await Print(peer, patience: manner == "stalls" ? Patient with { Send = Little } : null);
        Assert.Equal((PrintEnd.Printed, 7), (result.End, result.Job));
        Assert.Equal(1, peer.Count(IppOperation.PrintJob));
    }

    [Fact]
    public async Task A_printer_lost_from_sight_after_it_took_the_job_leaves_it_unknown()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.GetJobAttributes, Close);
        var (result, _) = await Print(peer, patience: Patient with { Stall = Little });
        Assert.Equal((PrintEnd.Unknown, "JL519"), (result.End, result.Problem!.Code));
    }

    [Fact]
    public async Task A_short_loss_of_sight_is_waited_out()
    {
        using var peer = new FaultyPrinter();
        var asked = 0;
        peer.On(IppOperation.GetJobAttributes, a => ++asked < 4 ? Close(a) : Reply(a, 0, Job(7, 9)));
        var (result, _) = await Print(peer);
        Assert.Equal(PrintEnd.Printed, result.End);
    }

    [Fact]
    public async Task Answers_that_are_none_are_told_in_words()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.GetPrinterAttributes, a => a.Respond("200 OK", "text/html", Encoding.ASCII.GetBytes("<html>router</html>")));
        Assert.Equal("JL507", Assert.Single(await Refused(peer)).Code);
        peer.On(IppOperation.GetPrinterAttributes, a => a.Respond("200 OK", "application/ipp", Encoding.ASCII.GetBytes("not at all")));
        Assert.Equal("JL507", Assert.Single(await Refused(peer)).Code);
        peer.On(IppOperation.GetPrinterAttributes, a => a.Respond("404 Not Found", "text/html", []));
        Assert.Equal("JL509", Assert.Single(await Refused(peer)).Code);
        peer.On(IppOperation.GetPrinterAttributes, _ => Task.Delay(Timeout.Infinite, Now));
        Assert.Equal("JL505", Assert.Single(await Refused(peer, Patient with { Answer = Little })).Code);
        peer.On(IppOperation.GetPrinterAttributes, Close);
        Assert.Equal("JL506", Assert.Single(await Refused(peer)).Code);
    }

    [Fact]
    public async Task A_late_answer_within_patience_is_heard()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.GetPrinterAttributes, async a =>
        {
            await Task.Delay(350, Now);
            await Reply(a, 0, Printer());
        });
        Assert.Equal(PrintEnd.Printed, (await Print(peer)).Result.End);
    }

    [Fact]
    public async Task An_answer_without_end_is_cut_off()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.GetPrinterAttributes, async a =>
        {
            await a.Line.WriteAsync("HTTP/1.1 200 OK\r\nContent-Type: application/ipp\r\nConnection: close\r\n\r\n"u8.ToArray(), Now);
            for (var part = new byte[65536]; ;)
            {
                await a.Line.WriteAsync(part, Now);
            }
        });
        Assert.Equal("JL508", Assert.Single(await Refused(peer)).Code);
    }

    [Fact]
    public async Task An_answer_to_another_question_is_not_taken()
    {
        using var peer = new FaultyPrinter();
        peer.On(IppOperation.GetPrinterAttributes, a => a.Respond("200 OK", "application/ipp", IppWriter.Bytes(new IppMessage(0, a.Message.RequestId + 1, [Printer()]))));
        Assert.Equal("JL507", Assert.Single(await Refused(peer)).Code);
    }

    [Fact]
    public async Task A_printer_that_is_off_is_told_so()
    {
        string uri;
        using (var peer = new FaultyPrinter())
        {
            uri = peer.Uri;
        }

        using var printer = new Printer(PrinterAddress.Read(uri, "print-to").Require(), Patient, "bench");
        Assert.Equal("JL504", Assert.Single((await Readiness.Of(printer, Order, 300, Now)).Problems).Code);
    }

    private static Task Close(Asked asked)
    {
        asked.Client.Close();
        return Task.CompletedTask;
    }

    private static FaultyPrinter With(IppGroup said)
    {
        var peer = new FaultyPrinter();
        peer.On(IppOperation.GetPrinterAttributes, asked => Reply(asked, 0, said));
        return peer;
    }

    private static async Task<(PrintResult Result, IReadOnlyList<Problem> Cautions)> Print(
        FaultyPrinter peer, Action<JobReport>? tell = null, CancellationToken? stop = null, PrintPatience? patience = null)
    {
        using var printer = new Printer(PrinterAddress.Read(peer.Uri, "print-to").Require(), patience ?? Patient, "bench");
        var ready = (await Readiness.Of(printer, Order, 300, Now)).Require();
        return (await PrintRun.Go(printer, Order, ready.Facts, tell ?? (_ => { }), stop ?? Now), ready.Cautions);
    }

    private static async Task<IReadOnlyList<Problem>> Refused(FaultyPrinter peer, PrintPatience? patience = null)
    {
        using var printer = new Printer(PrinterAddress.Read(peer.Uri, "print-to").Require(), patience ?? Patient, "bench");
        return (await Readiness.Of(printer, Order, 300, Now)).Problems;
    }
}
