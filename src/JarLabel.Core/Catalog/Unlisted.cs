namespace JarLabel.Core.Catalog;

/// <summary>Careful stand-ins for what a ledger names and the catalog no longer has: a shop took its row away, or the ledger came from
/// another shop.</summary>
internal static class Unlisted
{
    internal static Solvent Solvent(string id) => ShopCatalog.Ours.Solvents.Require("denatured-unknown") with
    {
        Id = id,
        Name = Name(id),
        ShortName = Name(id),
        Note = "The catalog does not know it, so everything answers for the worst that is sold.",
    };

    internal static Grade Grade(string id) => ShopCatalog.Ours.Grades.Require("bleached") with
    {
        Id = id,
        Name = Name(id),
        Note = "The catalog does not know it, so it is taken for the one that keeps the shortest, with its wax.",
    };

    private static string Name(string id) => $"{id}, unlisted";
}
