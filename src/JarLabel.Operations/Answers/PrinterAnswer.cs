using JarLabel.Printing.Finding;

namespace JarLabel.Operations.Answers;

/// <summary>What is said of the printers there are.</summary>
internal static class PrinterAnswer
{
    internal static Answer Of(Workbench bench, IReadOnlyList<SeenPrinter> printers)
    {
        var screen = new Screen().Title(printers.Count == 0 ? "No printer was found." : printers.Count == 1 ? "1 printer" : $"{printers.Count} printers");
        if (printers.Count > 0)
        {
            screen.Gap().Table(["name", "known as", "state", "address"], [.. printers.Select(p => (string[])[p.Name, Known(p.How), p.State ?? "", p.Uri])]);
        }

        return Answer.Of(
            screen.NextInWords(Label(bench, printers)),
            new PrintersAnswerJson([.. printers.Select(p => new PrinterJson(p.Name, p.Uri, p.Model, p.State, Known(p.How)))]),
            c => c.PrintersAnswerJson);
    }

    /// <summary>A label on a printer that was found, or else on one whose address has to be looked up; where there is no jar, the mixing of one.</summary>
    private static Message Label(Workbench bench, IReadOnlyList<SeenPrinter> printers) => JarToName.Label(bench, ("print-to", printers switch
    {
        [] => "ipp://ADDRESS/ipp/print",
        [{ How: SeenHow.Network } first, ..] => first.Uri,
        [var first, ..] => first.Name,
    })) is var step && printers.Count == 0 && step.Verb == "label" ? Message.Of($"{step}, with the address from the printer's own display") : Message.Of($"{step}");

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
