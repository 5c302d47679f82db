namespace JarLabel.Core.Hazards;

/// <summary>One composition, put to every rule.</summary>
internal sealed class ClassifiedMixture
{
    internal ClassifiedMixture(Composition mixture, RuleSet rules, CatalogTable<HazardClass> classes, HazardSettings settings)
    {
        CountedHazard[] hazards = [.. CountedHazard.In(mixture, rules, settings)];
        Flash = FlashPoint.Of(mixture);
        Oral = AcuteToxicityRule.Of(mixture, Route.Oral, rules, classes);
        Dermal = AcuteToxicityRule.Of(mixture, Route.Dermal, rules, classes);
        Vapor = AcuteToxicityRule.Of(mixture, Route.Vapor, rules, classes);
        Findings =
        [
            .. new[] { FlammabilityRule.Find(mixture, Flash, rules, classes), Oral.Finding, Dermal.Finding, Vapor.Finding }.OfType<Finding>(),
            .. IngredientLimitRule.Find(hazards, rules, classes),
        ];
        var counted = hazards.Where(h => IngredientLimitRule.Counts(h, rules, classes)).ToLookup(h => h.Ingredient.Substance.Id, h => h.Hazard);
        Unverified = mixture.Ingredients.SelectMany(i => UnverifiedFigures.OfHazards(i.Substance, counted[i.Substance.Id]));
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
        .Select(route => $"{ReasonFormat.Exact(route.UnknownPercent)} % of the mixture consists of ingredients of unknown acute toxicity {route.Route.Way()}.");
}

/// <summary>What the sum says of one route.</summary>
/// <param name="Route">How it gets in.</param>
/// <param name="Ate">mg/kg, or mg/L for vapour; null when no ingredient counts.</param>
/// <param name="UnknownPercent">The share whose toxicity by this route nobody knows.</param>
/// <param name="Finding">The class it leads to, if any.</param>
internal sealed record AcuteToxicityOfMixture(Route Route, decimal? Ate, decimal UnknownPercent, Finding? Finding);
