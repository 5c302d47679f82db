namespace JarLabel.Operations.Shops;

/// <summary>What people call what a shop has settled.</summary>
internal static class SettingWords
{
    /// <summary>Whose rules, by where they hold.</summary>
    internal static IReadOnlyList<(string Value, string Words)> Rules { get; } = [("clp", "European Union: CLP"), ("osha", "United States: OSHA")];

    /// <summary>Which amounts come first.</summary>
    internal static IReadOnlyList<(string Value, string Words)> Units { get; } = [("metric", "Metric: mL and g"), ("us", "US: fl oz and oz")];

    /// <summary>The word for a set of rules.</summary>
    internal static string Of(RuleSet rules) => Named(Rules, rules.ToString().ToLowerInvariant());

    /// <summary>The word for which amounts come first.</summary>
    internal static string Of(bool metric) => Named(Units, metric ? "metric" : "us");

    /// <summary>The label stock by its name; its id where it cannot be read.</summary>
    internal static string Stock(Workbench bench, ShopSettings settings) => settings.Sheet is { } id
        ? LabelComposer.Open(bench).Then(composer => composer.Stock(id)).TryGet(out var sheet, out _) ? sheet.Title : id
        : LabelComposer.Open(bench.With(settings)).Then(composer => composer.UsualStock()).TryGet(out var usual, out _) ? $"the usual one: {usual.Title}" : "the usual one";

    /// <summary>The label design by its name; its id where it cannot be read.</summary>
    internal static string Design(Workbench bench, ShopSettings settings) => settings.Design is not { } id ? "the usual one for the stock"
        : LabelComposer.Open(bench).Then(composer => composer.Design(id, "design")).TryGet(out var design, out _) ? design.Title
        : id;

    /// <summary>How warm it is, in the measure that comes first.</summary>
    internal static string Warmth(Temperature warm, bool metric) => metric
        ? string.Create(CultureInfo.InvariantCulture, $"{warm.DegreesCelsius:0.#} °C")
        : string.Create(CultureInfo.InvariantCulture, $"{warm.DegreesFahrenheit:0.#} °F");

    private static string Named(IReadOnlyList<(string Value, string Words)> choices, string value) => choices.First(choice => choice.Value == value).Words;
}
