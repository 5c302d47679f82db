using System.Text.RegularExpressions;

namespace JarLabel.Operations.Shops;

/// <summary>Changes one of a shop's settings from typed words; "none" takes any of them back.</summary>
internal static partial class ShopSetting
{
    /// <summary>What takes a setting back.</summary>
    internal const string None = "none";

    private const string Where = "value";

    private static readonly ShopSettings Usual = new();

    private static readonly Dictionary<string, Func<Workbench, string, Result<ShopSettings>>> Changes = new(StringComparer.OrdinalIgnoreCase)
    {
        ["name"] = Setting((s, name) => s with { Name = name }, ValueReader.PrintedUpTo(60), s => s with { Name = null }),
        ["contact"] = Setting((s, contact) => s with { Contact = contact }, ValueReader.PrintedUpTo(60), s => s with { Contact = null }),
        ["poison-center"] = Setting((s, number) => s with { PoisonCenter = number }, ValueReader.Telephone, s => s with { PoisonCenter = null }),
        ["base-url"] = Setting((s, address) => s with { BaseUrl = address }, ShopAddress.Read, s => s with { BaseUrl = null }),
        ["rules"] = Setting((s, rules) => s with { Rules = rules }, ValueReader.Rules, s => s with { Rules = Usual.Rules }),
        ["units"] = Setting((s, metric) => s with { Metric = metric }, ValueReader.Metric, s => s with { Metric = Usual.Metric }),
        ["sheet"] = Setting((s, sheet) => s with { Sheet = sheet }, ShopWords.Sheet, s => s with { Sheet = null }),
        ["design"] = Setting((s, design) => s with { Design = design }, ShopWords.Design, s => s with { Design = null }),
        ["aging"] = Setting((s, times) => s with { AgingPerTenKelvin = times }, ValueReader.Number(KeepingSettings.LowestQ10, KeepingSettings.HighestQ10, Aging.Convention), s => s with { AgingPerTenKelvin = null }),
        ["still-good"] = Setting(
            (s, percent) => s with { Learning = s.Learning with { StillGood = percent / 100 } },
            ValueReader.Percent(100 * LearningSettings.LeastStillGood, 100 * LearningSettings.MostStillGood, 100 * LearningSettings.BaseStillGood),
            s => s with { Learning = s.Learning with { StillGood = Usual.Learning.StillGood } }),
        ["keeping-spread"] = Setting(
            (s, factor) => s with { Learning = s.Learning with { Spread = factor } },
            ValueReader.Number(LearningSettings.LeastSpread, LearningSettings.MostSpread, LearningSettings.Usual.Spread),
            s => s with { Learning = s.Learning with { Spread = Usual.Learning.Spread } }),
        ["printer"] = (bench, text) => Printer(bench.Settings, text),
        ["shelf"] = Shelf,
    };

    internal static IEnumerable<string> Names => Changes.Keys;

    /// <summary>What people call each, by its name.</summary>
    internal static IEnumerable<(string Name, string Words)> Words => Names.Select(name => (name, name switch
    {
        "name" => "the shop's name, on every label",
        "contact" => "whom to ask, on every label",
        "poison-center" => "telephone of the poison centre",
        "base-url" => "address in the codes on labels",
        "rules" => "whose rules: clp or osha",
        "units" => "which amounts come first: metric or us",
        "sheet" => "label stock to print on",
        "design" => "label design",
        "aging" => "times faster a jar ages when 10 °C warmer",
        "still-good" => "jars still good on their use-by, %",
        "keeping-spread" => "how far published keeping times may be off, times",
        "printer" => "a printer: name and address",
        "shelf" => "a shelf: name and how warm it is",
        _ => name,
    }));

    internal static Result<ShopSettings> Change(Workbench bench, string name, string value) =>
        Changes.TryGetValue(name.Replace("centre", "center", StringComparison.OrdinalIgnoreCase), out var change) ? change(bench, value.Trim()) : TypingProblems.NotAChoice(name, "setting", Names);

    private static Func<Workbench, string, Result<ShopSettings>> Setting<T>(
        Func<ShopSettings, T, ShopSettings> put, Func<string, string, Result<T>> read, Func<ShopSettings, ShopSettings> takeBack)
        where T : notnull => Setting(put, (_, text, where) => read(text, where), takeBack);

    private static Func<Workbench, string, Result<ShopSettings>> Setting<T>(
        Func<ShopSettings, T, ShopSettings> put, Func<Workbench, string, string, Result<T>> read, Func<ShopSettings, ShopSettings> takeBack)
        where T : notnull => (bench, text) => text == None
            ? takeBack(bench.Settings)
            : read(bench, text, Where).Then<ShopSettings>(value => put(bench.Settings, value));

    /// <summary><c>name=ipp://192.168.1.30/ipp/print</c> names a printer; <c>name=none</c> takes the name away.</summary>
    private static Result<ShopSettings> Printer(ShopSettings settings, string text)
    {
        if (text.Split('=', 2) is not [var name, var uri])
        {
            return TypingProblems.NotAPrinter(text, Where);
        }

        return ValueReader.TextUpTo(40)(name, Where).Then(known =>
        {
            NamedPrinter[] others = [.. settings.Printers.Where(p => p.Name != known)];
            return uri == None
                ? settings with { Printers = others }
                : PrinterAddress.Read(uri, Where).Then<ShopSettings>(_ => settings with { Printers = [.. others, new NamedPrinter(known, uri)] });
        });
    }

    [GeneratedRegex(@"^(?:(?<name>[^=]*)=(?<temperature>.*)|(?<name>[^=]*?\S)\s+(?<temperature>none|[-+]?[0-9][0-9.,]*\s*°?\s*\p{L}+))\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex ShelfText();

    /// <summary>The name and the temperature in a shelf's line; null for a line that is none.</summary>
    internal static (string Name, string Temperature)? ShelfIn(string text) =>
        ShelfText().Match(text) is { Success: true } match ? (match.Groups["name"].Value.Trim(), match.Groups["temperature"].Value.Trim()) : null;

    /// <summary><c>name=18 C</c>, or <c>name 18 C</c>, adds a shelf or changes its temperature from that day on; <c>name=none</c> takes an empty one away.</summary>
    private static Result<ShopSettings> Shelf(Workbench bench, string text)
    {
        if (ShelfText().Match(text) is not { Success: true } match)
        {
            return TypingProblems.NotAShelf(text, Where);
        }

        var (name, temperature) = (match.Groups["name"].Value, match.Groups["temperature"].Value);

        // A card's history names shelves; one that is there already keeps its name.
        var read = bench.Settings.Shelves.Any(shelf => shelf.Name == name.Trim()) ? ValueReader.TextUpTo(40) : ValueReader.PrintedUpTo(40);
        return read(name, Where).Then(known => temperature.Trim() == None
            ? ForgetShelf.Do(bench, known, Where)
            : TemperatureText.Read(temperature, Where).Then<ShopSettings>(warm => Warmed(bench, known, warm)));
    }

    /// <summary>A shelf that is there keeps its place: new jars go on the first.</summary>
    private static ShopSettings Warmed(Workbench bench, string name, UnitsNet.Temperature warm)
    {
        var (shelves, day) = (bench.Settings.Shelves, DateOnly.FromDateTime(bench.Now));
        return bench.Settings with
        {
            Shelves = shelves.Any(shelf => shelf.Name == name)
                ? [.. shelves.Select(shelf => shelf.Name == name ? shelf.From(day, warm) : shelf)]
                : [.. shelves, new Shelf(name, warm) { Since = day }],
        };
    }
}
