namespace JarLabel.Core.Labels;

/// <summary>The one line of first aid that even a small label has: whom to call at once when it was swallowed, and that it is for methanol. The statement is
/// P301+P310; naming what the danger comes from is asked for by CLP Article 18(3)(b) and 16 CFR 1500.3(b)(14)(i).</summary>
internal static class SwallowedWords
{
    /// <summary>The most telling first; none where nobody has to call at once.</summary>
    internal static string[] Of(HazardAssessment hazards, string? poisonCenter)
    {
        var number = PoisonCenter.Number(hazards.Rules, poisonCenter);
        var call = $"call {number} at once";
        return !hazards.Precautions.Contains(Hazards.Precautions.CallAtOnce) ? []
            : !hazards.MethanolCounts ? [$"Swallowed: {call}, even when well.", $"Swallowed: {call}."]
            :
            [
                $"{Holds(hazards)} methanol. Swallowed: {call}, even when well.",
                $"{Holds(hazards)} methanol. Swallowed: {call}.",
                $"Methanol. Swallowed: {call}.",
                $"Methanol swallowed: call {number}",
                $"Methanol: {call}",
                $"Methanol: call {number}",
            ];
    }

    private static string Holds(HazardAssessment hazards) => hazards.CompositionKnown ? "Contains" : "May contain";
}
