using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>One composition, put to every rule.</summary>
internal sealed class ClassifiedMixture
{
    internal ClassifiedMixture(Composition mixture, RuleSet rules, HazardSettings settings)
    {
        CountedHazard[] counted = [.. CountedHazard.In(mixture, rules, settings)];
        Flash = FlashPoint.Of(mixture);
        Oral = AcuteToxicityRule.Of(mixture, Route.Oral);
        Dermal = AcuteToxicityRule.Of(mixture, Route.Dermal);
        Vapor = AcuteToxicityRule.Of(mixture, Route.Vapor);
        Findings =
        [
            .. new[] { FlammabilityRule.Find(mixture, Flash, rules), Oral.Finding, Dermal.Finding, Vapor.Finding }.OfType<Finding>(),
            .. IrritationRule.Find(counted),
            .. TargetOrganRule.Find(counted, rules),
            .. StatedLimitRule.Find(counted),
        ];
        Unverified = mixture.Ingredients.SelectMany(i => UnverifiedFigures.OfHazards(
            i.Substance, counted.Where(c => c.Ingredient.Substance.Id == i.Substance.Id).Select(c => c.Hazard)));
    }

    internal FlashPoint? Flash { get; }

    internal AcuteToxicityOfMixture Oral { get; }

    internal AcuteToxicityOfMixture Dermal { get; }

    internal AcuteToxicityOfMixture Vapor { get; }

    internal IReadOnlyList<Finding> Findings { get; }

    /// <summary>The figures it was put to the rules with that nobody has looked up.</summary>
    internal IEnumerable<string> Unverified { get; }

    /// <summary>The sentence that the standard wants where the toxicity of a share is unknown (CLP Annex I 3.1.3.6.2.2).</summary>
    internal IEnumerable<string> Doubts => new[] { Oral, Dermal, Vapor }
        .Where(route => route.UnknownPercent > 0)
        .Select(route => $"{Shown.Exact(route.UnknownPercent)} % of the mixture consists of ingredients of unknown acute toxicity {route.Route.Way()}.");
}
