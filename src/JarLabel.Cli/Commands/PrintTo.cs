using JarLabel.Operations.Printing;

namespace JarLabel.Cli.Commands;

/// <summary><c>--to</c>, or <c>--print-to</c>: what a command writes goes to a printer too.</summary>
internal static class PrintTo
{
    /// <summary>Asks the printer, does the step, and prints what it wrote.</summary>
    internal static Result<Answer> Around(PrintRequest wanted, Session session, Func<Result<Answer>> step) => PrintService.Open(session.Workbench, wanted, Environment.GetEnvironmentVariable).Then(service =>
    {
        using (service)
        {
            return step().Then<Answer>(answer => PrintAnswer.Of(answer, Print(service, session, answer)));
        }
    });

    /// <summary>Prints until it is done; Ctrl-C takes the job back from the printer, and a second one ends the program.</summary>
    private static PrintOutcome Print(PrintService service, Session session, Answer answer)
    {
        using var stop = new CancellationTokenSource();
        using var interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, Stop);
        using var terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, Stop);
        try
        {
            return service.Print(Title(answer), job => session.Status(PrintAnswer.Line(job)), stop.Token);
        }
        finally
        {
            session.Status(null);
        }

        void Stop(PosixSignalContext signal)
        {
            signal.Cancel = !stop.IsCancellationRequested;
            stop.Cancel();
        }
    }

    private static string Title(Answer answer) => PlainAscii.Of(answer.Screen.Lines.Where(l => l.Style == LineStyle.Title).Select(l => l.Text).FirstOrDefault("jarlabel"));
}
