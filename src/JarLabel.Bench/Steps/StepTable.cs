namespace JarLabel.Bench.Steps;

/// <summary>Every declared step. One is made only when it is asked for.</summary>
internal static class StepTable
{
    private static readonly (string Verb, Func<Step> Step)[] Rows =
    [
        ("mix", () => MixStep.Step),
        ("thin", () => ThinStep.Step),
        ("thicken", () => ThickenStep.Step),
        ("blend", () => PourSteps.Blend),
        ("decant", () => PourSteps.Decant),
        ("use", () => UseStep.Step),
        ("test", () => TestStep.Step),
        ("note", () => SmallSteps.Note),
        ("move", () => SmallSteps.Move),
        ("discard", () => SmallSteps.Discard),
        ("undo", () => SmallSteps.Undo),
        ("bag add", () => BagSteps.Add),
        ("bag list", () => BagSteps.List),
        ("bag left", () => BagSteps.Left),
        ("bag test", () => BagSteps.Test),
        ("bag discard", () => BagSteps.Discard),
        ("bottle add", () => BottleSteps.Add),
        ("bottle list", () => BottleSteps.List),
        ("bottle left", () => BottleSteps.Left),
        ("bottle move", () => BottleSteps.Move),
        ("bottle discard", () => BottleSteps.Discard),
        ("can add", () => CanSteps.Add),
        ("can list", () => CanSteps.List),
        ("jar", () => LookSteps.Jar),
        ("shelf", () => LookSteps.Shelves),
        ("keeping", () => LookSteps.Keeping),
        ("plan", () => PlanStep.Step),
        ("scan", () => ScanStep.Step),
        ("sheets", () => StockSteps.Sheets),
        ("sheet new", () => StockSteps.New),
        ("sheet state", () => StockSteps.State),
        ("sheet back", () => StockSteps.Back),
        ("designs", () => StockSteps.Designs),
        ("calibrate", () => CalibrateStep.Step),
        ("printers", () => StockSteps.Printers),
        ("shop init", () => ShopSteps.Init),
        ("shop show", () => ShopSteps.Show),
        ("shop set", () => ShopSteps.Set),
        ("export", () => CareSteps.Export),
        ("import", () => CareSteps.Import),
        ("backup", () => CareSteps.Backup),
        ("restore", () => CareSteps.Restore),
        ("verify", () => CareSteps.Verify),
        ("demo", () => CareSteps.Demo),
        ("calc mix", () => CalcSteps.Mix),
        ("calc thin", () => CalcSteps.Thin),
        ("calc thicken", () => CalcSteps.Thicken),
        ("calc blend", () => CalcSteps.Blending),
        ("calc solids", () => CalcSteps.SolidsOf),
        ("calc density", () => CalcSteps.Density),
        ("calc hazards", () => CalcSteps.Hazards),
        ("calc air", () => AirSteps.Air),
        ("calc purge", () => AirSteps.Purging),
        ("calc coverage", () => CalcSteps.Covering),
        ("label", () => LabelSteps.Label),
        ("card", () => LabelSteps.JarCard),
        ("notice", () => NoticeStep.Step),
    ];

    /// <summary>All of them.</summary>
    internal static IEnumerable<Step> All => Rows.Select(row => row.Step());

    /// <summary>Their verbs.</summary>
    internal static IEnumerable<string> Verbs => Rows.Select(row => row.Verb);

    /// <summary>The step with this verb; null for none.</summary>
    internal static Step? Find(string verb) => Array.Find(Rows, row => row.Verb == verb).Step?.Invoke();
}
