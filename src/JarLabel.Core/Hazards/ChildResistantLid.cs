namespace JarLabel.Core.Hazards;

/// <summary>Which liquids for households need a closure that children do not get open. A jar for one's own bench is not sold; the child is the
/// same.</summary>
public static class ChildResistantLid
{
    /// <summary>Classes that want it in Europe, whatever brings a liquid into them (CLP Annex II 3.1.1.1 and 3.1.1.2, from memory).</summary>
    private static readonly HashSet<string> EuropeanClasses = new(StringComparer.Ordinal)
    {
        "acute-oral-1", "acute-oral-2", "acute-oral-3", "acute-dermal-1", "acute-dermal-2", "acute-dermal-3", "acute-vapor-1", "acute-vapor-2", "acute-vapor-3",
        "stot-se-1", "stot-re-1", "skin-corr-1", Aspiration,
    };

    private const string Aspiration = "asp-1";

    /// <summary>Percent of methanol by weight: 4 under US rules (16 CFR 1700.14(a)(8)), 3 under European ones (CLP Annex II 3.1.1.3, from memory).</summary>
    public static decimal From(RuleSet rules) => rules == RuleSet.Osha ? 4 : 3;

    /// <summary>The rule that says so for methanol.</summary>
    public static string Rule(RuleSet rules) => rules == RuleSet.Osha ? "16 CFR 1700.14(a)(8)" : "CLP Annex II 3.1.1.3";

    /// <summary>True when it is wanted.</summary>
    public static bool WantedOn(HazardAssessment hazards) => WantedForMethanol(hazards) || ClassThatWants(hazards) is not null;

    /// <summary>True when methanol alone is enough.</summary>
    internal static bool WantedForMethanol(HazardAssessment hazards) => hazards.MethanolPercent >= From(hazards.Rules);

    /// <summary>The gravest class that wants it; null for none. US rules name thin hydrocarbons and toluene from 10 % (16 CFR 1700.14(a)(15) and (a)(31), from
    /// memory), which is what brings a liquid of this shelf into the aspiration class.</summary>
    internal static HazardClass? ClassThatWants(HazardAssessment hazards) => hazards.Hazards.Select(hazard => hazard.Class)
        .FirstOrDefault(one => hazards.Rules == RuleSet.Clp ? EuropeanClasses.Contains(one.Id) : one.Id == Aspiration);

    /// <summary>The rule that says so for a class.</summary>
    internal static string RuleOfClass(RuleSet rules) => rules == RuleSet.Osha ? "16 CFR 1700.14(a)(15) and (a)(31), hydrocarbons" : "CLP Annex II 3.1.1";
}
