namespace JarLabel.Core.Labels;

/// <summary>First aid in whole sentences, the gravest first. That the center is called at once, that one rinses for 15 minutes and whom to call
/// for the unconscious: HRSA, Poison Help, and the poison centers' first-aid tips. That signs of methanol may come 10 to 48 hours late: NIOSH; GisChem.</summary>
public static class FirstAidWords
{
    /// <summary>For one liquid.</summary>
    /// <param name="hazards">What it is.</param>
    /// <param name="poisonCenter">The shop's own number to call; null for that of the rules' region.</param>
    public static IReadOnlyList<string> Of(HazardAssessment hazards, string? poisonCenter) =>
        Of(hazards.MethanolCounts || !hazards.CompositionKnown, hazards.Rules, poisonCenter);

    internal static IReadOnlyList<string> Of(bool methanol, RuleSet rules, string? poisonCenter)
    {
        var call = $"the poison {(rules == RuleSet.Osha ? "center" : "centre")} ({PoisonCenter.Number(rules, poisonCenter)})";
        return
        [
            methanol
                ? $"Swallowed: call {call} at once, even when well; signs of methanol may come 10 to 48 h late. Do not cause vomiting."
                : $"Swallowed: call {call}, for a child at once. Do not cause vomiting.",
            "Eyes: rinse for 15 minutes, lenses out; see a doctor.",
            "Skin: wet clothing off, wash with plenty of water.",
            methanol ? "Breathed in: fresh air; dizzy or sight blurred: call at once." : "Breathed in, faint or dizzy: fresh air; call if it does not pass.",
            $"Unconscious, cramps or hard to breathe: {PoisonCenter.Emergency(rules)}.",
        ];
    }
}
