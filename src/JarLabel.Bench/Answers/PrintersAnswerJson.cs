namespace JarLabel.Bench.Answers;

/// <summary>What <c>printers</c> says to a program.</summary>
internal sealed record PrintersAnswerJson(IReadOnlyList<PrinterJson> Printers);
