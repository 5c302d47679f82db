using JarLabel.Operations.Shops;

namespace JarLabel.Operations.Answers;

/// <summary>What is said of the shop's settings.</summary>
internal static class ShopAnswer
{
    private static string Aging(double? settled) => settled is { } times
        ? string.Create(CultureInfo.InvariantCulture, $"{times:0.##} times faster when 10 °C warmer")
        : string.Create(CultureInfo.InvariantCulture, $"not settled: {Core.Keeping.Aging.Low:0.0} to {Core.Keeping.Aging.High:0.0} times faster when 10 °C warmer, learned from tests");

    /// <summary>What a shop has settled, or now settled.</summary>
    internal static Answer Of(Workbench bench, ShopSettings settings, ShopSettings before, IReadOnlyList<Problem> redated) => Of(bench, "Settings of the shop", settings, before, redated);

    /// <summary>That a warmth of an earlier day ends where another was said of a later one.</summary>
    private static IEnumerable<Problem> Between(ShopSettings before, Shelf shelf) => before.Shelves.Where(was => was.Name == shelf.Name).SelectMany(was => shelf.Earlier
        .Where(now => was.Earlier.Any(then => then.Until == now.Until && !then.Temperature.DegreesCelsius.Equals(now.Temperature.DegreesCelsius)) || (now.Until == was.Since && was.Earlier.All(then => then.Until != now.Until)))
        .Select(now => KeepingProblems.WarmUntil(shelf.Name, now.Temperature, now.Until, shelf.Warmth.On(now.Until))));

    /// <summary>The same of a shop that was to be made and is there.</summary>
    internal static Answer There(Workbench bench) => Of(bench, "The shop is there already", bench.Settings, bench.Settings, []);

    private static Answer Of(Workbench bench, string title, ShopSettings settings, ShopSettings before, IReadOnlyList<Problem> redated)
    {
        Problem[] cautions = [.. redated, .. settings.Shelves.SelectMany(shelf => Between(before, shelf)), .. ForgetShelf.Cautions(before, settings)];
        return Answer.Of(
            new Screen().Title(title).Gap().Rows(
                ("folder", bench.Folder.Path),
                ("name", settings.Name ?? "none"),
                ("whom to ask", settings.Contact ?? "none"),
                ("poison center", PoisonCenter.Number(settings.Rules, settings.PoisonCenter) + (settings.PoisonCenter is null ? settings.Rules == RuleSet.Osha ? ", the US number" : ", emergencies; set your country's poison center" : "")),
                ("codes lead to", settings.BaseUrl?.Text ?? "no address: codes on labels are plain text that needs no network"),
                ("hazard rules", SettingWords.Of(settings.Rules)),
                ("amounts", SettingWords.Of(settings.Metric)),
                ("label stock", SettingWords.Stock(bench, settings)),
                ("label design", SettingWords.Design(bench, settings)),
                ("printers", settings.Printers.Count == 0 ? "none named" : string.Join(", ", settings.Printers.Select(p => $"{p.Name} ({p.Uri})"))),
                ("jars age", Aging(settings.AgingPerTenKelvin)),
                ("use-by", "the day until which " + settings.Learning.StillGood.ToString("0.## %", CultureInfo.InvariantCulture) + " of jars should still dry hard"),
                ("published times", "of keeping are off by a factor of up to " + settings.Learning.Spread.ToString("0.##", CultureInfo.InvariantCulture)),
                ("shelves", string.Join(", ", settings.Shelves.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Name} ({s.Temperature.DegreesCelsius:0.#} °C)"))))),
            tell => ShopJson.Of(bench.Folder, settings) with { Warnings = tell(cautions) },
            c => c.ShopJson,
            cautions);
    }
}
