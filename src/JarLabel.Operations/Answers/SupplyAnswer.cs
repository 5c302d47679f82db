namespace JarLabel.Operations.Answers;

/// <summary>What the commands about bags and bottles say.</summary>
internal static class SupplyAnswer
{
    internal static Answer Of(Workbench bench, BagOutcome outcome) => Answer.Of(
        Next(bench, Screen(bench, outcome), outcome.Bag),
        tell => Json(outcome, tell),
        c => c.BagAnswerJson,
        outcome.Cautions);

    internal static Answer Of(Workbench bench, BottleOutcome outcome) => Answer.Of(
        Next(bench, Screen(bench, outcome), outcome.Bottle),
        tell => Json(bench, outcome, tell),
        c => c.BottleAnswerJson,
        outcome.Cautions);

    internal static Answer Of(Workbench bench, IReadOnlyList<Bag> bags)
    {
        var metric = bench.Metric;
        var screen = new Screen().Title(bags.Count == 0 ? "No bag has any flakes in it." : CountWords.Of(bags.Count, "bag"));
        if (bags.Count > 0)
        {
            screen.Gap().Table(["bag", "grade", " left", " of", "made", "a pinch of it"], [.. bags.Select(b => (string[])
                [b.Number.ToString(), b.Grade, BenchAmount.Both(b.Left, metric), BenchAmount.Both(b.Bought, metric), DateWords.Of(b.Made), b.Test is { } test ? PinchWords.WithAdvice(test) : "not tried"])]);
        }

        return Answer.Of(
            bags.FirstOrDefault(b => !b.Unfit) is { } fit ? Mix(screen, fit) : screen.Next("bag add", ("grade", "garnet"), ("mass", "500 g"), ("date", "2025-10-01")),
            new BagsAnswerJson([.. bags.Select(BagJson.Of)]),
            c => c.BagsAnswerJson);
    }

    internal static Answer Of(Workbench bench, IReadOnlyList<Bottle> bottles)
    {
        var metric = bench.Metric;
        var screen = new Screen().Title(bottles.Count == 0 ? "No bottle has any alcohol in it." : CountWords.Of(bottles.Count, "bottle"));
        if (bottles.Count > 0)
        {
            screen.Gap().Table(["bottle", "alcohol", " left", " of", "since", "shelf"], [.. bottles.Select(b => (string[])
                [b.Number.ToString(), b.Solvent, BenchAmount.Both(b.Left, metric), BenchAmount.Both(b.Bought, metric), DateWords.Of(b.Since), b.Shelf])]);
        }

        return Answer.Of(
            bottles.Count > 0 ? Mix(screen, bottles[0]) : screen.Next("bottle add", ("solvent", "ethanol-95"), ("volume", "1 gal"), ("date", "2026-03-01")),
            new BottlesAnswerJson([.. bottles.Select(BottleJson.Of)]),
            c => c.BottlesAnswerJson);
    }

    /// <summary>A bag for a person, without the next command.</summary>
    internal static Screen Screen(Workbench bench, BagOutcome outcome)
    {
        var (bag, metric) = (outcome.Bag, bench.Metric);
        return new Screen().Title($"Bag {bag.Number} · {bench.Catalog.GradeOf(bag.Grade).Name} flakes").Gap().Rows(
        [
            ("left", bag.OnHand ? $"{BenchAmount.Both(bag.Left, metric)} of {BenchAmount.Both(bag.Bought, metric)}" : bag.Discarded ? "discarded" : "nothing more"),
            ("made", DateWords.Of(bag.Made)),
            ("a pinch", bag.Test is { } test ? PinchWords.WithAdvice(test) : null),
            ("went to", bag.Taken.Count == 0 ? null : "jar " + string.Join(", ", bag.Taken.Select(t => t.For).Distinct())),
            ("note", bag.Note),
            .. Label(outcome.Label),
        ]);
    }

    /// <summary>A bottle for a person, without the next command.</summary>
    internal static Screen Screen(Workbench bench, BottleOutcome outcome)
    {
        var (bottle, metric) = (outcome.Bottle, bench.Metric);
        return new Screen().Title($"Bottle {bottle.Number} · {bench.Catalog.SolventOf(bottle.Solvent).Name}").Gap().Rows(
        [
            ("left", bottle.OnHand ? $"{BenchAmount.Both(bottle.Left, metric)} of {BenchAmount.Both(bottle.Bought, metric)}" : bottle.Discarded ? "discarded" : "nothing more"),
            ("since", DateWords.Of(bottle.Since)),
            ("shelf", bottle.Shelf),
            ("went to", bottle.Taken.Count == 0 ? null : "jar " + string.Join(", ", bottle.Taken.Select(t => t.For).Distinct())),
            ("note", bottle.Note),
            .. Label(outcome.Label),
        ]).Gap().Rows(DangerRows.Of(bench, outcome.Hazards));
    }

    internal static BagAnswerJson Json(BagOutcome outcome, Tell tell) => new(BagJson.Of(outcome.Bag), SupplyLabelJson.Of(outcome.Label), tell(outcome.Cautions));

