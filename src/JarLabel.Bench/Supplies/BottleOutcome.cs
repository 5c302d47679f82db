using JarLabel.Core;
using JarLabel.Core.Hazards;
using JarLabel.Core.Supplies;

namespace JarLabel.Bench.Supplies;

/// <summary>How a bottle stands after something was done with it.</summary>
/// <param name="Bottle">The bottle.</param>
/// <param name="Hazards">What is in it.</param>
/// <param name="Label">The label that was written, if one was.</param>
/// <param name="Cautions">What went through but should be known.</param>
public sealed record BottleOutcome(Bottle Bottle, HazardAssessment Hazards, WrittenSupplyLabel? Label, IReadOnlyList<Problem> Cautions);
