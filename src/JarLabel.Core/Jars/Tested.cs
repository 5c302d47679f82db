namespace JarLabel.Core.Jars;

/// <summary>A few drops were let dry on glass.</summary>
/// <param name="At">The moment.</param>
/// <param name="Passed">True when they dried hard.</param>
/// <param name="DryMinutes">How long that took, where somebody looked at the clock.</param>
public sealed record Tested(DateTime At, bool Passed, int? DryMinutes = null) : JarEvent(At);
