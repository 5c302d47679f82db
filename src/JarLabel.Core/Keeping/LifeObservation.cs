namespace JarLabel.Core.Keeping;

/// <summary>What is known of one lifetime.</summary>
/// <param name="After">It ended later than this age, 0 or more.</param>
/// <param name="Until">It ended by this age; null while it lasts. The same as <paramref name="After"/> where the moment was seen.</param>
public readonly record struct LifeObservation(double After, double? Until)
{
    /// <summary>True when it ended.</summary>
    public bool Ended => Until is not null;
}
