namespace JarLabel.Printing.Printers;

/// <summary>What came of looking for a job.</summary>
/// <param name="Report">The job; null when the printer has none of that name.</param>
internal sealed record FoundJob(JobReport? Report);
