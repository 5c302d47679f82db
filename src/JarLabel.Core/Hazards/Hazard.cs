namespace JarLabel.Core.Hazards;

/// <summary>One hazard class of a mixture.</summary>
/// <param name="Class">The class and what a label says for it.</param>
/// <param name="Why">One sentence: which ingredient, which limit.</param>
/// <param name="Organs">The organs that are harmed, for target-organ classes.</param>
public sealed record Hazard(HazardClass Class, string Why, IReadOnlyList<string> Organs)
{
    /// <summary>The names of the ingredients it comes from, where single ones decide.</summary>
    public IReadOnlyList<string> Substances { get; init; } = [];
}
