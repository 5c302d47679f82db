namespace JarLabel.Operations.Answers;

/// <summary>What is said of what stands behind codes.</summary>
internal static class ScanAnswer
{
    /// <summary>Of one code what it stands for; of several a table.</summary>
    internal static Answer Of(Workbench bench, ScannedCodes found, bool several) => several ? Several(bench, found)
        : found.Jars.Count == 1 ? JarAnswer.Scanned(bench, found.Jars[0])
        : found.Bags.Count == 1 ? SupplyAnswer.Of(bench, found.Bags[0])
        : SupplyAnswer.Of(bench, found.Bottles[0]);

    private static Answer Several(Workbench bench, ScannedCodes found)
    {
        var jars = found.Jars;
        Problem[] warnings =
        [
            .. found.Faults,
            .. jars.SelectMany(j => j.Jar.Cautions.Select(c => c with { Text = Message.Of($"Jar {j.Jar.History.Jar.Number}: {c.Text}") })),
            .. found.Bags.SelectMany(b => b.Cautions),
            .. found.Bottles.SelectMany(b => b.Cautions),
        ];
        return Answer.Of(
            jars.Count > 0 ? Show(bench, found).Next("jar", ("jar", $"{jars[0].Jar.History.Jar.Number.Value}")) : Show(bench, found).Next("bag list"),
            tell => new ScanAnswerJson([.. jars.Select(j => JarAnswer.Json(bench, j, tell))], tell(warnings))
            {
                Bags = [.. found.Bags.Select(b => BagJson.Of(b.Bag))],
                Bottles = [.. found.Bottles.Select(b => BottleJson.Of(b.Bottle))],
            },
            c => c.ScanAnswerJson,
            warnings);
    }

    private static Screen Show(Workbench bench, ScannedCodes found)
    {
        var (jars, catalog) = (found.Jars, bench.Catalog);
        var screen = new Screen().Title(found.Title).Gap();
        if (jars.Count > 0)
        {
            screen.Table(["jar", "what it is", "state", "label", " use by (estimate)"], [.. jars.Select(j => Row(bench, j))], i => StateWords.Style(State(bench, jars[i])));
        }

        return screen.Rows(
        [
            .. found.Bags.Select(b => ($"bag {b.Bag.Number}", (string?)$"{BenchAmount.Both(b.Bag.Left, bench.Metric)} of {catalog.GradeOf(b.Bag.Grade).Name} flakes")),
            .. found.Bottles.Select(b => ($"bottle {b.Bottle.Number}", (string?)$"{BenchAmount.Both(b.Bottle.Left, bench.Metric)} of {catalog.SolventOf(b.Bottle.Solvent).Name}")),
        ]);
    }

    private static string[] Row(Workbench bench, Scanned scanned)
    {
        var jar = scanned.Jar.History.Jar;
        return
        [
            jar.Number.ToString(),
            JarTitle.Of(jar, bench.Catalog),
            StateWords.Of(State(bench, scanned)),
            scanned.OutOfDate ? "out of date" : scanned.Revision is null ? "" : "true",
            jar.FailedOn is { } failed ? FailureWords.On(failed) : DateWords.Of(jar.Dates.UseBy),
        ];
    }

    private static JarState State(Workbench bench, Scanned scanned) => scanned.Jar.History.Jar.StateAt(bench.Now);
}

/// <summary>What <c>scan</c> says of several codes at once.</summary>
internal sealed record ScanAnswerJson(IReadOnlyList<JarAnswerJson> Jars, IReadOnlyList<Problem> Warnings)
{
    public IReadOnlyList<BagJson> Bags { get; init; } = [];

    public IReadOnlyList<BottleJson> Bottles { get; init; } = [];
}
