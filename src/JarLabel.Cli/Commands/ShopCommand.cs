using System.CommandLine;
using System.Globalization;
using JarLabel.Bench.Changing;
using JarLabel.Cli.Typing;
using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Hazards;
using JarLabel.Store.Shops;

namespace JarLabel.Cli.Commands;

/// <summary><c>shop</c>: makes a shop folder, shows its settings, changes one.</summary>
internal static class ShopCommand
{
    private static readonly Argument<string?> Setting = new("SETTING") { Description = $"One of: {string.Join(", ", ShopSetting.Names)}." };
    private static readonly Argument<string?> Value = new("VALUE") { Description = "Its value; \"none\" takes it back, NAME=none a shelf or a printer." };

    internal static Command Create(Runner runner) => new("shop", "The shop folder and its settings.")
    {
        runner.Runs(new Command("init", "Make the shop folder with a settings file to edit."), Init),
        runner.Runs(new Command("show", "The settings in force."), (_, session) => Show(session, session.Workbench.Settings, session.Workbench.Settings)),
        runner.Runs(new Command("set", "Change one setting: shop set base-url http://192.168.1.20:5080") { Setting, Value }, Set),
    };

    private static Result<Answer> Init(Typed typed, Session session) => Keep(session, settings => settings);

    private static Result<Answer> Set(Typed typed, Session session)
    {
        var (name, value) = (typed.Text(Setting)!, typed.Text(Value)!);
        return Keep(session, settings => ShopSetting.Change(session.Workbench.With(settings), name, value));
    }

    /// <summary>Changes what is settled at this moment, which may be other than when the command began.</summary>
    private static Result<Answer> Keep(Session session, Func<ShopSettings, Result<ShopSettings>> change)
    {
        var before = session.Workbench.Settings;
        var changed = session.Workbench.DryRun
            ? change(before)
            : ShopSettingsFile.Change(session.Workbench.Folder, settings => change(before = settings));
        return changed.Then(settings => Show(session, settings, before));
    }

    private static string Aging(double? settled) => settled is { } times
        ? string.Create(CultureInfo.InvariantCulture, $"{times:0.##} times faster when 10 °C warmer")
        : string.Create(CultureInfo.InvariantCulture, $"not settled: {Core.Keeping.Aging.Low:0.0} to {Core.Keeping.Aging.High:0.0} times faster when 10 °C warmer, learned from tests");

    private static Result<Answer> Show(Session session, ShopSettings settings, ShopSettings before) => Answer.Of(
        new Screen().Title($"Shop in {session.Workbench.Folder.Path}").Gap().Rows(
            ("name", settings.Name ?? "none"),
            ("contact", settings.Contact ?? "none"),
            ("poison-center", PoisonCenter.Number(settings.Rules, settings.PoisonCenter) + (settings.PoisonCenter is null ? settings.Rules == RuleSet.Osha ? ", the US number" : ", emergencies; set your country's poison centre" : "")),
            ("base-url", settings.BaseUrl?.Text ?? "none: codes on labels are plain text that needs no network"),
            ("rules", settings.Rules.ToString().ToLowerInvariant()),
            ("units", settings.Metric ? "metric" : "us"),
            ("sheet", settings.Sheet ?? "the program's choice"),
            ("design", settings.Design ?? "the sheet's usual one"),
            ("printers", settings.Printers.Count == 0 ? "none named" : string.Join(", ", settings.Printers.Select(p => $"{p.Name} ({p.Uri})"))),
            ("aging", Aging(settings.AgingPerTenKelvin)),
            ("still-good", settings.Learning.StillGood.ToString("0.## %", CultureInfo.InvariantCulture) + " of jars on the use-by date"),
            ("keeping-spread", "published keeping times are off by a factor of up to " + settings.Learning.Spread.ToString("0.##", CultureInfo.InvariantCulture)),
            ("shelves", string.Join(", ", settings.Shelves.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Name} ({s.Temperature.DegreesCelsius:0.#} °C)"))))),
        ShopJson.Of(session.Workbench.Folder, settings),
        c => c.ShopJson,
        ForgetShelf.Cautions(before, settings));
}
