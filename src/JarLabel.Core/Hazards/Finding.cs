namespace JarLabel.Core.Hazards;

/// <summary>One hazard class that a mixture falls into, before the catalog has said what follows from it.</summary>
/// <param name="ClassId">Id of the hazard class.</param>
/// <param name="Why">One sentence: which ingredient, which limit.</param>
/// <param name="Organs">The organs that are harmed, for target-organ classes.</param>
internal sealed record Finding(string ClassId, string Why, IReadOnlyList<string> Organs)
{
    internal Finding(string classId, string why)
        : this(classId, why, [])
    {
    }

    /// <summary>The names of the ingredients it comes from, where single ones decide.</summary>
    internal IReadOnlyList<string> Substances { get; init; } = [];
}
