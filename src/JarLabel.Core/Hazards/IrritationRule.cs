namespace JarLabel.Core.Hazards;

/// <summary>Classes for which like ingredients add up: eyes, skin, and drowsiness or irritated airways. Each share is divided by its
/// limit, the ingredient's own or the general one; from a sum of 1 the mixture is in the class (CLP Annex I 3.2.3.3, 3.3.3.3, 3.8.3.4.5
/// and 1.1.3; 29 CFR 1910.1200 Appendix A.2, A.3, A.8).</summary>
internal static class IrritationRule
{
    private static readonly string[] Classes = ["skin-irrit-2", "eye-dam-1", "eye-irrit-2", "stot-se-3-airways", "stot-se-3-narcosis"];

    internal static IEnumerable<Finding> Find(IReadOnlyList<CountedHazard> hazards) =>
        Classes.Select(mixtureClass => FindingFor(mixtureClass, hazards)).OfType<Finding>();

    private static Finding? FindingFor(string mixtureClass, IReadOnlyList<CountedHazard> hazards)
    {
        var counted = hazards
            .Select(h => (h.Ingredient, Limit: LimitOf(h, mixtureClass)))
            .Where(h => h.Limit is not null)
            .ToArray();
        if (counted.Sum(h => h.Ingredient.Percent / h.Limit!.Value) < 1)
        {
            return null;
        }

        var shares = counted.Select(h => $"{Shown.Share(h.Ingredient)} (limit {Shown.Exact(h.Limit!.Value)} %)");
        var together = counted.Length > 1 ? "Together these reach the limit" : "This reaches the limit";
        return new(mixtureClass, $"{together}: {string.Join(", ", shares)}.");
    }

    private static decimal? LimitOf(CountedHazard counted, string mixtureClass) =>
        counted.Hazard.Class == mixtureClass && counted.Hazard.AtLeast is { } own ? own : MixtureLimits.OfSum(counted.Hazard.Class, mixtureClass);
}
