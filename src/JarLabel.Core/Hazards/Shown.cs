using System.Globalization;
using JarLabel.Core.Catalog;

namespace JarLabel.Core.Hazards;

/// <summary>Figures and ingredients as the reasons write them.</summary>
internal static class Shown
{
    /// <summary>Up to four decimals, so that 4.999 % is never shown as 5.</summary>
    internal static string Exact(decimal value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>Three figures that count.</summary>
    internal static string Rounded(decimal value) => ((double)value).ToString(value < 100 ? "G3" : "0", CultureInfo.InvariantCulture);

    internal static string Celsius(double celsius) => celsius.ToString("0.#", CultureInfo.InvariantCulture) + " °C";

    internal static string Share(Ingredient ingredient) => $"{ingredient.Substance.Name} {Exact(ingredient.Percent)} %";

    internal static string Shares(IEnumerable<Ingredient> ingredients) =>
        string.Join(", ", ingredients.OrderByDescending(i => i.Percent).ThenBy(i => i.Substance.Id, StringComparer.Ordinal).Select(Share));
}
