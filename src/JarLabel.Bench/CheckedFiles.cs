using JarLabel.Core;

namespace JarLabel.Bench;

/// <summary>A shop's own files, read without a fault.</summary>
/// <param name="Count">How many there are.</param>
/// <param name="Cautions">What should be known of them all the same.</param>
public sealed record CheckedFiles(int Count, IReadOnlyList<Problem> Cautions);
