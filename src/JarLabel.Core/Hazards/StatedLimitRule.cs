using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>Classes that a shop adds for ingredients of its own, such as skin sensitisation: a mixture has the class from the share that
/// the row states. They do not add up.</summary>
internal static class StatedLimitRule
{
    internal static IEnumerable<Finding> Find(IReadOnlyList<CountedHazard> hazards) => hazards
        .Where(h => !SubstanceHazard.HasGeneralLimit(h.Hazard.Class) && h.Ingredient.Percent >= h.Hazard.AtLeast)
        .Select(h => new Finding(
            h.Hazard.Class, $"{Shown.Share(h.Ingredient)} (limit {Shown.Exact(h.Hazard.AtLeast!.Value)} %).", h.Hazard.Organs));
}
