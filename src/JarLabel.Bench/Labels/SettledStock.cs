using JarLabel.Core;
using JarLabel.Layout;
using JarLabel.Layout.Designs;
using JarLabel.Layout.Sheets;
using JarLabel.Store.Shops;

namespace JarLabel.Bench.Labels;

/// <summary>The sheet and the design that a shop settled on. Where one is not there any more, nobody typed it on this line, and the message
/// says where it comes from.</summary>
internal static class SettledStock
{
    internal static Result<Sheet> Sheet(LayoutLibrary library, string id) =>
        library.SheetIds.Contains(id) ? library.Sheet(id) : Gone(library.Sheet(id, "shop.json#/sheet"), "sheet");

    internal static Result<Design> Design(LayoutLibrary library, string id) =>
        library.DesignIds.Contains(id) ? library.Design(id) : Gone(library.Design(id, "shop.json#/design"), "design");

    /// <summary>Those that are not there.</summary>
    internal static IEnumerable<Problem> Problems(LayoutLibrary library, ShopSettings settings) =>
    [
        .. settings.Sheet is { } sheet && !library.SheetIds.Contains(sheet) ? Sheet(library, sheet).Problems : [],
        .. settings.Design is { } design && !library.DesignIds.Contains(design) ? Design(library, design).Problems : [],
    ];

    private static Result<T> Gone<T>(Result<T> unknown, string setting)
        where T : notnull => Result<T>.Failed([.. unknown.Problems.Select(problem => BenchProblems.OfSetting(problem, setting))]);
}
