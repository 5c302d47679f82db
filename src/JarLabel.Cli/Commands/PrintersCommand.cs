using System.CommandLine;
using JarLabel.Bench.Printing;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Printing.Finding;

namespace JarLabel.Cli.Commands;

/// <summary><c>printers</c>: the printers that <c>--to</c> can name.</summary>
internal static class PrintersCommand
{
    private static readonly TimeSpan Usual = TimeSpan.FromSeconds(1.5);

    private static readonly Option<string> Listen = new("--listen") { Description = "How many seconds to listen for printers on the network: 1.5 (the default), 0 for not at all.", HelpName = "seconds" };

    internal static Command Create(Runner runner) =>
        runner.Runs(new Command("printers", "The printers --to can name: those the shop named, queues of this machine, printers that answer on the network.") { Listen }, Run);

    private static Result<Answer> Run(Typed typed, Session session)
    {
        var listen = typed.Value(Listen, Words.Number(0, 30, 3)) is { } seconds ? TimeSpan.FromSeconds(seconds) : Usual;
        return typed.Then<Answer>(() => Show(new PrinterBook(session.Workbench, Environment.GetEnvironmentVariable).All(listen > TimeSpan.Zero ? listen : null)));
    }

    private static Answer Show(IReadOnlyList<SeenPrinter> printers)
    {
        var screen = new Screen().Title(printers.Count == 0 ? "No printer was found." : printers.Count == 1 ? "1 printer" : $"{printers.Count} printers");
        if (printers.Count > 0)
        {
            screen.Gap().Table(["name", "known as", "state", "address"], [.. printers.Select(p => (string[])[p.Name, Known(p.How), p.State ?? "", p.Uri])]);
        }

        return Answer.Of(
            printers.Count == 0
                ? screen.Next("jarlabel label 1 --to ipp://ADDRESS/ipp/print, with the address from the printer's own display")
                : screen.Next($"jarlabel label 1 --to {(printers[0].How == SeenHow.Network ? printers[0].Uri : printers[0].Name)}"),
            new PrintersAnswerJson([.. printers.Select(p => new PrinterJson(p.Name, p.Uri, p.Model, p.State, Known(p.How)))]),
            c => c.PrintersAnswerJson);
    }

    private static string Known(SeenHow how) => how switch
    {
        SeenHow.Named => "named",
        SeenHow.Queue => "queue",
        _ => "network",
    };
}
