namespace JarLabel.Core.Catalog;

/// <summary>One chemical substance (or the resin) and what is published about it. A figure that is missing is unknown, except acute
/// toxicity: a route with no estimate is not toxic by that route, unless it stands in <see cref="UnknownToxicity"/>.</summary>
public sealed record Substance(string Id, string Name, string Source)
    : CatalogRow(Id, Source)
{
    /// <summary>Chemical Abstracts Service number.</summary>
    public string? Cas { get; init; }

    /// <summary>g/mol.</summary>
    public Figure? MolarMass { get; init; }

    /// <summary>kg/m³ at 20 °C.</summary>
    public Figure? Density { get; init; }

    /// <summary>Growth in volume per kelvin near 20 °C.</summary>
    public Figure? Expansion { get; init; }

    /// <summary>Published densities, from cold to warm, where there are more than one figure and its growth; none for most.</summary>
    public IReadOnlyList<DensityPoint> Densities { get; init; } = [];

    /// <summary>Its density with water; null for ethanol, which has its formula, and where nobody measured it.</summary>
    public WaterMixture? WithWater { get; init; }

    /// <summary>Boiling point, °C.</summary>
    public Figure? Boils { get; init; }

    /// <summary>Closed-cup flash point, °C.</summary>
    public Figure? Flash { get; init; }

    /// <summary>Lower explosive limit, percent by volume in air.</summary>
    public Figure? Lel { get; init; }

    /// <summary>Upper explosive limit, percent by volume in air.</summary>
    public Figure? Uel { get; init; }

    /// <summary>Vapour pressure at 20 °C, kPa.</summary>
    public Figure? VaporPressure { get; init; }

    /// <summary>Vapour pressure over a range of temperatures.</summary>
    public Antoine? Antoine { get; init; }

    /// <summary>Limits for breathing it.</summary>
    public IReadOnlyList<ExposureLimit> ExposureLimits { get; init; } = [];

    /// <summary>Hazards other than fire and acute toxicity, which are computed.</summary>
    public IReadOnlyList<SubstanceHazard> Hazards { get; init; } = [];

    /// <summary>Acute toxicity by route; a route left out is not toxic.</summary>
    public IReadOnlyList<AcuteToxicity> AcuteToxicity { get; init; } = [];

    /// <summary>The routes by which nobody knows how toxic it is: it then counts as an unknown share.</summary>
    public IReadOnlyList<Route> UnknownToxicity { get; init; } = [];

    /// <summary>True when nobody knows anything about it.</summary>
    public bool Undeclared => UnknownToxicity.Count == 3 && Flash is null;

    /// <summary>Water's id.</summary>
    public const string WaterId = "water";

    /// <summary>Isopropanol's id.</summary>
    public const string IsopropanolId = "propan-2-ol";

    /// <summary>Ethanol's id.</summary>
    public const string EthanolId = "ethanol";

    /// <summary>Methanol's id.</summary>
    public const string MethanolId = "methanol";

    /// <summary>The id of the dissolved resin.</summary>
    public const string ResinId = "shellac-resin";

    internal static Substance Read(FieldReader fields) => new(fields.Text("id"), fields.Text("name"), fields.Text("source"))
    {
        Aliases = fields.OptionalTexts("aliases"),
        Cas = fields.OptionalText("cas"),
        MolarMass = fields.OptionalFigure("gramsPerMole", 1, 10_000),
        Density = fields.OptionalFigure("kilogramsPerCubicMeterAt20C", 100, 20_000),
        Expansion = fields.OptionalFigure("expansionPerKelvin", 0, 0.01m),
        Densities = ReadDensities(fields),
        WithWater = fields.OptionalMember("withWater", WaterMixture.Read),
        Boils = fields.OptionalFigure("boilsCelsius", -100, 1000),
        Flash = fields.OptionalFigure("flashCelsius", -100, 1000),
        Lel = fields.OptionalFigure("lelPercent", 0.01m, 100),
        Uel = fields.OptionalFigure("uelPercent", 0.01m, 100),
        VaporPressure = fields.OptionalFigure("vaporPressureKilopascalsAt20C", 0, 200),
        Antoine = fields.OptionalMember("antoine", Catalog.Antoine.Read),
        ExposureLimits = fields.OptionalList("exposureLimits", ExposureLimit.Read),
        Hazards = fields.List("hazards", SubstanceHazard.Read),
        AcuteToxicity = fields.List("acuteToxicity", Catalog.AcuteToxicity.Read),
        UnknownToxicity = fields.OptionalList("unknownToxicity", r => r.Choice("route", RouteWords.Choices)),
    };

    private static IReadOnlyList<DensityPoint> ReadDensities(FieldReader fields)
    {
        var points = fields.OptionalList("densities", DensityPoint.Read);
        if (fields.Has("densities") && (points.Count < 2 || points.Zip(points.Skip(1)).Any(two => two.First.Celsius >= two.Second.Celsius)))
        {
            fields.Refuse("densities", "There must be two or more, from cold to warm, one of them at 20 °C as in \"kilogramsPerCubicMeterAt20C\".");
        }

        return points;
    }
}

