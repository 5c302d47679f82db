using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>One classification of a substance, and from what share it counts in a mixture.</summary>
/// <param name="Class">Id of the hazard class.</param>
/// <param name="OnlyUnder">The rule set it holds under; null for both.</param>
/// <param name="AtLeast">Its own concentration limit, percent by weight, where it has one; else the class's general limit holds.</param>
/// <param name="SelfClassified">True where suppliers commonly say so although no list does: a setting can turn it off.</param>
/// <param name="Organs">The organs that are harmed, for target-organ classes.</param>
/// <param name="Source">Where it was printed.</param>
public sealed record SubstanceHazard(
    string Class, RuleSet? OnlyUnder, decimal? AtLeast, bool SelfClassified, IReadOnlyList<string> Organs, string Source)
{
    internal static SubstanceHazard Read(FieldReader fields) => new(
        fields.Text("class"),
        RuleSetWords.OnlyUnder(fields),
        fields.Has("atLeastPercent") ? fields.Exact("atLeastPercent", 0.001m, 100) : null,
        fields.OptionalFlag("selfClassified"),
        fields.OptionalTexts("organs"),
        fields.Text("source"));
}
