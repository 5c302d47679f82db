namespace JarLabel.Operations;

/// <summary>How a jar stands after something was done at the bench.</summary>
/// <param name="History">The jar and its life.</param>
/// <param name="Hazards">What its contents are.</param>
/// <param name="Label">The label that was written, if one was.</param>
/// <param name="Cautions">What went through but should be known.</param>
public sealed record JarOutcome(JarHistory History, HazardAssessment Hazards, WrittenLabel? Label, IReadOnlyList<Problem> Cautions)
{
    /// <summary>What was recorded of the jar; null when it was only looked at or labelled.</summary>
    public JarEvent? Step { get; init; }

    /// <summary>Other jars that changed with it, as they are then.</summary>
    public IReadOnlyList<Jar> Also { get; init; } = [];

    /// <summary>Bags and bottles that something was put back into, as they are then.</summary>
    public IReadOnlyList<Supply> PutBack { get; init; } = [];

    /// <summary>New jars that came of it.</summary>
    public IReadOnlyList<JarOutcome> Made { get; init; } = [];
}
