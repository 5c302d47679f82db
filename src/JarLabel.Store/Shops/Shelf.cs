using UnitsNet;

namespace JarLabel.Store.Shops;

/// <summary>A place where jars stand.</summary>
/// <param name="Name">What the shop calls it.</param>
/// <param name="Temperature">How warm it is there over the year, -20 to 40 °C: use-by estimates follow it.</param>
public sealed record Shelf(string Name, Temperature Temperature);
