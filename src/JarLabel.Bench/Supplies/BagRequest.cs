using JarLabel.Bench.Labels;
using JarLabel.Core.Catalog;
using UnitsNet;

namespace JarLabel.Bench.Supplies;

/// <summary>A bag of flakes that came into the shop.</summary>
/// <param name="Grade">The grade.</param>
/// <param name="Weight">What it holds.</param>
/// <param name="Made">When the flakes were made or bought.</param>
/// <param name="Note">Anything else.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record BagRequest(Grade Grade, Mass Weight, DateOnly Made, string? Note = null, LabelChoice? Label = null);
