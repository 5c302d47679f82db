using JarLabel.Core;

namespace JarLabel.Cli.Answers;

/// <summary>What <c>keeping</c> says to a program.</summary>
internal sealed record KeepingAnswerJson(double StillGood, IReadOnlyList<LifeEstimateJson> Kinds, IReadOnlyList<Problem> Warnings);
