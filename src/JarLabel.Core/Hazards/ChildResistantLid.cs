using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>From how much methanol a liquid for households needs a closure that children do not get open. A jar for one's own bench is not sold;
/// the child is the same.</summary>
public static class ChildResistantLid
{
    /// <summary>Percent of methanol by weight: 4 under US rules (16 CFR 1700.14(a)(8)), 3 under European ones (CLP Annex II 3.1.1.3, from memory).</summary>
    public static decimal From(RuleSet rules) => rules == RuleSet.Osha ? 4 : 3;

    /// <summary>The rule that says so.</summary>
    public static string Rule(RuleSet rules) => rules == RuleSet.Osha ? "16 CFR 1700.14(a)(8)" : "CLP Annex II 3.1.1.3";

    /// <summary>True when it is wanted.</summary>
    public static bool WantedOn(HazardAssessment hazards)
    {
        ArgumentNullException.ThrowIfNull(hazards);
        return hazards.MethanolPercent >= From(hazards.Rules);
    }
}
