namespace JarLabel.Core.Planning;

/// <summary>A batch to mix for what no jar serves.</summary>
/// <param name="Lines">For which lines, from 0.</param>
/// <param name="Recipe">The batch.</param>
public sealed record Batch(IReadOnlyList<int> Lines, Recipe Recipe);
