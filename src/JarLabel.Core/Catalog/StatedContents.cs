using JarLabel.Core.Reading;

namespace JarLabel.Core.Catalog;

/// <summary>What a can says is in it, in the can's own measure.</summary>
/// <param name="Measure">How it says so.</param>
/// <param name="Strength">Percent of ethanol by volume, for <see cref="Measure.Strength"/>; else 0.</param>
/// <param name="Parts">The parts, for the other measures.</param>
public sealed record StatedContents(Measure Measure, decimal Strength, IReadOnlyList<Part> Parts)
{
    internal static StatedContents Read(FieldReader fields)
    {
        if (fields.Has("ethanolByVolume"))
        {
            return new(Measure.Strength, fields.Exact("ethanolByVolume", 0, 100), []);
        }

        var (measure, name) = fields.Has("byVolume") ? (Measure.Volume, "byVolume") : (Measure.Weight, "byWeight");
        var parts = fields.List(name, Part.Read);
        if (parts.Count == 0)
        {
            fields.Refuse(name, "There are no parts; write at least one, such as { \"of\": \"ethanol-95\", \"parts\": 100 }, "
                + "or \"ethanolByVolume\" with the strength instead.");
        }

        return new(measure, 0, parts);
    }
}
