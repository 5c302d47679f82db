namespace JarLabel.Core.Hazards;

/// <summary>From percentages by weight to hazard classes and everything a label says for them.</summary>
public static class MixtureClassifier
{
    /// <summary>Classifies one known composition.</summary>
    public static HazardAssessment Classify(Composition mixture, RuleSet rules, ShopCatalog catalog, HazardSettings? settings = null) =>
        Classify([mixture], rules, catalog, settings);

    /// <summary>Classifies a jar that may be any of several compositions: on each ladder it stands on the worst rung of them all.</summary>
    public static HazardAssessment Classify(
        IReadOnlyList<Composition> possible, RuleSet rules, ShopCatalog catalog, HazardSettings? settings = null)
    {
        var mixtures = possible.Select(m => new ClassifiedMixture(m, rules, catalog.Classes, settings ?? HazardSettings.Careful))
            .OrderBy(m => m.Flash?.Celsius ?? double.MaxValue).ToArray();
        var methanol = possible.Max(m => m.PercentOf(Substance.MethanolId));
        var hazards = WorstRungs(mixtures.SelectMany(m => m.Findings), catalog.Classes);
        return new()
        {
            Rules = rules,
            Hazards = hazards,
            Pictograms = PictogramPrecedence.Keep(hazards, rules),
            Precautions = Precautions.Of(hazards, methanol, catalog.Phrases),
            OralAte = mixtures.Min(m => m.Oral.Ate),
            DermalAte = mixtures.Min(m => m.Dermal.Ate),
            VaporAte = mixtures.Min(m => m.Vapor.Ate),
            FlashPointCelsius = mixtures.Min(m => m.Flash?.Celsius),
            FlammableCategory = CategoryOf(hazards),
            PoisonWording = possible.Any(m => PoisonWords.WantedOn(m, rules)),
            MethanolPercent = methanol,
            CompositionKnown = possible.Count == 1 || InRanges(possible),
            Doubts = [.. NotKnown(possible), .. mixtures.SelectMany(m => m.Doubts).Distinct()],
            Unverified = [.. mixtures.SelectMany(m => m.Unverified).Concat(hazards.SelectMany(h => UnverifiedFigures.Of(h.Class))).Concat(UnverifiedFigures.Of(rules)).Distinct()],
        };
    }

    /// <summary>The classes in the catalog's order, which is the standard's; of one ladder only the first, which is the worst.</summary>
    private static Hazard[] WorstRungs(IEnumerable<Finding> findings, CatalogTable<HazardClass> classes)
    {
        var byClass = findings.ToLookup(f => f.ClassId, StringComparer.Ordinal);
        return
        [
            .. classes.Rows
                .Where(c => byClass.Contains(c.Id))
                .DistinctBy(c => c.Ladder)
                .Select(c => new Hazard(c, byClass[c.Id].First().Why, [.. byClass[c.Id].SelectMany(f => f.Organs).Distinct()])
                {
                    Substances = [.. byClass[c.Id].SelectMany(f => f.Substances).Distinct()],
                }),
        ];
    }

    private static int? CategoryOf(IEnumerable<Hazard> hazards) =>
        hazards.FirstOrDefault(h => h.Class.Ladder == "flam") is { } flammable ? flammable.Class.Id[^1] - '0' : null;

    private static IEnumerable<string> NotKnown(IReadOnlyList<Composition> possible) => possible.Count == 1
        ? []
        : InRanges(possible) ? ["The data sheet gives ranges: every class is answered for the worst that they allow."]
        : ["The composition is not known. This is the careful answer: the worst of what is sold under that name."];

    private static bool InRanges(IReadOnlyList<Composition> possible) => possible.All(m => m.FromRanges);
}

/// <summary>What a shop may choose in classifying its jars.</summary>
/// <param name="CountSelfClassifications">Also count what suppliers commonly say of a substance although no list does, such as eye
/// irritation by ethanol from 50 %. The careful answer, and ours unless told otherwise.</param>
public sealed record HazardSettings(bool CountSelfClassifications)
{
    /// <summary>The more cautious label in every doubt.</summary>
    public static HazardSettings Careful { get; } = new(true);
}
