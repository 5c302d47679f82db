using System.Text.Json.Serialization;
using JarLabel.Core.Jars;
using UnitsNet;

namespace JarLabel.Core.Supplies;

/// <summary>Flakes went from the bag into a jar.</summary>
/// <param name="At">The moment.</param>
/// <param name="Weight">How much, stored in grams.</param>
/// <param name="For">The jar.</param>
public sealed record FlakesTaken(DateTime At, [property: JsonPropertyName("grams")] Mass Weight, JarNumber For) : SupplyEvent(At);
