using JarLabel.Core.Catalog;
using JarLabel.Core.Mixing;

namespace JarLabel.Cli.Answers;

/// <summary>A solved batch for a program.</summary>
internal sealed record RecipeJson(
    string? Grade,
    string Solvent,
    double CutPoundsPerGallon,
    double CutGramsPerLiter,
    double FlakesGrams,
    double PourMilliliters,
    double PourGrams,
    double MakesMilliliters,
    double MakesGrams,
    double SolidsByWeight,
    double SolidsByVolume,
    IReadOnlyList<string> Unverified)
{
    internal static RecipeJson Of(Recipe recipe, string? grade, Solvent solvent) => new(
        grade,
        solvent.Id,
        recipe.Cut.PoundsPerUsGallon,
        recipe.Cut.GramsPerLiter,
        recipe.Flakes.Grams,
        recipe.Pour.Milliliters,
        recipe.PourWeight.Grams,
        recipe.Makes.Milliliters,
        recipe.MakesWeight.Grams,
        recipe.SolidsByWeight,
        recipe.SolidsByVolume,
        [.. UnverifiedFigures.Of(solvent), .. UnverifiedFigures.OfWeight(solvent.Composition)]);
}
