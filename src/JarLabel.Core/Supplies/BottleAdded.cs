using System.Text.Json.Serialization;
using JarLabel.Core.Jars;
using UnitsNet;

namespace JarLabel.Core.Supplies;

/// <summary>A bottle, can or drum of alcohol came into the shop.</summary>
/// <param name="At">The moment.</param>
/// <param name="Solvent">The solvent's id.</param>
/// <param name="Volume">What it holds, stored in millilitres.</param>
/// <param name="Bought">When it was bought or opened.</param>
/// <param name="Shelf">Where it stands.</param>
/// <param name="Material">What it is made of; null when nobody said.</param>
/// <param name="Note">Anything else.</param>
public sealed record BottleAdded(
    DateTime At,
    string Solvent,
    [property: JsonPropertyName("milliliters")] Volume Volume,
    DateOnly Bought,
    string Shelf,
    ContainerMaterial? Material = null,
    string? Note = null) : SupplyEvent(At);
