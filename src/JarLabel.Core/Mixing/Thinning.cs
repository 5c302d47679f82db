namespace JarLabel.Core.Mixing;

/// <summary>More solvent into a liquid that is too strong.</summary>
/// <param name="Add">Solvent to add.</param>
/// <param name="Of">The liquid it is added to.</param>
/// <param name="To">The cut it comes to.</param>
public sealed record Thinning(Volume Add, Volume Of, PoundCut To)
{
    /// <summary>Parts of solvent to one part of liquid.</summary>
    public double PartsPerPart => Add / Of;

    /// <summary>The liquid there is afterwards.</summary>
    public Volume Makes => Of + Add;

    /// <summary>What to add to a liquid of one cut to come to a weaker one: (c1/c2 - 1) / (1 + v c1) parts.</summary>
    public static Result<Thinning> Solve(PoundCut from, PoundCut to, Volume liquid)
    {
        if (to >= from)
        {
            return MixingProblems.NotThinner(from, to);
        }

        var poured = Shellac.PouredIn(liquid, from);
        return new Thinning(poured * ((from.PoundsPerUsGallon / to.PoundsPerUsGallon) - 1), liquid, to);
    }
}
