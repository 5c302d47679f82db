using UnitsNet;

namespace JarLabel.Core.Hazards;

/// <summary>All of one flammable-liquid category on a shelf.</summary>
/// <param name="Category">1, the most easily lit, to 4; null for what does not burn.</param>
/// <param name="Containers">How many jars and bottles.</param>
/// <param name="Liquid">How much together.</param>
/// <param name="Weight">How heavy together.</param>
public sealed record StockedCategory(int? Category, int Containers, Volume Liquid, Mass Weight);
