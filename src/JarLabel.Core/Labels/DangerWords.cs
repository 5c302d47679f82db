using JarLabel.Core.Hazards;

namespace JarLabel.Core.Labels;

/// <summary>What a jar and a bottle say of danger in the same words: signal word, poison, lid.</summary>
internal static class DangerWords
{
    /// <summary>Each key with its wordings, the most telling first.</summary>
    internal static IEnumerable<(string Key, string[] Wordings)> Of(HazardAssessment hazards)
    {
        if (hazards.SignalText?.ToUpperInvariant() is { } signal)
        {
            yield return ("signal", [hazards.PoisonWording ? $"{signal} · {PoisonWords.Words[0]}" : signal]);
        }

        if (hazards.PoisonWording)
        {
            yield return ("poison", [PoisonWords.Text]);
        }

        if (ChildResistantLid.WantedOn(hazards))
        {
            yield return ("lid", ["Keep out of the reach of children: child-resistant lid, locked away.", "Keep out of the reach of children: child-resistant lid."]);
        }
    }
}
