namespace JarLabel.Core.Hazards;

/// <summary>Which storage limits are passed. They are workplace rules: a home may have others, and the local fire code comes first.</summary>
public static class StorageAdvice
{
    /// <summary>The limits that one container of a flammable liquid passes.</summary>
    /// <param name="capacity">How much it can hold.</param>
    /// <param name="material">Its material as commands write it: <c>glass</c>, <c>plastic</c>, <c>metal</c>, <c>lined-metal</c>.</param>
    /// <param name="category">Flammable-liquid category, or null for none.</param>
    /// <param name="rules">Whose rules.</param>
    /// <param name="catalog">Where the limits are.</param>
    public static IReadOnlyList<StorageLimit> PassedBy(Volume capacity, string material, int? category, RuleSet rules, ShopCatalog catalog) =>
    [
        .. Limits(rules, StorageScope.Container, catalog)
            .Where(limit => limit.Categories.Any(c => c == category))
            .Where(limit => limit.Materials.Count == 0 || limit.Materials.Contains(material))
            .Where(limit => IsPassed(limit, capacity, Mass.Zero)),
    ];

    /// <summary>The limits that everything on the shelves of one room passes.</summary>
    /// <param name="stock">Volume and weight in each flammable-liquid category.</param>
    /// <param name="scope">Outside a cabinet, or inside one.</param>
    /// <param name="rules">Whose rules.</param>
    /// <param name="catalog">Where the limits are.</param>
    public static IReadOnlyList<StorageLimit> PassedBy(
        IEnumerable<(int Category, Volume Volume, Mass Weight)> stock, StorageScope scope, RuleSet rules, ShopCatalog catalog)
    {
        var shelf = stock.ToArray();
        return [.. Limits(rules, scope, catalog).Where(limit => IsPassed(limit, Total(shelf, limit, s => s.Volume.Liters), Total(shelf, limit, s => s.Weight.Kilograms)))];
    }

    private static bool IsPassed(StorageLimit limit, Volume volume, Mass weight) => IsPassed(limit, volume.Liters, weight.Kilograms);

    private static bool IsPassed(StorageLimit limit, double liters, double kilograms) =>
        IsOver(liters, limit.Liters) || IsOver(kilograms, limit.Kilograms);

    /// <summary>A quart jar is a quart, however the litres were rounded.</summary>
    private static bool IsOver(double amount, decimal? limit) => limit is { } most && amount > (double)most * (1 + 1e-9);

    private static double Total(
        IEnumerable<(int Category, Volume Volume, Mass Weight)> shelf, StorageLimit limit, Func<(int Category, Volume Volume, Mass Weight), double> amount) =>
        shelf.Where(s => limit.Categories.Contains(s.Category)).Sum(amount);

    private static IEnumerable<StorageLimit> Limits(RuleSet rules, StorageScope scope, ShopCatalog catalog) =>
        catalog.Storage.Rows.Where(limit => limit.OnlyUnder == rules && limit.Scope == scope);
}
