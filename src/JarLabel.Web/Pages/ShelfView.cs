using JarLabel.Core.Supplies;

namespace JarLabel.Web.Pages;

/// <summary>One page of the list of jars, and what else stands there.</summary>
/// <param name="Shelf">The shelf that was asked for; null for all.</param>
/// <param name="Due">True when only jars to test or past their use-by were asked for.</param>
/// <param name="List">The jars, and where their dates have moved.</param>
/// <param name="More">True when there are more.</param>
/// <param name="Totals">What stands on each shelf.</param>
/// <param name="Bottles">The bottles that hold something.</param>
/// <param name="Bags">The bags that hold something.</param>
/// <param name="Cautions">Storage limits that a shelf passes.</param>
/// <param name="OfJars">What is said of single jars, behind the list: labels that are out of date, flakes found bad, too much in one glass.</param>
internal sealed record ShelfView(
    string? Shelf,
    bool Due,
    ShelfList List,
    bool More,
    IReadOnlyList<StandingOnShelf> Totals,
    IReadOnlyList<Bottle> Bottles,
    IReadOnlyList<Bag> Bags,
    IReadOnlyList<Problem> Cautions,
    IReadOnlyList<Problem> OfJars)
{
    /// <summary>The words that were looked for; null where all are shown.</summary>
    internal string? Find { get; init; }

    /// <summary>The mark of the last jar shown: the next page begins behind it.</summary>
    internal ShelfMark After => new(List.Jars[^1].UseBy, List.Jars[^1].Number);
}
