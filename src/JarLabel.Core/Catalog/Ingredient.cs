namespace JarLabel.Core.Catalog;

/// <summary>A substance and its share.</summary>
/// <param name="Substance">What it is.</param>
/// <param name="Percent">Percent by weight of the whole, 0 to 100.</param>
public sealed record Ingredient(Substance Substance, decimal Percent);
