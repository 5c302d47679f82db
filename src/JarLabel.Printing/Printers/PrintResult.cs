using JarLabel.Core;

namespace JarLabel.Printing.Printers;

/// <summary>How a job ended.</summary>
/// <param name="End">On paper, not on paper, or nobody can say.</param>
/// <param name="Job">Its number at the printer; null when it never got one.</param>
/// <param name="Problem">Why it is not surely on paper; null when it is.</param>
/// <param name="Cautions">What should be known of it.</param>
public sealed record PrintResult(PrintEnd End, int? Job, Problem? Problem, IReadOnlyList<Problem> Cautions);
