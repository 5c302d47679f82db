using System.Text.Json.Serialization;
using UnitsNet;

namespace JarLabel.Core.Jars;

/// <summary>One solvent in a jar.</summary>
/// <param name="Solvent">The solvent's id.</param>
/// <param name="Poured">Volume as poured, stored in millilitres.</param>
/// <param name="Weight">Weight of that volume, stored in grams.</param>
public sealed record SolventPart(
    string Solvent,
    [property: JsonPropertyName("milliliters")] Volume Poured,
    [property: JsonPropertyName("grams")] Mass Weight);
