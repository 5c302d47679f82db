using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>What a can says is in it, in the can's own measure.</summary>
/// <param name="Measure">How it says so.</param>
/// <param name="Parts">The parts; for <see cref="Measure.Strength"/> the one alcohol with its percent.</param>
public sealed record StatedContents(Measure Measure, IReadOnlyList<Part> Parts)
{
    private static readonly (string Name, string Alcohol)[] Strengths =
        [("ethanolByVolume", Substance.EthanolId), ("isopropanolByVolume", Substance.IsopropanolId)];

    internal static StatedContents Read(FieldReader fields)
    {
        if (Strengths.FirstOrDefault(s => fields.Has(s.Name)) is { Name: { } strength } stated)
        {
            return new(Measure.Strength, [new(stated.Alcohol, fields.Exact(strength, 0, 100))]);
        }

        var (measure, name) = fields.Has("byVolume") ? (Measure.Volume, "byVolume") : (Measure.Weight, "byWeight");
        var parts = fields.List(name, Part.Read);
        if (parts.Count == 0)
        {
            fields.Refuse(name, "There are no parts; write at least one, such as { \"of\": \"ethanol-95\", \"parts\": 100 }, "
                + "or \"ethanolByVolume\" or \"isopropanolByVolume\" with the strength instead.");
        }

        return new(measure, parts);
    }
}
