using JarLabel.Bench.Labels.Many;
using JarLabel.Core;
using JarLabel.Core.Jars;

namespace JarLabel.Bench.Lists;

/// <summary>The jars that were mixed by a list.</summary>
public sealed record MixedList
{
    internal MixedList(JarPick pick, IReadOnlyList<Problem> cautions) => (Pick, Cautions) = (pick, cautions);

    /// <summary>What went through but should be known, each once.</summary>
    public IReadOnlyList<Problem> Cautions { get; }

    /// <summary>Their labels, if any were written.</summary>
    public WrittenLabels? Labels { get; init; }

    /// <summary>The new jars in the order of the rows.</summary>
    public IEnumerable<JarNumber> Jars => Pick.Jars.Select(jar => JarNumber.From(jar.Jar));

    internal JarPick Pick { get; }
}
