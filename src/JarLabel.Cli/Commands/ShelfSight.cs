using JarLabel.Bench.Notices;
using JarLabel.Core;
using JarLabel.Store.Index;

namespace JarLabel.Cli.Commands;

/// <summary>What a look at the shelves shows.</summary>
/// <param name="Jars">The jars asked for.</param>
/// <param name="Totals">What stands on every shelf altogether.</param>
/// <param name="Cautions">Storage limits that are passed.</param>
internal sealed record ShelfSight(IReadOnlyList<JarEntry> Jars, IReadOnlyList<StandingOnShelf> Totals, IReadOnlyList<Problem> Cautions);
