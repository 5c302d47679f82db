using JarLabel.Printing.Finding;

namespace JarLabel.Operations.Answers;

/// <summary>What is said of the printers there are.</summary>
internal static class PrinterAnswer
{
    internal static Answer Of(IReadOnlyList<SeenPrinter> printers)
    {
        var screen = new Screen().Title(printers.Count == 0 ? "No printer was found." : printers.Count == 1 ? "1 printer" : $"{printers.Count} printers");
        if (printers.Count > 0)
        {
            screen.Gap().Table(["name", "known as", "state", "address"], [.. printers.Select(p => (string[])[p.Name, Known(p.How), p.State ?? "", p.Uri])]);
        }

        return Answer.Of(
            printers.Count == 0
                ? screen.NextInWords(Message.Of($"{Screen.Step("label", ("jar", "1"), ("print-to", "ipp://ADDRESS/ipp/print"))}, with the address from the printer's own display"))
                : screen.Next("label", ("jar", "1"), ("print-to", $"{(printers[0].How == SeenHow.Network ? printers[0].Uri : printers[0].Name)}")),
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

/// <summary>A printer that <c>--to</c> can name.</summary>
internal sealed record PrinterJson(string Name, string Uri, string? Model, string? State, string Seen);

/// <summary>What <c>printers</c> says to a program.</summary>
internal sealed record PrintersAnswerJson(IReadOnlyList<PrinterJson> Printers);
