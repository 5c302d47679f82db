namespace JarLabel.Bench.Answers;

/// <summary>What <c>verify</c> says to a program.</summary>
internal sealed record VerifyAnswerJson(long Events, int Jars, int Files, IReadOnlyList<Core.Problem> Warnings);
