namespace JarLabel.Core.Jars;

/// <summary>Somebody wrote something down.</summary>
/// <param name="At">The moment.</param>
/// <param name="Text">What.</param>
public sealed record Noted(DateTime At, string Text) : JarEvent(At);
