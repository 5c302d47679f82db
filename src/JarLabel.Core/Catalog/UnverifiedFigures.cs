namespace JarLabel.Core.Catalog;

/// <summary>The figures that nobody has looked up in their source, each as one line: whose it is, what it says, and what was remembered
/// of where it stands. An answer names those that went into it.</summary>
public static class UnverifiedFigures
{
    /// <summary>Everything of that kind in a catalog.</summary>
    public static IReadOnlyList<string> All(ShopCatalog catalog)
    {
        return
        [
            .. catalog.Substances.Rows.SelectMany(Of),
            .. catalog.Solvents.Rows.SelectMany(Of),
            .. catalog.Grades.Rows.SelectMany(r => Row("grade", r)),
            .. catalog.Forms.Rows.SelectMany(r => Row("form", r)),
            .. catalog.Keeping.Rows.SelectMany(r => Row("keeping class", r)),
            .. catalog.Classes.Rows.SelectMany(Of),
            .. catalog.Phrases.Rows.SelectMany(r => Row("phrase", r)),
            .. catalog.Storage.Rows.SelectMany(r => Row("storage limit", r)),
            .. Of(RuleSet.Osha),
        ];
    }

    /// <summary>A solvent's composition.</summary>
    public static IEnumerable<string> Of(Solvent solvent) => Row("what is in", solvent);

    /// <summary>What a classification goes by: the substance's own row, its flash point, its classes and its toxicity.</summary>
    public static IEnumerable<string> OfHazards(Substance substance, IEnumerable<SubstanceHazard> counted)
    {
        return
        [
            .. Row("classification of", substance),
            .. Figure(substance, "flash point", substance.Flash),
            .. counted.SelectMany(h => Line(substance, $"class {h.Class}", h.Source)),
            .. substance.AcuteToxicity.SelectMany(t => Line(substance, $"toxicity {t.Route.Way()}, {t.Ate}", t.Source)),
        ];
    }

    /// <summary>What weights and volumes of a liquid go by; ethanol and water have their formula.</summary>
    public static IEnumerable<string> OfWeight(Composition liquid)
    {
        return liquid.Ingredients.Select(i => i.Substance)
            .Where(s => s.Id is not (Substance.EthanolId or Substance.WaterId))
            .SelectMany(s => Figure(s, "density", s.Density).Concat(Figure(s, "thermal expansion", s.Expansion)).Concat(Densities(s)));
    }

    /// <summary>What a sum about air goes by, besides the liquid's weight and the limit for breathing.</summary>
    public static IEnumerable<string> OfVapor(Substance substance)
    {
        return
        [
            .. Figure(substance, "molar mass", substance.MolarMass),
            .. Figure(substance, "lower explosive limit, %", substance.Lel),
            .. Figure(substance, "upper explosive limit, %", substance.Uel),
            .. Figure(substance, "vapor pressure", substance.VaporPressure),
            .. Line(substance, "vapor pressure over a range of temperatures", substance.Antoine?.Source),
        ];
    }

    /// <summary>What is not known of the rules themselves.</summary>
    public static IEnumerable<string> Of(RuleSet rules) => rules == RuleSet.Osha
        ? ["29 CFR 1910.1200 as amended in 2024: limits and label words of appendices A, B and C were read in the text of 2012; of the amended text only the section itself, the corrections of 9 October 2024 and quotations were read"]
        : [];

    /// <summary>What a hazard class says on a label, and the limits that lead to it.</summary>
    public static IEnumerable<string> Of(HazardClass hazard)
    {
        return
        [
            .. Row("hazard class", hazard),
            .. Line($"limits of hazard class {hazard.Id}", hazard.Limits?.Source),
            .. Line($"limits of hazard class {hazard.Id}", hazard.Flash?.Source),
            .. Line($"limits of hazard class {hazard.Id}", hazard.Acute?.Source),
        ];
    }

    /// <summary>A limit for breathing.</summary>
    public static IEnumerable<string> Of(Substance substance, ExposureLimit limit) =>
        Line(substance, $"{limit.Name}, {limit.Ppm} ppm", limit.Source);

    private static IEnumerable<string> Of(Substance substance) =>
    [
        .. OfHazards(substance, substance.Hazards),
        .. Figure(substance, "density", substance.Density),
        .. Figure(substance, "boiling point", substance.Boils),
        .. Figure(substance, "thermal expansion", substance.Expansion),
        .. Densities(substance),
        .. OfVapor(substance),
        .. substance.ExposureLimits.SelectMany(limit => Of(substance, limit)),
    ];

    private static IEnumerable<string> Figure(Substance substance, string what, Figure? figure) =>
        figure is null ? [] : Line(substance, $"{what} {figure.Value}", figure.Source);

    private static IEnumerable<string> Densities(Substance substance) =>
        substance.Densities.SelectMany(d => Line(substance, FormattableString.Invariant($"density at {d.Celsius} °C"), d.Source));

    private static IEnumerable<string> Row(string what, CatalogRow row) => Line($"{what} {row.Id}", row.Source);

    private static IEnumerable<string> Line(Substance substance, string what, string? source) => Line($"{substance.Name}: {what}", source);

    private static IEnumerable<string> Line(string what, string? source) => source is null || !Sources.IsMemory(source)
        ? []
        : [source.Length > Sources.Memory.Length ? $"{what} ({source[(Sources.Memory.Length + 1)..].Trim()})" : what];
}

/// <summary>How a row of data says where it comes from: the id of a published source before the first comma, or one of two words.</summary>
public static class Sources
{
    /// <summary>A fact of the trade that no single source owns.</summary>
    public const string Practice = "practice";

    /// <summary>Known, but not looked up: shown as unverified.</summary>
    public const string Memory = "memory";

    /// <summary>What stands before the first comma.</summary>
    public static string Id(string source)
    {
        var comma = source.IndexOf(',', StringComparison.Ordinal);
        return (comma < 0 ? source : source[..comma]).Trim();
    }

    /// <summary>True for a source that says <c>memory</c>.</summary>
    public static bool IsMemory(string source) => Id(source) == Memory;
}
