namespace JarLabel.Core.Jars;

/// <summary>The jar is gone.</summary>
/// <param name="At">The moment.</param>
/// <param name="Why">Why, where somebody said.</param>
public sealed record Discarded(DateTime At, string? Why = null) : JarEvent(At);
