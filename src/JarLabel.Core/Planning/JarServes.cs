using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Core.Planning;

/// <summary>What a jar gives to one line of a job.</summary>
/// <param name="Line">Which line, from 0.</param>
/// <param name="Jar">The jar.</param>
/// <param name="Take">Liquid taken from it.</param>
/// <param name="To">The cut it is thinned to; the jar's own where it is used as it is.</param>
/// <param name="Add">Alcohol added to what was taken.</param>
public sealed record JarServes(int Line, ShelfJar Jar, Volume Take, PoundCut To, Volume Add)
{
    /// <summary>Liquid for the line.</summary>
    public Volume Gives => Take + Add;
}
