using JarLabel.Core;
using JarLabel.Core.Keeping;
using JarLabel.Core.Quantities;
using JarLabel.Printing.Transport;
using JarLabel.Store.Shops;

namespace JarLabel.Cli.Typing;

/// <summary>Changes one of a shop's settings from typed words.</summary>
internal static class ShopSetting
{
    private const string None = "none", ShelfName = "shelf";

    private static readonly Dictionary<string, Func<ShopSettings, string, Result<ShopSettings>>> Changes = new(StringComparer.OrdinalIgnoreCase)
    {
        ["name"] = (s, text) => Text(text, 60).Then<ShopSettings>(t => s with { Name = t.Value }),
        ["contact"] = (s, text) => Text(text, 60).Then<ShopSettings>(t => s with { Contact = t.Value }),
        ["base-url"] = (s, text) => text == None ? s with { BaseUrl = null } : ShopAddress.Read(text, "VALUE").Then<ShopSettings>(a => s with { BaseUrl = a }),
        ["rules"] = (s, text) => Words.Rules(text, "VALUE").Then<ShopSettings>(r => s with { Rules = r }),
        ["units"] = (s, text) => Words.Metric(text, "VALUE").Then<ShopSettings>(m => s with { Metric = m }),
        ["sheet"] = (s, text) => Text(text, 80).Then<ShopSettings>(t => s with { Sheet = t.Value }),
        ["design"] = (s, text) => Text(text, 80).Then<ShopSettings>(t => s with { Design = t.Value }),
        ["aging"] = (s, text) => Words.Number(1.5, 3)(text, "VALUE").Then<ShopSettings>(q => s with { AgingPerTenKelvin = q }),
        ["still-good"] = (s, text) => Words.Number(100 * LearningSettings.LeastStillGood, 100 * LearningSettings.MostStillGood)(text, "VALUE").Then<ShopSettings>(p => s with { Learning = s.Learning with { StillGood = p / 100 } }),
        ["keeping-spread"] = (s, text) => Words.Number(LearningSettings.LeastSpread, LearningSettings.MostSpread)(text, "VALUE").Then<ShopSettings>(f => s with { Learning = s.Learning with { Spread = f } }),
        ["printer"] = Printer,
    };

    internal static IEnumerable<string> Names => Changes.Keys.Append(ShelfName);

    internal static Result<ShopSettings> Change(ShopSettings settings, string name, string value, DateOnly day) =>
        name.Equals(ShelfName, StringComparison.OrdinalIgnoreCase) ? Shelf(settings, value.Trim(), day)
        : Changes.TryGetValue(name, out var change) ? change(settings, value.Trim())
        : TypingProblems.NotAChoice(name, "SETTING", Names);

    private static Result<(string? Value, bool Given)> Text(string text, int longest) => text == None
        ? (null, true)
        : Words.TextUpTo(longest)(text, "VALUE").Then<(string?, bool)>(t => (t, true));

    /// <summary><c>name=ipp://192.168.1.30/ipp/print</c> names a printer; <c>name=none</c> takes the name away.</summary>
    private static Result<ShopSettings> Printer(ShopSettings settings, string text)
    {
        if (text.Split('=', 2) is not [var name, var uri])
        {
            return TypingProblems.NotAPrinter(text, "VALUE");
        }

        return Words.TextUpTo(40)(name, "VALUE").Then(known =>
        {
            NamedPrinter[] others = [.. settings.Printers.Where(p => p.Name != known)];
            return uri == None
                ? settings with { Printers = others }
                : PrinterAddress.Read(uri, "VALUE").Then<ShopSettings>(_ => settings with { Printers = [.. others, new NamedPrinter(known, uri)] });
        });
    }

    /// <summary><c>name=18 C</c> adds a shelf or changes its temperature from that day on.</summary>
    private static Result<ShopSettings> Shelf(ShopSettings settings, string text, DateOnly day)
    {
        if (text.Split('=', 2) is not [var name, var temperature])
        {
            return TypingProblems.NotAShelf(text, "VALUE");
        }

        return Words.TextUpTo(40)(name, "VALUE").Then(known => TemperatureText.Read(temperature, "VALUE").Then<ShopSettings>(t =>
            settings with { Shelves = [.. settings.Shelves.Where(s => s.Name != known), settings.Shelves.FirstOrDefault(s => s.Name == known)?.From(day, t) ?? new Shelf(known, t)] }));
    }
}
