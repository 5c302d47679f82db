using JarLabel.Core;

namespace JarLabel.Bench.Answers;

/// <summary>What the commands about one bottle say to a program.</summary>
internal sealed record BottleAnswerJson(BottleJson Bottle, HazardsJson Hazards, SupplyLabelJson? Label, IReadOnlyList<Problem> Warnings);
