using UnitsNet;

namespace JarLabel.Bench.Notices;

/// <summary>What stands on one shelf altogether.</summary>
/// <param name="Shelf">The shelf.</param>
/// <param name="Jars">How many jars.</param>
/// <param name="Liquid">Shellac in them.</param>
/// <param name="Bottles">How many bottles of alcohol.</param>
/// <param name="Alcohol">Alcohol in them.</param>
public sealed record StandingOnShelf(string Shelf, int Jars, Volume Liquid, int Bottles, Volume Alcohol);