/// <summary>The acute toxicity estimate of a substance by one route.</summary>
/// <param name="Route">How it gets in.</param>
/// <param name="Ate">mg/kg for oral and dermal, mg/L for vapour: a measured value or the converted point estimate of its category.</param>
/// <param name="Source">Where it was printed.</param>
public sealed record AcuteToxicity(Route Route, decimal Ate, string Source)
{
    internal static AcuteToxicity Read(FieldReader fields) =>
        new(fields.Choice("route", RouteWords.Choices), fields.Exact("ate", 0.001m, 1_000_000), fields.Text("source"));
}

/// <summary>How the routes are written in data files, and in sentences.</summary>
public static class RouteWords
{
    internal static IReadOnlyDictionary<string, Route> Choices { get; } = new Dictionary<string, Route>(StringComparer.Ordinal)
    {
        ["oral"] = Route.Oral,
        ["dermal"] = Route.Dermal,
        ["vapor"] = Route.Vapor,
    };

    /// <summary>As part of a sentence: <c>by mouth</c>.</summary>
    public static string Way(this Route route) => route switch
    {
        Route.Oral => "by mouth",
        Route.Dermal => "through the skin",
        _ => "by breathing",
    };

    /// <summary>The unit of its estimates: mg/kg, or mg/L for vapour.</summary>
    public static string Unit(this Route route) => route == Route.Vapor ? "mg/L" : "mg/kg";
}

/// <summary>How the rule sets are written in data files and on the command line.</summary>
public static class RuleSetWords
{
    /// <summary>Word to rule set.</summary>
    public static IReadOnlyDictionary<string, RuleSet> Choices { get; } =
        new Dictionary<string, RuleSet>(StringComparer.OrdinalIgnoreCase) { ["osha"] = RuleSet.Osha, ["clp"] = RuleSet.Clp };

    /// <summary>The word for a rule set: <c>osha</c> or <c>clp</c>.</summary>
    public static string Word(this RuleSet rules) => rules == RuleSet.Osha ? "osha" : "clp";

    /// <summary>The optional member <c>rules</c>: the one rule set a row is for; left out, the row is for both.</summary>
    internal static RuleSet? OnlyUnder(FieldReader fields) => fields.Has("rules") ? fields.Choice("rules", Choices) : null;
}

/// <summary>One classification of a substance, and from what share it counts in a mixture.</summary>
/// <param name="Class">Id of the hazard class.</param>
/// <param name="OnlyUnder">The rule set it holds under; null for both.</param>
/// <param name="AtLeast">Its own concentration limit, percent by weight, where it has one; else the class's general limit holds.</param>
/// <param name="SelfClassified">True where suppliers commonly say so although no list does: a setting can turn it off.</param>
/// <param name="Organs">The organs that are harmed, for target-organ classes.</param>
/// <param name="Source">Where it was printed.</param>
public sealed record SubstanceHazard(
    string Class, RuleSet? OnlyUnder, decimal? AtLeast, bool SelfClassified, IReadOnlyList<string> Organs, string Source)
{
    internal static SubstanceHazard Read(FieldReader fields) => new(
        fields.Text("class"),
        RuleSetWords.OnlyUnder(fields),
        fields.Has("atLeastPercent") ? fields.Exact("atLeastPercent", 0.001m, 100) : null,
        fields.OptionalFlag("selfClassified"),
        fields.OptionalTexts("organs"),
        fields.Text("source"));
}