    internal static BottleAnswerJson Json(Workbench bench, BottleOutcome outcome, Tell tell) =>
        new(BottleJson.Of(outcome.Bottle), HazardsJson.Of(outcome.Hazards, bench.Settings.PoisonCenter), SupplyLabelJson.Of(outcome.Label), tell(outcome.Cautions));

    private static IEnumerable<(string, string?)> Label(WrittenSupplyLabel? label) => label is null
        ? []
        :
        [
            ("label", label.File),
            ("on", $"{label.Event.Sheet}, place {label.Event.Position}; print at actual size"),
            ("meets", label.Rules is not { Satisfies.Count: > 0 } met ? null : string.Join("; ", met.Satisfies)),
            .. ListedRows.Of("not met", label.Rules?.Lacks ?? []),
        ];

    private static Screen Next(Workbench bench, Screen screen, Bag bag) => bench.DryRun ? screen.InEarnest()
        : bag is { OnHand: true, Unfit: true } ? screen.Next("bag discard", ("bag", $"{bag.Number.Value}"), ("why", "a pinch swelled to a gel"))
        : bag.OnHand ? Mix(screen, bag) : screen.Next("bag list");

    private static Screen Next(Workbench bench, Screen screen, Bottle bottle) => bench.DryRun ? screen.InEarnest()
        : bottle.OnHand ? Mix(screen, bottle) : screen.Next("bottle list");

    private static Screen Mix(Screen screen, Bag bag) => screen.Next("mix", ("bag", $"{bag.Number.Value}"), ("cut", "1.5"), ("pour", "350 mL"), ("solvent", "ethanol-95"));

    private static Screen Mix(Screen screen, Bottle bottle) => screen.Next("mix", ("grade", "garnet"), ("bottle", $"{bottle.Number.Value}"), ("cut", "1.5"), ("pour", "350 mL"));
}

/// <summary>What the commands about one bag say to a program.</summary>
internal sealed record BagAnswerJson(BagJson Bag, SupplyLabelJson? Label, IReadOnlyList<Problem> Warnings);

/// <summary>What <c>bag list</c> says to a program.</summary>
internal sealed record BagsAnswerJson(IReadOnlyList<BagJson> Bags);

/// <summary>What the commands about one bottle say to a program.</summary>
internal sealed record BottleAnswerJson(BottleJson Bottle, HazardsJson Hazards, SupplyLabelJson? Label, IReadOnlyList<Problem> Warnings);

/// <summary>A bottle of alcohol for a program.</summary>
internal sealed record BottleJson(
    int Number, string Id, string Solvent, double BoughtMilliliters, double LeftMilliliters, string Since, string Shelf, string? Material, bool OnHand, string? Note)
{
    internal static BottleJson Of(Bottle bottle) => new(
        bottle.Number.Value,
        bottle.Number.ToString(),
        bottle.Solvent,
        bottle.Bought.Milliliters,
        bottle.Left.Milliliters,
        bottle.Since.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        bottle.Shelf,
        bottle.Material?.Word(),
        bottle.OnHand,
        bottle.Note);
}

/// <summary>What <c>bottle list</c> says to a program.</summary>
internal sealed record BottlesAnswerJson(IReadOnlyList<BottleJson> Bottles);

/// <summary>What is dangerous about a liquid, in rows: signal word and hazards, poison, where methanol counts the first aid, the lid.</summary>
internal static class DangerRows
{
    internal static IEnumerable<(string, string?)> Of(Workbench bench, HazardAssessment hazards) =>
    [
        .. ListedRows.Of(hazards.SignalText ?? "hazards", hazards.StatementTexts(bench.Catalog)),
        .. hazards.PoisonWording ? [("poison", PoisonWords.Text)] : Array.Empty<(string, string?)>(),
        .. hazards.MethanolCounts ? ListedRows.Of("first aid", FirstAidWords.Of(hazards, bench.Settings.PoisonCenter)) : [],
        .. ChildResistantLid.WantedOn(hazards) ? [("lid", "child-resistant, and locked away from children")] : Array.Empty<(string, string?)>(),
    ];
}

/// <summary>Lines of one kind as rows, of which only the first has the name.</summary>
internal static class ListedRows
{
    internal static IEnumerable<(string Name, string? Value)> Of(string name, IEnumerable<string> lines) => lines.Select((line, i) => (i == 0 ? name : "", (string?)line));
}

/// <summary>A bag's or bottle's label that was written; the rules are null for a bag, which has no hazard.</summary>
internal sealed record SupplyLabelJson(
    string File, string Design, string Sheet, int Position, string Payload, IReadOnlyList<string>? Satisfies, IReadOnlyList<string>? Lacks)
{
    internal static SupplyLabelJson? Of(WrittenSupplyLabel? label) => label is null ? null : new(
        label.File, label.Event.Design, label.Event.Sheet, label.Event.Position, label.Event.Payload, label.Rules?.Satisfies, label.Rules?.Lacks);
}
