using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What <c>check</c> says to a program when all is well.</summary>
internal sealed record CheckAnswerJson(int Files, IReadOnlyList<Problem> Warnings);
