using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>A classification of an ingredient that counts under the rules and settings in hand, whatever its share.</summary>
internal sealed record CountedHazard(Ingredient Ingredient, SubstanceHazard Hazard)
{
    internal static IEnumerable<CountedHazard> In(Composition mixture, RuleSet rules, HazardSettings settings) =>
        mixture.Ingredients.SelectMany(i => i.Substance.Hazards, (i, hazard) => new CountedHazard(i, hazard))
            .Where(c => c.Hazard.OnlyUnder is null || c.Hazard.OnlyUnder == rules)
            .Where(c => settings.CountSelfClassifications || !c.Hazard.SelfClassified);
}
