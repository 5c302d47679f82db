using System.Text.Json.Serialization;
using UnitsNet;

namespace JarLabel.Core.Jars;

/// <summary>The vessel a batch is kept in.</summary>
/// <param name="Holds">Its brimful volume, stored in millilitres; null when nobody said.</param>
/// <param name="Material">What it is made of.</param>
public sealed record Container([property: JsonPropertyName("milliliters")] Volume? Holds, ContainerMaterial Material);
