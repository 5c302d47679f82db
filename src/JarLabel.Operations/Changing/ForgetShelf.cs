namespace JarLabel.Operations.Changing;

/// <summary>Takes a shelf out of the shop's settings, once nothing stands on it.</summary>
public static class ForgetShelf
{
    /// <summary>The settings without the shelf, or why it must stay.</summary>
    /// <param name="bench">The shop.</param>
    /// <param name="name">The shelf's name.</param>
    /// <param name="where">Where it was typed.</param>
    public static Result<ShopSettings> Do(Workbench bench, string name, string where)
    {
        var settings = bench.Settings;
        return settings.Shelf(name, where).Then(shelf => settings.Shelves.Count == 1 ? OperationProblems.LastShelf(shelf.Name)
            : LedgerAccess.Read(bench, view => ShelfContents.Bottles(view, shelf.Name).Then<(int[] Jars, int[] Bottles)>(bottles =>
                ([.. view.Standing(shelf.Name).Select(jar => jar.Number)], [.. bottles.Select(bottle => bottle.Number.Value)]))).Then<ShopSettings>(standing =>
                    standing is ([], []) ? settings with { Shelves = [.. settings.Shelves.Where(s => s.Name != shelf.Name)] } : OperationProblems.ShelfNotEmpty(
                        shelf.Name, standing.Jars.Length, standing.Bottles.Length, Moves(standing.Jars, standing.Bottles, settings.Shelves.First(s => s.Name != shelf.Name).Name))));
    }

    /// <summary>How the first of what stands there goes to another shelf.</summary>
    private static Remedy Moves(int[] jars, int[] bottles, string other) => jars is [var jar, ..]
        ? new("move", new InputName("jar", $"{jar}"), new InputName("shelf", other))
        : new("bottle move", new InputName("bottle", $"{bottles[0]}"), new InputName("shelf", other));

    /// <summary>What is forgotten with the shelves that the changed settings no longer have.</summary>
    public static IReadOnlyList<Problem> Cautions(ShopSettings before, ShopSettings after)
    {
        return [.. before.Shelves.Where(shelf => after.Shelves.All(s => s.Name != shelf.Name) && !IsUsual(shelf)).Select(shelf => OperationProblems.WarmthForgotten(shelf.Name))];
    }

    private static bool IsUsual(Shelf shelf) => shelf.Earlier.Count == 0 && shelf.Temperature.DegreesCelsius.Equals(Warmth.Reference.DegreesCelsius);
}
