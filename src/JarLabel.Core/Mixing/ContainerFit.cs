using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Core.Mixing;

/// <summary>Whether a batch fits its jar with head space.</summary>
public static class ContainerFit
{
    /// <summary>The recipe, or a problem that names the largest batch of this cut that fits.</summary>
    public static Result<Recipe> Check(Recipe recipe, Volume container)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        var most = RecipeSolver.MostIn(container);
        return recipe.Makes <= most * (1 + 1e-9)
            ? recipe
            : MixingProblems.DoesNotFit(recipe, container, most, Largest(recipe.Cut, most, recipe.SolventDensity));
    }

    private static Recipe Largest(PoundCut cut, Volume most, Density solvent)
    {
        var pour = Shellac.PouredIn(most, cut);
        return new Recipe(cut, cut.FlakesFor(pour), pour, solvent);
    }
}
