using JarLabel.Bench.Labels;
using JarLabel.Core.Catalog;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;
using JarLabel.Core.Supplies;
using UnitsNet;

namespace JarLabel.Bench.Changing;

/// <summary>A jar that somebody wants stronger.</summary>
/// <param name="Jar">The jar.</param>
/// <param name="To">The cut wanted.</param>
/// <param name="Grade">What to add; null for what most of it is.</param>
/// <param name="Form">The form of the flakes; null for the grade's usual one.</param>
/// <param name="FlakeDate">The new flakes' own date, where known.</param>
/// <param name="Bench">Temperature at the bench; null for 20 °C.</param>
/// <param name="Container">The larger jar it all goes into; null when it stays in its own.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record ThickenRequest(
    JarNumber Jar,
    PoundCut To,
    Grade? Grade = null,
    LacForm? Form = null,
    DateOnly? FlakeDate = null,
    Temperature? Bench = null,
    Container? Container = null,
    LabelChoice? Label = null)
{
    /// <summary>The bag that the flakes come from; null when nobody said.</summary>
    public SupplyNumber? Bag { get; init; }
}
