namespace JarLabel.Core.Hazards;

/// <summary>Whom to call. The US has one number for all its poison centers (HRSA, Poison Help); in Europe every country has its own, which a shop
/// sets, and 112 for emergencies.</summary>
public static class PoisonCenter
{
    private const string Us = "1-800-222-1222";

    /// <summary>The number of the poison center: the shop's own setting, else what the rules' region has for all.</summary>
    /// <param name="rules">Whose rules.</param>
    /// <param name="own">What the shop has set; null for nothing.</param>
    public static string Number(RuleSet rules, string? own) => own ?? (rules == RuleSet.Osha ? Us : Emergency(rules));

    /// <summary>The number for somebody who is unconscious or cannot breathe, and for fire.</summary>
    public static string Emergency(RuleSet rules) => rules == RuleSet.Osha ? "911" : "112";
}
