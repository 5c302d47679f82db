namespace JarLabel.Core.Keeping;

/// <summary>What the tested jars of one class showed.</summary>
/// <param name="Lives">One for each jar.</param>
/// <param name="Tests">How many tests that were.</param>
public sealed record ClassTests(IReadOnlyList<LifeObservation> Lives, int Tests);
