using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Store.Index;

/// <summary>What stands on one shelf of one kind of liquid.</summary>
/// <param name="Solvent">The id of its solvent; of a blend, of the largest.</param>
/// <param name="Cut">Its cut, rounded down to a hundredth of a pound, thus never with less alcohol than there is.</param>
/// <param name="Liquid">How much, each jar counted to the microlitre.</param>
public sealed record ShelfLiquid(string Solvent, PoundCut Cut, Volume Liquid);
