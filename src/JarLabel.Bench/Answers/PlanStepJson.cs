namespace JarLabel.Bench.Answers;

/// <summary>One thing to do, for a program.</summary>
internal sealed record PlanStepJson(string Words, string? Command);
