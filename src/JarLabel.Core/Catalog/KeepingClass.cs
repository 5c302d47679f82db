namespace JarLabel.Core.Catalog;

/// <summary>How long a kind of shellac keeps. Estimates: published claims differ widely.</summary>
/// <param name="Id">Name of the class.</param>
/// <param name="MonthsAt20C">Months a dissolved jar keeps at 20 °C.</param>
/// <param name="FlakeMonths">Months the dry shellac keeps cool and dry before it shortens the life of a jar.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record KeepingClass(string Id, decimal MonthsAt20C, decimal FlakeMonths, string Source)
    : CatalogRow(Id, Source)
{
    /// <summary>The kinds of shellac in it, as people call them.</summary>
    public string Name { get => field ?? Id; private init; }

    internal static KeepingClass Read(FieldReader fields) =>
        new(fields.Text("id"), fields.Exact("monthsAt20C", 0.1m, 240), fields.Exact("flakeMonths", 0.1m, 600), fields.Text("source")) { Name = fields.OptionalText("name")! };
}
