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
    double SolidsByVolume)
{
    internal static RecipeJson Of(Recipe recipe, string? grade, string solvent) => new(
        grade,
        solvent,
        recipe.Cut.PoundsPerUsGallon,
        recipe.Cut.GramsPerLiter,
        recipe.Flakes.Grams,
        recipe.Pour.Milliliters,
        recipe.PourWeight.Grams,
        recipe.Makes.Milliliters,
        recipe.MakesWeight.Grams,
        recipe.SolidsByWeight,
        recipe.SolidsByVolume);
}
