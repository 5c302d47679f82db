namespace JarLabel.Core.Labels;

/// <summary>What a jar and a bottle say of danger in the same words: signal word, dangers in a few words, poison, whom to call, lid.</summary>
internal static class DangerWords
{
    /// <summary>Each key with its wordings, the most telling first.</summary>
    internal static IEnumerable<(string Key, string[] Wordings)> Of(HazardAssessment hazards, string? poisonCenter)
    {
        if (hazards.SignalText?.ToUpperInvariant() is { } signal)
        {
            yield return ("signal", [hazards.PoisonWording ? $"{signal} · {PoisonWords.Words[0]}" : signal]);
        }

        if (ShortDangers.Of(hazards) is { Length: > 0 } dangers)
        {
            yield return ("dangers", dangers);
        }

        if (hazards.PoisonWording)
        {
            yield return ("poison", [PoisonWords.Text]);
        }

        if (SwallowedWords.Of(hazards, poisonCenter) is { Length: > 0 } swallowed)
        {
            yield return ("swallowed", swallowed);
        }

        if (ChildResistantLid.WantedOn(hazards))
        {
            yield return ("lid", ["Keep out of the reach of children: child-resistant lid, locked away.", "Keep out of the reach of children: child-resistant lid."]);
        }
    }
}
