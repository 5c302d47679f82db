using JarLabel.Operations.Shops;

namespace JarLabel.Operations.Steps;

/// <summary>The shop folder and its settings.</summary>
internal static class ShopSteps
{
    private static Input<string> Setting => field ??= Input.Of<string>("setting", "Setting", "name", (text, _) => text)
        .Help("name", $"One of: {string.Join(", ", ShopSetting.Names)}.").Argument().Choices(_ => [.. ShopSetting.Words]);

    private static Input<string> Value => field ??= Input.Of<string>("value", "Its value", "Alder Lane Lutherie", (text, _) => text)
        .Help("text", "Its value; \"none\" takes it back, NAME=none a shelf or a printer.").Hint("none takes it back; a shelf as cellar=16 C").Argument();

    internal static Step Init => field ??= Step.OfShop("shop init", "Make the shop folder", "Make the shop folder with a settings file to edit.", [], given => File.Exists(given.Bench.Folder.Settings)
        ? new Outcome(ShopAnswer.There(given.Bench)) { IsNothing = true }
        : Keep(given.Bench, settings => settings)) with
    { Button = "Make it", OnPages = "shop setup" };

    internal static Step Show => field ??= Step.OfShop("shop show", "Settings", "The settings in force.", [], given => new Outcome(ShopAnswer.Of(given.Bench, given.Bench.Settings, given.Bench.Settings, [])) { Ways = [new Remedy("shop setup")] }) with { Looks = true };

    internal static Step Set => field ??= Step.OfShop("shop set", "Change a setting", "Change one setting: shop set base-url http://192.168.1.20:5080", [Setting, Value],
        given => Keep(given.Bench, settings => ShopSetting.Change(given.Bench.With(settings), given.Get(Setting), given.Get(Value)))) with
    { Button = "Change it", OnPages = "shop setup" };

    /// <summary>Changes what is settled at this moment, which may be other than when the shop was opened, and dates anew the jars whose dates hang on it.</summary>
    internal static Result<Outcome> Keep(Workbench bench, Func<ShopSettings, Result<ShopSettings>> change)
    {
        var before = bench.Settings;
        var changed = bench.DryRun
            ? change(before).Then(settings => Redating.Do(bench, settings, () => settings))
            : ShopSettingsFile.Change(bench.Folder, settings => change(before = settings), (settings, settle) => Redating.Do(bench.With(before), settings, settle));
        return changed.Then<Outcome>(settled => new Outcome(ShopAnswer.Of(bench, settled.Settings, before, [.. settled.Cautions, .. OnGlass(bench, before, settled.Settings)])));
    }

    /// <summary>That labels say whose rules and which telephone number were in force when they were printed.</summary>
    private static IReadOnlyList<Problem> OnGlass(Workbench bench, ShopSettings before, ShopSettings after)
    {
        var what = before.Rules != after.Rules ? "the rules" : PoisonCenter.Number(before.Rules, before.PoisonCenter) != PoisonCenter.Number(after.Rules, after.PoisonCenter) ? "the telephone number" : null;
        return what is not null && File.Exists(bench.Folder.Ledger) && LedgerAccess.Read(bench, view => Result<IReadOnlyList<int>>.Of(view.LabelledJars())).TryGet(out var jars, out _) && jars.Count > 0
            ? [OperationProblems.LabelsOfBefore(what, jars.Count, jars[0])] : [];
    }
}
