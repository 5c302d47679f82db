using System.Globalization;
using JarLabel.Core.Catalog;
using JarLabel.Core.Labels;
using JarLabel.Core.Mixing;

namespace JarLabel.Cli.Answers;

/// <summary>The rows that tell how to mix a batch, in the order of the hands.</summary>
internal static class RecipeRows
{
    internal static IEnumerable<(string Name, string? Value)> Of(Recipe recipe, Solvent solvent, string flakes, bool metric) =>
    [
        ("pour first", $"{BenchAmount.Both(recipe.Pour, metric)} of {solvent.ShortName}, or weigh {BenchAmount.Both(recipe.PourWeight, metric)}"),
        ("then add", $"{BenchAmount.Both(recipe.Flakes, metric)} of {flakes}"),
        ("makes", $"{BenchAmount.Both(recipe.Makes, metric)}, {Percent(recipe.SolidsByWeight)} solids by weight, {Percent(recipe.SolidsByVolume)} by volume"),
    ];

    internal static string Percent(double fraction) => (100 * fraction).ToString("0.0", CultureInfo.InvariantCulture) + " %";
}
