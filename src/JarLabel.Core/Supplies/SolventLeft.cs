using System.Text.Json.Serialization;
using UnitsNet;

namespace JarLabel.Core.Supplies;

/// <summary>What is left in the bottle was measured; it holds from then on.</summary>
/// <param name="At">The moment.</param>
/// <param name="Volume">What is left, stored in millilitres.</param>
public sealed record SolventLeft(DateTime At, [property: JsonPropertyName("milliliters")] Volume Volume) : SupplyEvent(At);
