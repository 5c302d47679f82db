namespace JarLabel.Core.Jars;

/// <summary>A part, or all, was poured into another jar. What is left is the same liquid, so its label stays true.</summary>
/// <param name="At">The moment.</param>
/// <param name="Taken">What went.</param>
/// <param name="To">The jar it went into.</param>
public sealed record PouredOut(DateTime At, Contents Taken, JarNumber To) : JarEvent(At);
