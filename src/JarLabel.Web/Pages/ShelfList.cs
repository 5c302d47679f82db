using JarLabel.Core;
using JarLabel.Store.Index;

namespace JarLabel.Web.Pages;

/// <summary>One page of the list of jars.</summary>
/// <param name="Query">What was asked for.</param>
/// <param name="Jars">The jars.</param>
/// <param name="More">True when there are more.</param>
/// <param name="Totals">What stands on each shelf.</param>
/// <param name="Cautions">Storage limits that a shelf passes.</param>
internal sealed record ShelfList(ShelfQuery Query, IReadOnlyList<JarEntry> Jars, bool More, IReadOnlyList<ShelfTotal> Totals, IReadOnlyList<Problem> Cautions);
