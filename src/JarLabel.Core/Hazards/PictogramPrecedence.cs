namespace JarLabel.Core.Hazards;

/// <summary>Which pictograms stay when several would stand side by side (CLP Article 26; 29 CFR 1910.1200 Appendix C.2.1).</summary>
internal static class PictogramPrecedence
{
    private const string Corrosion = "GHS05", Skull = "GHS06", ExclamationMark = "GHS07";

    private const string AllergyOfAirways = "allergy-airways", AllergyOfSkin = "allergy-skin";

    internal static IReadOnlyList<string> Keep(IReadOnlyList<Hazard> hazards, RuleSet rules)
    {
        var all = hazards.Select(h => h.Class.Pictogram).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var sensitises = hazards.Any(h => h.Class is { Ladder: AllergyOfAirways, Pictogram: not null });
        if (!hazards.Any(h => h.Class.Pictogram == ExclamationMark && StaysBeside(all, h.Class, sensitises, rules)))
        {
            all.Remove(ExclamationMark);
        }

        return [.. all.Order(StringComparer.Ordinal)];
    }

    /// <summary>The skull drops every exclamation mark in Europe, but only that of acute toxicity in the US; corrosion drops that of skin and eyes;
    /// the health hazard of an allergy of the airways drops that of skin, eyes and an allergy of the skin.</summary>
    private static bool StaysBeside(HashSet<string> others, HazardClass mild, bool sensitises, RuleSet rules)
    {
        var dropsForSkull = others.Contains(Skull) && (rules == RuleSet.Clp || mild.Ladder.StartsWith("acute-", StringComparison.Ordinal));
        var dropsForCorrosion = others.Contains(Corrosion) && mild.Ladder is ("eye" or "skin");
        var dropsForAllergy = sensitises && mild.Ladder is ("eye" or "skin" or AllergyOfSkin);
        return !dropsForSkull && !dropsForCorrosion && !dropsForAllergy;
    }
}
