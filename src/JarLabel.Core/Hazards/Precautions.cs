namespace JarLabel.Core.Hazards;

/// <summary>Which precautionary statements belong to a set of hazards, the most important first.</summary>
internal static class Precautions
{
    /// <summary>As many as a label carries. CLP Article 28(3) asks for no more than six; US rules have no such number and let a container that stays in
    /// the workplace carry words that tell the hazards in general (29 CFR 1910.1200(f)(6)): under them six is our own choice. The card carries all.</summary>
    internal const int OnLabel = 6;

    /// <summary>From so much methanol, percent by weight, whoever swallows it calls at once, however well: its signs come late, and then it blinds.</summary>
    internal const decimal MethanolCalledFrom = 1;

    /// <summary>"Swallowed: immediately call", which outranks "if you feel unwell".</summary>
    internal const string CallAtOnce = "P301+P310";

    /// <summary>Everything the classes ask for, less what a stronger statement says already (CLP Article 28(1); 29 CFR 1910.1200 Appendix C.2.4.7:
    /// of several the most stringent).</summary>
    /// <param name="hazards">The classes.</param>
    /// <param name="methanolPercent">Methanol, percent by weight, at the most.</param>
    /// <param name="phrases">Where the statements are.</param>
    internal static IReadOnlyList<string> Of(IReadOnlyList<Hazard> hazards, decimal methanolPercent, CatalogTable<Phrase> phrases)
    {
        var asked = hazards.SelectMany(h => h.Class.Precautions).ToHashSet(StringComparer.Ordinal);
        if (methanolPercent >= MethanolCalledFrom)
        {
            asked.Add(CallAtOnce);
        }

        var inOrder = phrases.Rows.Where(p => asked.Contains(p.Id)).ToArray();
        var outranked = inOrder.SelectMany(p => p.Outranks).ToHashSet(StringComparer.Ordinal);
        return [.. inOrder.Select(p => p.Id).Where(id => !outranked.Contains(id))];
    }
}
