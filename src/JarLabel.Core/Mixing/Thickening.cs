using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Core.Mixing;

/// <summary>More flakes into a liquid that is too weak.</summary>
/// <param name="Add">Flakes to add.</param>
/// <param name="Of">The liquid they are added to.</param>
/// <param name="To">The cut it comes to.</param>
public sealed record Thickening(Mass Add, Volume Of, PoundCut To)
{
    /// <summary>The liquid there is afterwards.</summary>
    public Volume Makes => Of + Shellac.VolumeOf(Add);

    /// <summary>What to add to a liquid of one cut to come to a stronger one: (c2 - c1) / (1 + v c1) lb per gallon of liquid.</summary>
    public static Result<Thickening> Solve(PoundCut from, PoundCut to, Volume liquid)
    {
        if (to <= from)
        {
            return MixingProblems.NotThicker(from, to);
        }

        var poured = Shellac.PouredIn(liquid, from);
        return new Thickening(to.FlakesFor(poured) - from.FlakesFor(poured), liquid, to);
    }
}
