using JarLabel.Core.Jars;

namespace JarLabel.Bench.Labels.Many;

/// <summary>Whose labels are wanted.</summary>
/// <param name="Named">Jars and runs of jars, in the order they were named.</param>
/// <param name="Shelf">All jars of this shelf too; null for none.</param>
/// <param name="All">All jars on all shelves.</param>
public sealed record JarsWanted(IReadOnlyList<JarWish> Named, string? Shelf = null, bool All = false)
{
    /// <summary>The one jar when it is no more than that.</summary>
    public JarNumber? One => !All && Shelf is null && Named is [{ Jars: { IsOne: true } only, Copies: null }] ? only.First : null;
}
