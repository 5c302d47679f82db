using JarLabel.Core;

namespace JarLabel.Printing.Printers;

/// <summary>A printer that said it would print.</summary>
/// <param name="Facts">What it says of itself.</param>
/// <param name="Cautions">What should be known.</param>
public sealed record ReadyPrinter(PrinterFacts Facts, IReadOnlyList<Problem> Cautions);
