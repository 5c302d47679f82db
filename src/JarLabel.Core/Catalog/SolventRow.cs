namespace JarLabel.Core.Catalog;

/// <summary>A solvent as its data file states it, before it is reckoned into weights.</summary>
internal sealed record SolventRow(string Id, string Name, string ShortName, IReadOnlyList<StatedContents> Contains, string? Note, string Source)
    : CatalogRow(Id, Source)
{
    internal static SolventRow Read(FieldReader fields)
    {
        var contains = fields.List("contains", StatedContents.Read);
        if (contains.Count == 0 && fields.Has("contains"))
        {
            fields.Refuse("contains", "There is nothing in it; write one composition, or several where it may be any of them.");
        }

        return new(
            fields.Text("id"), fields.Text("name"), fields.Text("shortName"), contains, fields.OptionalText("note"), fields.Text("source"))
        {
            Aliases = fields.OptionalTexts("aliases"),
        };
    }
}
