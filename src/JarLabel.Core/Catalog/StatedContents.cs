namespace JarLabel.Core.Catalog;

/// <summary>What a can says is in it, in the can's own measure.</summary>
/// <param name="Measure">How it says so.</param>
/// <param name="Parts">The parts; for <see cref="Measure.Strength"/> the one alcohol with its percent.</param>
public sealed record StatedContents(Measure Measure, IReadOnlyList<Part> Parts)
{
    private static readonly (string Name, string Alcohol)[] Strengths =
        [("ethanolByVolume", Substance.EthanolId), ("isopropanolByVolume", Substance.IsopropanolId)];

    /// <summary>True where it gives ranges, as data sheets do; all its parts are then percent.</summary>
    public bool InRanges => Parts.Any(p => p.IsRange);

    /// <summary>Parts, each range narrowed to what the others leave of a hundred.</summary>
    internal static StatedContents Of(Measure measure, IReadOnlyList<Part> parts) => new(measure, parts.Any(p => p.IsRange) ? [.. parts.Select(p => Narrowed(p, parts))] : parts);

    private static Part Narrowed(Part part, IReadOnlyList<Part> all)
    {
        var (least, most) = (all.Sum(p => p.Least) - part.Least, all.Sum(p => p.Most) - part.Most);
        return part with { Least = Math.Max(part.Least, 100 - most), Most = Math.Min(part.Most, 100 - least) };
    }

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

        if (!parts.Any(p => p.IsRange))
        {
            return new(measure, parts);
        }

        RefuseRanges(fields, name, parts);
        return Of(measure, parts);
    }

    private static void RefuseRanges(FieldReader fields, string name, IReadOnlyList<Part> parts)
    {
        if (!RangeCorners.Fit(parts))
        {
            fields.Refuse(name, $"The ranges add up to {parts.Sum(p => p.Least):0.####} to {parts.Sum(p => p.Most):0.####} percent, and 100 must lie between; "
                + "what the sheet does not name is { \"of\": \"water\", \"rest\": true } or { \"of\": \"unknown\", \"rest\": true }.");
        }

        if (parts.Count(p => p.IsRange) > RangeCorners.MostRanges)
        {
            fields.Refuse(name, $"There are {parts.Count(p => p.IsRange)} ranges; at most {RangeCorners.MostRanges} can be worked out together. Give the narrowest as one figure, their upper end.");
        }
    }
}
