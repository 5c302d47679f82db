using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>The general concentration limits for mixtures, percent by weight. A substance's own limit, where it has one, outranks them.
/// CLP Annex I and 29 CFR 1910.1200 Appendix A say the same unless noted.</summary>
internal static class MixtureLimits
{
    /// <summary>Ingredients below this do not count for health hazards (CLP Annex I table 1.1; Appendix A.1.3.3).</summary>
    internal const decimal Relevant = 1;

    /// <summary>More than this of unknown acute toxicity changes the sum (CLP Annex I 3.1.3.6.2.3).</summary>
    internal const decimal MuchUnknown = 10;

    private static readonly Dictionary<(string Ingredient, string Mixture), decimal> Additive = new()
    {
        [("eye-dam-1", "eye-dam-1")] = 3,
        [("eye-dam-1", "eye-irrit-2")] = 1,
        [("eye-irrit-2", "eye-irrit-2")] = 10,
        [("skin-irrit-2", "skin-irrit-2")] = 10,
        [("stot-se-3-narcosis", "stot-se-3-narcosis")] = 20,
        [("stot-se-3-airways", "stot-se-3-airways")] = 20,
    };

    /// <summary>From what sum of such ingredients a mixture falls into the class (CLP Annex I tables 3.2.3 and 3.3.3, 3.8.3.4.5);
    /// null when they do not lead to it.</summary>
    internal static decimal? OfSum(string ingredientClass, string mixtureClass) =>
        Additive.TryGetValue((ingredientClass, mixtureClass), out var limit) ? limit : null;

    /// <summary>From what share a single ingredient that harms organs brings a mixture into the same category: 10 % under CLP (Annex I
    /// table 3.8.3), 1 % under US rules (Appendix A, table A.8.2).</summary>
    internal static decimal OfOneOrganToxicant(RuleSet rules) => rules == RuleSet.Osha ? 1 : 10;
}
