namespace JarLabel.Operations;

/// <summary>Reads all of a shop's own files at once, as the other commands would, and gathers every problem.</summary>
public static class ShopCheck
{
    /// <summary>How many files were read and what should be known of them; or all that is wrong with them.</summary>
    public static Result<CheckedFiles> Of(ShopFolder shop) => shop.DemandThere().Then(folder =>
        ShopFiles.In(folder.Catalog).Then(catalog => ShopFiles.Layouts(folder).Then(layouts => ShopFiles.Astray(folder).Then(astray =>
        {
            var library = new LayoutLibrary(layouts);
            var settings = ShopSettingsFile.Read(folder);
            Problem[] problems =
            [
                .. settings.Problems,
                .. settings.TryGet(out var settled, out _) ? SettledStock.Problems(library, settled) : [],
                .. CalibrationFile.Read(folder).Problems,
                .. ShopCatalog.Load(catalog).Problems,
                .. library.Check(),
                .. astray.Select(OperationProblems.FileAstray),
            ];
            return problems.Length > 0 ? Result<CheckedFiles>.Failed(problems) : new CheckedFiles(catalog.Count + layouts.Count, [.. layouts.Where(file => file.IsSheet).SelectMany(file => Margins(library, file))]);
        }))));

    private static IEnumerable<Problem> Margins(LayoutLibrary library, LayoutFile file) => MarginCheck.Usual(file.Path, library.Sheet(file.Id).Require());
}

/// <summary>A shop's own files, read without a fault.</summary>
/// <param name="Count">How many there are.</param>
/// <param name="Cautions">What should be known of them all the same.</param>
public sealed record CheckedFiles(int Count, IReadOnlyList<Problem> Cautions);
