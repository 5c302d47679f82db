using System.Text.Json.Serialization;
using UnitsNet;

namespace JarLabel.Core.Supplies;

/// <summary>The bag was weighed; what the scale says holds from then on.</summary>
/// <param name="At">The moment.</param>
/// <param name="Weight">What is left, stored in grams.</param>
public sealed record FlakesLeft(DateTime At, [property: JsonPropertyName("grams")] Mass Weight) : SupplyEvent(At);
