using JarLabel.Core.Hazards;

namespace JarLabel.Bench.Answers;

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
    internal static HazardsJson Of(HazardAssessment hazards) => new(
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
        hazards.Unverified);
}
