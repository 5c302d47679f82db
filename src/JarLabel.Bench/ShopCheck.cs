using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Layout;
using JarLabel.Store.Printers;
using JarLabel.Store.Shops;

namespace JarLabel.Bench;

/// <summary>Reads all of a shop's own files at once, as the other commands would, and gathers every problem.</summary>
public static class ShopCheck
{
    /// <summary>How many files were read; or all that is wrong with them.</summary>
    public static Result<int> Of(string? shop, Func<string, string?> environment) => ShopFolder.Find(shop, environment).Then(folder =>
        ShopFiles.In(folder.Catalog).Then(catalog => ShopFiles.Layouts(folder).Then(layouts =>
        {
            Problem[] problems =
            [
                .. ShopSettingsFile.Read(folder).Problems,
                .. CalibrationFile.Read(folder).Problems,
                .. ShopCatalog.Load(catalog).Problems,
                .. new LayoutLibrary(layouts).Check(),
            ];
            return problems.Length > 0 ? Result<int>.Failed(problems) : catalog.Count + layouts.Count;
        })));
}
