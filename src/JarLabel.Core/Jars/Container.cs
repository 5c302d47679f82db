namespace JarLabel.Core.Jars;

/// <summary>The vessel a batch is kept in.</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="Holds">Its brimful volume, stored in millilitres; null when nobody said.</param>
public sealed record Container(ContainerMaterial Material, [property: JsonPropertyName("milliliters")] Volume? Holds = null);
