using JarLabel.Bench.Keeping;
using JarLabel.Bench.Notices;
using JarLabel.Core;

namespace JarLabel.Cli.Commands;

/// <summary>What a look at the shelves shows.</summary>
/// <param name="List">The jars asked for.</param>
/// <param name="Totals">What stands on every shelf altogether.</param>
/// <param name="Cautions">Storage limits that are passed, labels that are out of date.</param>
internal sealed record ShelfSight(ShelfList List, IReadOnlyList<StandingOnShelf> Totals, IReadOnlyList<Problem> Cautions)
{
    /// <summary>How many there are of which the jars listed are the first.</summary>
    internal required int Standing { get; init; }

    /// <summary>The calendar that was written, if one was.</summary>
    internal string? Calendar { get; init; }

    /// <summary>The drawing that was written, if one was.</summary>
    internal string? Drawing { get; init; }
}
