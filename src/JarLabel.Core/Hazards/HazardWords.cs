namespace JarLabel.Core.Hazards;

/// <summary>The statements of an assessment in words.</summary>
public static class HazardWords
{
    /// <summary>Hazard statements, the gravest first, with the organs named: for a label or card.</summary>
    public static IReadOnlyList<string> StatementTexts(this HazardAssessment assessment, ShopCatalog catalog)
    {
        var codes = assessment.Statements;
        return
        [
            .. catalog.Phrases.Rows
                .Where(p => codes.Contains(p.Id))
                .Select(p => Named(assessment, p) + Organs(assessment, p.Id)),
        ];
    }

    private const string Call = "POISON CENTER/doctor";

    /// <summary>Precautionary statements in words.</summary>
    /// <param name="codes">Which, such as <see cref="HazardAssessment.LabelPrecautions"/>.</param>
    /// <param name="rules">Whose spelling.</param>
    /// <param name="catalog">Where the texts are.</param>
    /// <param name="poisonCenter">The number to call, put behind the first "POISON CENTER"; null for none.</param>
    public static IReadOnlyList<string> PrecautionTexts(IEnumerable<string> codes, RuleSet rules, ShopCatalog catalog, string? poisonCenter = null)
    {
        var texts = codes.Select(code => catalog.Phrases.Require(code).Text(rules)).ToArray();
        if (poisonCenter is not null && Array.FindIndex(texts, text => text.Contains(Call, StringComparison.Ordinal)) is >= 0 and var first)
        {
            texts[first] = texts[first].Replace(Call, $"POISON CENTER ({poisonCenter})/doctor", StringComparison.Ordinal);
        }

        return texts;
    }

    private static string Named(HazardAssessment assessment, Phrase phrase) => phrase.Text(assessment.Rules).Replace(
        Phrase.Substances,
        string.Join(", ", assessment.Hazards.Where(h => h.Class.Statement == phrase.Id).SelectMany(h => h.Substances).Distinct()),
        StringComparison.Ordinal);

    private static string Organs(HazardAssessment assessment, string statement)
    {
        var organs = assessment.Hazards.Where(h => h.Class.Statement == statement).SelectMany(h => h.Organs).Distinct().ToArray();
        return organs.Length == 0 ? "" : $" ({string.Join(", ", organs)})";
    }
}
