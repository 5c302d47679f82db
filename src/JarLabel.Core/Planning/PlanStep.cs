namespace JarLabel.Core.Planning;

/// <summary>One thing to do for a job.</summary>
/// <param name="Words">What.</param>
/// <param name="Step">The step that records it and prints its label; null where there is none.</param>
public sealed record PlanStep(string Words, Remedy? Step = null);
