using JarLabel.Core;
using JarLabel.Printing.Printers;

namespace JarLabel.Bench.Printing;

/// <summary>How printing went, after a step that was recorded.</summary>
/// <param name="Printer">The printer's address.</param>
/// <param name="End">How the last job ended; null when nothing was sent, as on a dry run.</param>
/// <param name="Jobs">The jobs' numbers at the printer.</param>
/// <param name="Problems">Why not all is on paper, and what became of the places; empty when all is.</param>
/// <param name="Cautions">What should be known.</param>
public sealed record PrintOutcome(string Printer, PrintEnd? End, IReadOnlyList<int> Jobs, IReadOnlyList<Problem> Problems, IReadOnlyList<Problem> Cautions);
