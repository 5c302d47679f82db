using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>Harm to organs by one exposure. Ingredients do not add up: the worst one decides (CLP Annex I table 3.8.3; 29 CFR 1910.1200
/// Appendix A, table A.8.2).</summary>
internal static class TargetOrganRule
{
    private const string Damages = "stot-se-1", MayDamage = "stot-se-2";

    internal static IEnumerable<Finding> Find(IReadOnlyList<CountedHazard> hazards, RuleSet rules) =>
        hazards.Select(h => FindingFor(h, rules)).OfType<Finding>();

    private static Finding? FindingFor(CountedHazard counted, RuleSet rules)
    {
        var (ingredient, hazard) = counted;
        var limit = hazard.AtLeast ?? MixtureLimits.OfOneOrganToxicant(rules);
        if (hazard.Class is not (Damages or MayDamage))
        {
            return null;
        }

        if (ingredient.Percent >= limit)
        {
            return new(hazard.Class, Why(ingredient, limit), hazard.Organs);
        }

        // CLP: a category 1 ingredient from 1 % to below its limit of 10 % still means category 2. Its own limits say so themselves.
        return hazard is { Class: Damages, AtLeast: null } && ingredient.Percent >= MixtureLimits.Relevant
            ? new(MayDamage, Why(ingredient, MixtureLimits.Relevant), hazard.Organs)
            : null;
    }

    private static string Why(Ingredient ingredient, decimal limit) =>
        $"{Shown.Share(ingredient)} (limit {Shown.Exact(limit)} %); it harms: {string.Join(", ", HarmedBy(ingredient))}.";

    private static IEnumerable<string> HarmedBy(Ingredient ingredient) => ingredient.Substance.Hazards.SelectMany(h => h.Organs).Distinct();
}
