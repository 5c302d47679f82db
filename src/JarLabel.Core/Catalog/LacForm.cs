using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>The form dry shellac is bought or brought in, and how long it takes to dissolve.</summary>
/// <param name="Id"><c>flake</c>, <c>button</c>, <c>seed</c>, <c>ground</c>.</param>
/// <param name="Name">As printed.</param>
/// <param name="HoursAt20C">Hours until nothing is left undissolved at 20 °C, swirled now and then.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record LacForm(string Id, string Name, decimal HoursAt20C, string Source)
    : CatalogRow(Id, Source)
{
    internal static LacForm Read(FieldReader fields) =>
        new(fields.Text("id"), fields.Text("name"), fields.Exact("hoursAt20C", 0.01m, 1000), fields.Text("source"));
}
