namespace JarLabel.Operations.Answers;

/// <summary>The hazards of a mixture for a program.</summary>
internal sealed record HazardsJson(
    string Rules,
    string? SignalWord,
    IReadOnlyList<string> Pictograms,
    IReadOnlyList<string> Classes,
    IReadOnlyList<string> HStatements,
    IReadOnlyList<string> PStatements,
    decimal? OralAte,
    decimal? DermalAte,
    decimal? VaporAte,
    double? FlashPointCelsius,
    IReadOnlyList<string> Why,
    IReadOnlyList<string> Doubts,
    IReadOnlyList<string> Unverified)
{
    /// <summary>The poison wording that the rules want on it; empty where they want none.</summary>
    public required IReadOnlyList<string> PoisonWording { get; init; }

    /// <summary>First aid in whole sentences, the gravest first.</summary>
    public required IReadOnlyList<string> FirstAid { get; init; }

    /// <summary>True when it should stand under a child-resistant lid.</summary>
    public required bool ChildResistantLid { get; init; }

    /// <param name="hazards">The hazards.</param>
    /// <param name="poisonCenter">The poison center's number as the shop set it.</param>
    internal static HazardsJson Of(HazardAssessment hazards, string? poisonCenter) => new(
        hazards.Rules.ToString().ToLowerInvariant(),
        hazards.SignalText,
        hazards.Pictograms,
        hazards.ClassCodes,
        hazards.Statements,
        hazards.Precautions,
        hazards.OralAte,
        hazards.DermalAte,
        hazards.VaporAte,
        hazards.FlashPointCelsius,
        hazards.Why,
        hazards.Doubts,
        hazards.Unverified)
    {
        PoisonWording = hazards.PoisonWording ? PoisonWords.Words : [],
        FirstAid = FirstAidWords.Of(hazards, poisonCenter),
        ChildResistantLid = Core.Hazards.ChildResistantLid.WantedOn(hazards),
    };
}
