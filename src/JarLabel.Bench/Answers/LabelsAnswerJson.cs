using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What <c>label</c> says of many labels.</summary>
internal sealed record LabelsAnswerJson(LabelsJson Labels, IReadOnlyList<Problem> Warnings);
