namespace JarLabel.Operations.Answers;

/// <summary>What is said of what stands behind codes.</summary>
internal static class ScanAnswer
{
    /// <summary>Of one code what it stands for; of several a table.</summary>
    internal static Answer Of(Workbench bench, ScannedCodes found, bool several) => several ? Several(bench, found)
        : found.Jars.Count == 1 ? JarAnswer.Scanned(bench, found.Jars[0])
        : SupplyAnswer.Of(bench, found.Supplies[0], looked: true);

    private static Answer Several(Workbench bench, ScannedCodes found)
    {
        var jars = found.Jars;
        Problem[] warnings =
        [
            .. found.Faults,
            .. jars.SelectMany(j => j.Jar.Cautions.Select(c => c with { Text = Message.Of($"Jar {j.Jar.History.Jar.Number}: {c.Text}") })),
            .. found.Supplies.SelectMany(one => one.Cautions),
        ];
        return Answer.Of(
            jars.Count > 0 ? Show(bench, found).Next("jar", ("jar", $"{jars[0].Jar.History.Jar.Number.Value}")) : Show(bench, found).Next("bag list"),
            tell => new ScanAnswerJson([.. jars.Select(j => JarAnswer.Json(bench, j, tell))], tell(warnings))
            {
                Bags = [.. found.Supplies.Select(one => one.Supply).OfType<Bag>().Select(BagJson.Of)],
                Bottles = [.. found.Supplies.Select(one => one.Supply).OfType<Bottle>().Select(BottleJson.Of)],
            },
            c => c.ScanAnswerJson,
            warnings);
    }

    private static Screen Show(Workbench bench, ScannedCodes found)
    {
        var jars = found.Jars;
        var screen = new Screen().Title(found.Title).Gap();
        if (jars.Count > 0)
        {
            screen.Table(["jar", "what it is", "state", "label", " use by (estimate)"], [.. jars.Select(j => Row(bench, j))], i => StateWords.Style(State(bench, jars[i])), i => Screen.Step("jar", ("jar", $"{jars[i].Jar.History.Jar.Number}")));
        }

        return screen.Rows(found.Supplies.Select(one => one.Supply).OrderBy(one => one.Kind)
            .Select(one => ($"{one.Kind.Word()} {one.Number}", (string?)$"{one.Shown(one.Rest, bench.Metric)} of {SupplyAnswer.What(bench, one)}")));
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
