using System.Text.Json.Serialization;
using JarLabel.Core.Jars;
using UnitsNet;

namespace JarLabel.Core.Supplies;

/// <summary>Alcohol went from the bottle into a jar.</summary>
/// <param name="At">The moment.</param>
/// <param name="Volume">How much, stored in millilitres.</param>
/// <param name="For">The jar.</param>
public sealed record SolventTaken(DateTime At, [property: JsonPropertyName("milliliters")] Volume Volume, JarNumber For) : SupplyEvent(At);
