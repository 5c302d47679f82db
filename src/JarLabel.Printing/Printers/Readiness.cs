namespace JarLabel.Printing.Printers;

/// <summary>Asks a printer before anything is recorded or sent: does it take a PDF and this paper, is it well, would it print this?</summary>
public static class Readiness
{
    /// <summary>What it says of itself with what should be known, or why it cannot print this.</summary>
    /// <param name="printer">The printer.</param>
    /// <param name="order">What is to be printed; the document itself may be empty still.</param>
    /// <param name="dpi">The resolution that the stock is laid out for.</param>
    /// <param name="stop">Ends the waiting.</param>
    public static async Task<Result<ReadyPrinter>> Of(Printer printer, PrintOrder order, int dpi, CancellationToken stop = default)
    {
        if (!(await printer.Facts(stop).ConfigureAwait(false)).Then(facts => Able(printer.Uri, facts, order)).TryGet(out var able, out var problems))
        {
            return Result<ReadyPrinter>.Failed(problems);
        }

        var valid = await printer.Validate(order, able, stop).ConfigureAwait(false);
        return valid.Then<ReadyPrinter>(facts => new ReadyPrinter(facts, [.. Cautions(printer.Uri, facts, order, dpi)]));
    }

    private static Result<PrinterFacts> Able(string uri, PrinterFacts facts, PrintOrder order)
    {
        Problem?[] problems =
        [
            facts.Formats.Count > 0 && !facts.TakesPdf ? PrintingProblems.NoPdf(uri, facts.Formats) : null,
            facts.Sizes.Count > 0 && !facts.Sizes.Any(s => s.Fits(order.Width, order.Height))
                ? PrintingProblems.WrongMedia(uri, order.Width, order.Height, facts.Sizes.Select(s => s.ToString()).Distinct()) : null,
            facts.Accepts ? null : PrintingProblems.NotAccepting(uri, facts.Why),
            facts.IsStopped || facts.Hindered ? PrintingProblems.IsStopped(uri, facts.Why ?? "it does not say why") : null,
        ];
        Problem[] found = [.. problems.OfType<Problem>()];
        return found.Length > 0 ? Result<PrinterFacts>.Failed(found) : facts;
    }

    private static IEnumerable<Problem> Cautions(string uri, PrinterFacts facts, PrintOrder order, int dpi)
    {
        if (facts.Loaded.Count > 0 && !facts.Loaded.Any(s => s.Fits(order.Width, order.Height)))
        {
            yield return PrintingProblems.NotLoaded(uri, order.Width, order.Height, facts.Loaded.Select(s => s.ToString()).Distinct());
        }

        if (!facts.CanKeepSize)
        {
            yield return PrintingProblems.MayScale(uri);
        }

        if (facts.Dpi is { } coarse && coarse < dpi)
        {
            yield return PrintingProblems.Coarse(uri, coarse, dpi);
        }

        if (facts.Why is { } why)
        {
            yield return PrintingProblems.Attention(uri, why);
        }
    }
}

/// <summary>What is to be printed: a PDF whose pages have the paper's exact size. Copies are pages of it.</summary>
/// <param name="Title">The job's name, as the printer shows it.</param>
/// <param name="Pdf">The document.</param>
/// <param name="Width">Width of the paper, mm.</param>
/// <param name="Height">Height of the paper, mm.</param>
/// <param name="User">Who prints.</param>
public sealed record PrintOrder(string Title, byte[] Pdf, double Width, double Height, string User);

/// <summary>A printer that said it would print.</summary>
/// <param name="Facts">What it says of itself.</param>
/// <param name="Cautions">What should be known.</param>
public sealed record ReadyPrinter(PrinterFacts Facts, IReadOnlyList<Problem> Cautions);
