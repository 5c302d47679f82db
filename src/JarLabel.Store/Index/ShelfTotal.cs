using UnitsNet;

namespace JarLabel.Store.Index;

/// <summary>What stands on one shelf altogether.</summary>
/// <param name="Shelf">The shelf's name.</param>
/// <param name="Jars">How many jars.</param>
/// <param name="Liquid">Their liquid, each jar counted to the microlitre.</param>
public sealed record ShelfTotal(string Shelf, int Jars, Volume Liquid);
