namespace JarLabel.Core.Mixing;

/// <summary>Whether a batch fits its jar with head space.</summary>
public static class ContainerFit
{
    /// <summary>The recipe, or a problem that names the largest batch of this cut that fits.</summary>
    public static Result<Recipe> Check(Recipe recipe, Volume container)
    {
        var most = RecipeSolver.MostIn(container);
        return Fits(recipe.Makes, most)
            ? recipe
            : MixingProblems.DoesNotFit(recipe, container, most, Largest(recipe.Cut, most, recipe.SolventDensity));
    }

    /// <summary>The thinning, or a problem that says what to pour off first or how to split it.</summary>
    public static Result<Thinning> Check(JarNumber jar, Thinning thinning, Volume container)
    {
        var most = RecipeSolver.MostIn(container);
        return Fits(thinning.Makes, most)
            ? thinning
            : MixingProblems.ThinningDoesNotFit(jar, thinning, container, most, thinning.Of - (most / (1 + thinning.PartsPerPart)), (int)Math.Ceiling(thinning.Makes / most));
    }

    /// <summary>A liquid that is there, or a problem that says how much of it fits.</summary>
    public static Result<Volume> Check(Volume liquid, Volume container)
    {
        var most = RecipeSolver.MostIn(container);
        return Fits(liquid, most) ? liquid : MixingProblems.LiquidDoesNotFit(liquid, container, most);
    }

    private static bool Fits(Volume liquid, Volume most) => liquid <= most * (1 + 1e-9);

    private static Recipe Largest(PoundCut cut, Volume most, Density solvent)
    {
        var pour = Shellac.PouredIn(most, cut);
        return new Recipe(cut, cut.FlakesFor(pour), pour, solvent);
    }
}
