namespace JarLabel.Tests.Hazards.Limits;

/// <summary>Every row, and the shop in which its made-up ingredients stand.</summary>
internal static partial class LimitTable
{
    /// <summary>Statements that two categories share.</summary>
    private static readonly string[] Shared = ["H300", "H310", "H330", "H340", "H350", "H360"];

    internal static IReadOnlyList<LimitRow> Rows { get; } =
    [
        .. LimitRow.Read(FireRows.Table), .. LimitRow.Read(PoisonRows.Table), .. LimitRow.Read(IrritantRows.Table),
        .. LimitRow.Read(LastingRows.Table), .. LimitRow.Read(CanRows.Table),
    ];

    /// <summary>Our catalog with the made-up ingredients, and with other rows in the place of some hazard classes.</summary>
    /// <param name="classes">Those rows, as a catalog file has them.</param>
    internal static ShopCatalog Shop(string classes = "[]") => ShopCatalog.Load(
        [("substances.json", Encoding.UTF8.GetBytes(MadeUp())), ("classes.json", Encoding.UTF8.GetBytes(classes))]).Require();

    /// <summary>What the program says of a row's contents.</summary>
    internal static string Answer(LimitRow row, RuleSet rules, ShopCatalog shop)
    {
        var found = Assess(row.Contents, rules, shop);
        return string.Join(' ', found.Statements.Select(statement => Shared.Contains(statement) ? $"{statement}/{Category(found, statement)}" : statement));
    }

    /// <summary>Contents of made-up and other ingredients, water being what is missing.</summary>
    internal static HazardAssessment Assess(string contents, RuleSet rules, ShopCatalog shop)
    {
        var shares = contents.Split(',').Select(s => s.Split('=')).Select(s => new Ingredient(
            shop.Substances.Named(s[0]).Require(), decimal.Parse(s[1], CultureInfo.InvariantCulture))).ToArray();
        var water = new Ingredient(shop.Substances.Named(Substance.WaterId).Require(), 100 - shares.Sum(s => s.Percent));
        return MixtureClassifier.Classify(Composition.FromPercentages([.. shares, water]), rules, shop);
    }

    private static string Category(HazardAssessment found, string statement) => found.Hazards.Single(h => h.Class.Statement == statement).Class.Code.Split(' ')[^1];

    private static string MadeUp()
    {
        var ids = Rows.SelectMany(r => r.Contents.Split(',')).Select(s => s.Split('=')[0]).Distinct();
        return $"[{string.Join(",", ids.Select(Row).OfType<string>())}]";
    }

    private static string? Row(string id) =>
        Estimate().Match(id) is { Success: true } toxic ? Made(id, "", $$"""{ "route": "{{toxic.Groups[1].Value}}", "ate": {{toxic.Groups[2].Value}}, "source": "practice" }""")
        : Liquid().Match(id) is { Success: true } liquid ? Made(id, "", "", $$"""
            "flashCelsius": { "value": {{liquid.Groups[1].Value}}, "source": "practice" }, "boilsCelsius": { "value": {{liquid.Groups[2].Value}}, "source": "practice" },
            """)
        : Classed().Match(id) is { Success: true } classed ? Made(id, $$"""{ "class": "{{classed.Groups[1].Value}}", {{Organs(classed.Groups[1].Value)}} "source": "practice" }""", "")
        : null;

    private static string Organs(string hazardClass) =>
        hazardClass is "stot-se-1" or "stot-se-2" or "stot-re-1" or "stot-re-2" ? "\"organs\": [\"liver\"]," : "";

    private static string Made(string id, string hazard, string toxicity, string figures = "") => $$"""
        { "id": "{{id}}", "name": "{{id}}", {{figures}} "hazards": [{{hazard}}], "acuteToxicity": [{{toxicity}}], "source": "practice" }
        """;

    [GeneratedRegex("^(oral|dermal|vapor)-([0-9.]+)$")]
    private static partial Regex Estimate();

    [GeneratedRegex("^flash-([0-9]+)-boils-([0-9]+)(?:-too)?$")]
    private static partial Regex Liquid();

    [GeneratedRegex("^is-(.+?)(?:-too)?$")]
    private static partial Regex Classed();
}
