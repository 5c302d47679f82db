namespace JarLabel.Core.Jars;

/// <summary>A part, or all, was used. What is left is the same liquid, so its label stays true.</summary>
/// <param name="At">The moment.</param>
/// <param name="Taken">What went.</param>
/// <param name="Job">What it went to.</param>
public sealed record Used(DateTime At, Contents Taken, string? Job = null) : JarEvent(At);
