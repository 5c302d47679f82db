namespace JarLabel.Operations.Answers;

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
    /// <summary>The batch that would give a jar's contents; null when it is empty. A blend names every part, the largest first.</summary>
    internal static RecipeJson? Of(Contents held, ShopCatalog catalog) =>
        held.Recipe is { } recipe ? Of(recipe, Grades(held), Solvents(held), [.. held.Solvents.Select(s => catalog.SolventOf(s.Solvent))]) : null;

    internal static RecipeJson Of(Recipe recipe, Solvent solvent) => Of(recipe, null, solvent.Id, [solvent]);

    /// <summary><c>garnet</c>, or <c>seedlac+garnet</c>.</summary>
    internal static string Grades(Contents held) => string.Join('+', held.Grades);

    /// <summary><c>ethanol-95</c>, or <c>ethanol-95+isopropanol-99</c>.</summary>
    internal static string Solvents(Contents held) => string.Join('+', held.Solvents.Select(s => s.Solvent));

    private static RecipeJson Of(Recipe recipe, string? grade, string solvent, IReadOnlyList<Solvent> solvents) => new(
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
        recipe.SolidsByVolume,
        [.. solvents.SelectMany(s => UnverifiedFigures.Of(s).Concat(UnverifiedFigures.OfWeight(s.Composition))).Distinct()]);
}
