using JarLabel.Bench.Labels;
using JarLabel.Core.Catalog;
using JarLabel.Core.Jars;
using UnitsNet;

namespace JarLabel.Bench.Supplies;

/// <summary>A bottle of alcohol that came into the shop.</summary>
/// <param name="Solvent">The alcohol.</param>
/// <param name="Volume">What it holds.</param>
/// <param name="Since">When it was bought or opened.</param>
/// <param name="Shelf">Where it stands; null for the shop's first shelf.</param>
/// <param name="Material">What it is made of; null when nobody said.</param>
/// <param name="Note">Anything else.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record BottleRequest(
    Solvent Solvent, Volume Volume, DateOnly Since, string? Shelf = null, ContainerMaterial? Material = null, string? Note = null, LabelChoice? Label = null);
