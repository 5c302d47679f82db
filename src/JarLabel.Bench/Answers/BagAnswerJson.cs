using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What the commands about one bag say to a program.</summary>
internal sealed record BagAnswerJson(BagJson Bag, SupplyLabelJson? Label, IReadOnlyList<Problem> Warnings);
