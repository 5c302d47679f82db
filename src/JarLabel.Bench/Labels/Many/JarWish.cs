using JarLabel.Core.Jars;

namespace JarLabel.Bench.Labels.Many;

/// <summary>One jar or a run of jars whose labels are wanted.</summary>
/// <param name="Jars">Which.</param>
/// <param name="Copies">How many of each; null for as many as of all others.</param>
/// <param name="Where">Where it was read, for messages.</param>
public readonly record struct JarWish(JarSpan Jars, int? Copies = null, string Where = "jar")
{
    /// <summary>True for a row of a list, whose copies are added to those of other rows; otherwise a jar that is named again is the same jar.</summary>
    public bool AddsUp { get; init; }
}
