using System.Globalization;
using JarLabel.Core.Catalog;
using JarLabel.Core.Mixing;

namespace JarLabel.Core.Labels;

/// <summary>The rows that tell how to mix a batch, in the order of the hands.</summary>
public static class RecipeRows
{
    /// <summary>Pour first, then add, makes.</summary>
    public static IEnumerable<(string Name, string? Value)> Of(Recipe recipe, Solvent solvent, string flakes, bool metric)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        ArgumentNullException.ThrowIfNull(solvent);
        return
        [
            ("pour first", $"{BenchAmount.Both(recipe.Pour, metric)} of {solvent.ShortName}, or weigh {BenchAmount.Both(recipe.PourWeight, metric)}"),
            ("then add", $"{BenchAmount.Both(recipe.Flakes, metric)} of {flakes}"),
            ("makes", $"{BenchAmount.Both(recipe.Makes, metric)}, {Percent(recipe.SolidsByWeight)} solids by weight, {Percent(recipe.SolidsByVolume)} by volume"),
        ];
    }

    /// <summary><c>18.1 %</c>.</summary>
    public static string Percent(double fraction) => (100 * fraction).ToString("0.0", CultureInfo.InvariantCulture) + " %";
}
