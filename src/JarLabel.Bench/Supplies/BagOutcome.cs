using JarLabel.Core;
using JarLabel.Core.Supplies;

namespace JarLabel.Bench.Supplies;

/// <summary>How a bag stands after something was done with it.</summary>
/// <param name="Bag">The bag.</param>
/// <param name="Label">The label that was written, if one was.</param>
/// <param name="Cautions">What went through but should be known.</param>
public sealed record BagOutcome(Bag Bag, WrittenSupplyLabel? Label, IReadOnlyList<Problem> Cautions);
