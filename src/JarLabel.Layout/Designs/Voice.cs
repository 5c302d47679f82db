namespace JarLabel.Layout.Designs;

/// <summary>One of the few sizes a label speaks in. Every box of one voice is printed in the same size.</summary>
/// <param name="Name">What boxes call it.</param>
/// <param name="Face">Its weight.</param>
/// <param name="Sizes">Sizes in points, from the largest to the smallest allowed.</param>
public sealed record Voice(string Name, Face Face, IReadOnlyList<double> Sizes);
