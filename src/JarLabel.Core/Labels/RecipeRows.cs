namespace JarLabel.Core.Labels;

/// <summary>The rows that tell how to mix a batch, in the order of the hands.</summary>
public static class RecipeRows
{
    /// <summary>Pour first, then add, makes.</summary>
    public static IEnumerable<(string Name, string? Value)> Of(Recipe recipe, Solvent solvent, string flakes, bool metric)
    {
        return
        [
            ("pour first", Poured(recipe.Pour, recipe.PourWeight, solvent, metric)),
            ("then add", $"{BenchAmount.Both(recipe.Flakes, metric)} of {flakes}"),
            ("makes", Makes(recipe, metric)),
        ];
    }

    /// <summary>The batch that a jar's contents amount to, part by part: a blend has flakes or solvents of several kinds.</summary>
    public static IEnumerable<(string Name, string? Value)> Of(Contents held, ShopCatalog catalog, bool metric)
    {
        return held.Recipe is { } recipe
            ?
            [
                .. held.Solvents.Select((s, i) => (i == 0 ? "pour first" : "and", (string?)Poured(s.Poured, s.Weight, catalog.SolventOf(s.Solvent), metric))),
                .. held.Resins.GroupBy(r => r.Grade).Select((g, i) => (i == 0 ? "then add" : "and", (string?)$"{BenchAmount.Both(Mass.FromGrams(g.Sum(r => r.Weight.Grams)), metric)} of {catalog.GradeOf(g.Key).Name} flakes")),
                ("makes", Makes(recipe, metric)),
            ]
            : [];
    }

    /// <summary><c>18.1 %</c>.</summary>
    public static string Percent(double fraction) => (100 * fraction).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    private static string Poured(Volume volume, Mass weight, Solvent solvent, bool metric) =>
        $"{BenchAmount.Both(volume, metric)} of {solvent.ShortName}, or weigh {BenchAmount.Both(weight, metric)}";

    private static string Makes(Recipe recipe, bool metric) =>
        $"{BenchAmount.Both(recipe.Makes, metric)}, {Percent(recipe.SolidsByWeight)} solids by weight, {Percent(recipe.SolidsByVolume)} by volume";
}
