namespace JarLabel.Core.Keeping;

/// <summary>What is known of one lifetime.</summary>
/// <param name="After">It ended later than this age, 0 or more.</param>
/// <param name="Until">It ended, or is expected to end, by this age; null while nothing says so. The same as <paramref name="After"/> where the moment was seen.</param>
public readonly record struct LifeObservation(double After, double? Until)
{
    /// <summary>True when nobody saw it end: drops dried hard but slowly, so that it is expected to.</summary>
    public bool Expected { get; init; }

    /// <summary>True when it ended.</summary>
    public bool Ended => Until is not null && !Expected;
}
