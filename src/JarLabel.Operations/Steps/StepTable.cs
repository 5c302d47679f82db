namespace JarLabel.Operations.Steps;

/// <summary>Every declared step, in the order in which they are listed. One is made only when it is asked for.</summary>
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
        ("move", () => SmallSteps.Move),
        ("note", () => SmallSteps.Note),
        ("discard", () => SmallSteps.Discard),
        ("undo", () => SmallSteps.Undo),
        ("jar", () => LookSteps.Jar),
        ("scan", () => ScanStep.Step),
        ("shelf", () => LookSteps.Shelves),
        ("bag add", () => SupplySteps.Bag.Add),
        ("bag list", () => SupplySteps.Bag.List),
        ("bag label", () => SupplySteps.Bag.Label),
        ("bag left", () => SupplySteps.Bag.Left),
        ("bag test", () => SupplySteps.Bag.Test),
        ("bag discard", () => SupplySteps.Bag.Discard),
        ("bag undo", () => SupplySteps.Bag.Undo),
        ("bottle add", () => SupplySteps.Bottle.Add),
        ("bottle list", () => SupplySteps.Bottle.List),
        ("bottle label", () => SupplySteps.Bottle.Label),
        ("bottle left", () => SupplySteps.Bottle.Left),
        ("bottle move", () => SupplySteps.Bottle.Move),
        ("bottle discard", () => SupplySteps.Bottle.Discard),
        ("bottle undo", () => SupplySteps.Bottle.Undo),
        ("can add", () => CanSteps.Add),
        ("can list", () => CanSteps.List),
        ("grades", () => CatalogSteps.Grades),
        ("solvents", () => CatalogSteps.Solvents),
        ("keeping", () => LookSteps.Keeping),
        ("plan", () => PlanJobStep.Step),
        ("label", () => LabelSteps.Label),
        ("card", () => LabelSteps.JarCard),
        ("notice", () => NoticeStep.Step),
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
        ("shop setup", () => SetupStep.Step),
        ("export", () => CareSteps.Export),
        ("import", () => CareSteps.Import),
        ("backup", () => CareSteps.Backup),
        ("restore", () => CareSteps.Restore),
        ("verify", () => CareSteps.Verify),
        ("check", () => CareSteps.Check),
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
    ];

    /// <summary>What the first words are about where several steps begin with one.</summary>
    private static readonly Dictionary<string, string> Abouts = new(StringComparer.Ordinal)
    {
        ["bag"] = "The bags of flakes that batches draw from.",
        ["bottle"] = "The bottles and cans of alcohol that batches draw from.",
        ["can"] = "The shop's own cans of alcohol, as their safety data sheets state them.",
        ["sheet"] = "The sheets of label stock in use: their free places.",
        ["shop"] = "The shop folder and its settings.",
        ["calc"] = "Sums without a jar.",
    };

    /// <summary>All of them.</summary>
    internal static IEnumerable<Step> All => Rows.Select(row => row.Step());

    /// <summary>The first words of their verbs, each once.</summary>
    internal static IEnumerable<string> Words => Rows.Select(row => row.Verb.Split(' ')[0]).Distinct();

    /// <summary>What a first word is about; null where it is a step by itself.</summary>
    internal static string? About(string word) => Abouts.GetValueOrDefault(word);

    /// <summary>The steps that begin with a word.</summary>
    internal static IEnumerable<Step> Under(string word) => Rows.Where(row => row.Verb.StartsWith(word + " ", StringComparison.Ordinal)).Select(row => row.Step());

    /// <summary>The step with this verb; null for none.</summary>
    internal static Step? Find(string verb) => Array.Find(Rows, row => row.Verb == verb).Step?.Invoke();
}
