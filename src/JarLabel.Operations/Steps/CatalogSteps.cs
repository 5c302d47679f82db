namespace JarLabel.Operations.Steps;

/// <summary>What there is to mix from: the names that can be typed, and what stands behind each.</summary>
internal static class CatalogSteps
{
    internal static Step Grades => field ??= Step.OfShop("grades", "Grades", "The grades of flakes: name to type, color, wax, form.", [],
        given => new Outcome(CatalogAnswer.Grades(given.Bench.Catalog))) with
    { Looks = true };

    internal static Step Solvents => field ??= Step.OfShop("solvents", "Alcohols", "The alcohols: name to type, what is in it, hazard classes.", [],
        given => new Outcome(CatalogAnswer.Solvents(given.Bench))) with
    { Looks = true };
}
