namespace JarLabel.Core.Mixing;

/// <summary>Several liquids poured together.</summary>
/// <param name="Makes">The liquid there is.</param>
/// <param name="Cut">Its cut.</param>
public sealed record Blend(Volume Makes, PoundCut Cut)
{
    /// <summary>Flakes and solvents are added up part by part; the cut is one over the other.</summary>
    public static Result<Blend> Solve(IReadOnlyList<(Volume Liquid, PoundCut Cut)> parts)
    {
        if (parts.Count < 2)
        {
            return MixingProblems.NothingToBlend(parts.Count);
        }

        var poured = Volume.Zero;
        var flakes = Mass.Zero;
        var makes = Volume.Zero;
        foreach (var (liquid, cut) in parts)
        {
            var solvent = Shellac.PouredIn(liquid, cut);
            poured += solvent;
            flakes += cut.FlakesFor(solvent);
            makes += liquid;
        }

        // A mean of cuts lies between them; the clamp only takes off what rounding may add at the ends.
        return new Blend(makes, PoundCut.FromPoundsPerUsGallon(Math.Clamp(flakes.Pounds / poured.UsGallons, PoundCut.Weakest, PoundCut.Strongest)));
    }
}
