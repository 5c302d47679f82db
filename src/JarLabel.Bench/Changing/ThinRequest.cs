using JarLabel.Bench.Labels;
using JarLabel.Core.Catalog;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;
using JarLabel.Core.Supplies;
using UnitsNet;

namespace JarLabel.Bench.Changing;

/// <summary>A jar that somebody wants weaker.</summary>
/// <param name="Jar">The jar.</param>
/// <param name="To">The cut wanted.</param>
/// <param name="Solvent">What to add; null for what most of it is.</param>
/// <param name="Bench">Temperature at the bench; null for 20 °C.</param>
/// <param name="Container">The larger jar it all goes into; null when it stays in its own.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record ThinRequest(
    JarNumber Jar, PoundCut To, Solvent? Solvent = null, Temperature? Bench = null, Container? Container = null, LabelChoice? Label = null)
{
    /// <summary>The bottle that the alcohol comes from; null when nobody said.</summary>
    public SupplyNumber? Bottle { get; init; }
}
