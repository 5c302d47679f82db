using System.Text.Json.Serialization;
using UnitsNet;

namespace JarLabel.Core.Supplies;

/// <summary>A bag of flakes came into the shop.</summary>
/// <param name="At">The moment.</param>
/// <param name="Grade">The grade's id.</param>
/// <param name="Weight">What it holds, stored in grams.</param>
/// <param name="Made">When the flakes were made or bought: their age counts from it.</param>
/// <param name="Note">Anything else.</param>
public sealed record BagAdded(DateTime At, string Grade, [property: JsonPropertyName("grams")] Mass Weight, DateOnly Made, string? Note = null) : SupplyEvent(At);
