namespace JarLabel.Operations.Answers;

/// <summary>What the commands about bags and bottles say.</summary>
internal static class SupplyAnswer
{
    /// <param name="bench">The shop.</param>
    /// <param name="outcome">The bag or bottle, and what was done with it.</param>
    /// <param name="looked">True when it was only looked at.</param>
    internal static Answer Of(Workbench bench, SupplyOutcome outcome, bool looked = false)
    {
        var screen = Next(bench.DryRun && !looked, Show(bench, outcome), outcome.Supply);
        return outcome.Supply is Bag
            ? Answer.Of(screen, tell => BagAnswerJson.Of(outcome, tell), c => c.BagAnswerJson, outcome.Cautions)
            : Answer.Of(screen, tell => BottleAnswerJson.Of(bench, outcome, tell), c => c.BottleAnswerJson, outcome.Cautions);
    }

    /// <summary>All of a kind that hold something.</summary>
    internal static Answer Of(Workbench bench, SupplyKind kind, IReadOnlyList<Supply> all)
    {
        var screen = new Screen().Title(all.Count > 0 ? CountWords.Of(all.Count, kind.Word()) : kind == SupplyKind.Bag ? "No bag has any flakes in it." : "No bottle has any alcohol in it.");
        if (all.Count > 0)
        {
            screen.Gap().Table(
                kind == SupplyKind.Bag ? ["bag", "grade", " left", " of", "made", "a pinch of it"] : ["bottle", "alcohol", " left", " of", "since", "shelf", "poison"],
                [.. all.Select(one => (string[])
                    [one.Number.ToString(), one.Holds, one.Shown(one.Rest, bench.Metric), one.Shown(one.Full, bench.Metric), DateWords.Of(one.Since), .. one is Bottle bottle ? [bottle.Shelf, SupplyWords.Hazards(bench, bottle).CanPoison ? PoisonWords.Words[0] : ""] : (string[])[((Bag)one).Test is { } test ? PinchWords.WithAdvice(test) : "not tried"]])],
                more: i => Shown(all[i]));
        }

        return kind == SupplyKind.Bag
            ? Answer.Of(all.FirstOrDefault(one => one is Bag { Unfit: false }) is { } fit ? Draw(screen, fit) : screen.Next("bag add", ("grade", "garnet"), ("mass", "500 g"), ("date", "2025-10-01")), new BagsAnswerJson([.. all.Cast<Bag>().Select(BagJson.Of)]), c => c.BagsAnswerJson)
            : Answer.Of(all.Count > 0 ? Draw(screen, all[0]) : screen.Next("bottle add", ("solvent", "ethanol-95"), ("volume", "1 gal"), ("date", "2026-03-01")), new BottlesAnswerJson([.. all.Cast<Bottle>().Select(BottleJson.Of)]), c => c.BottlesAnswerJson);
    }

    /// <summary>The step that shows one of them: as the code on its label does.</summary>
    internal static Remedy Shown(Supply supply) => Screen.Step("scan", ("what", SupplyCode.Brief(supply.Kind, supply.Number)));

    /// <summary><c>Garnet flakes</c>, <c>ethanol 95 %</c>.</summary>
    internal static string What(Workbench bench, Supply supply) => supply is Bag ? $"{bench.Catalog.GradeOf(supply.Holds).Name} flakes" : bench.Catalog.SolventOf(supply.Holds).Name;

    private static Screen Show(Workbench bench, SupplyOutcome outcome)
    {
        var supply = outcome.Supply;
        var (bag, bottle) = (supply as Bag, supply as Bottle);
        var screen = new Screen().Title($"{Capital.Of(supply.Kind.Word())} {supply.Number} · {What(bench, supply)}").Gap().Rows(
        [
            (bench.DryRun ? "would be done" : "done", outcome.Step is SupplyUndone undone ? $"taken back: {SupplyLastWords.Of(undone.What)}" : null),
            ("left", supply.Standing(bench.Metric)),
            ("waste", Waste(outcome)),
            (bag is null ? "since" : "made", DateWords.Of(supply.Since)),
            ("shelf", bottle?.Shelf),
            ("a pinch", bag?.Test is { } test ? PinchWords.WithAdvice(test) : null),
            ("went to", supply.Taken.Select(t => t.Jar).Distinct().ToArray() is { Length: > 0 } went ? $"{(went.Length == 1 ? "jar" : "jars")} {string.Join(", ", went)}" : null),
            ("note", supply.Note),
            .. Label(outcome.Label),
        ]);
        return outcome.Hazards is { } hazards ? screen.Gap().Rows(DangerRows.Of(bench, hazards)) : screen;
    }

    /// <summary>Where what is left in a bottle goes when it is thrown away.</summary>
    internal static string? Waste(SupplyOutcome outcome) => outcome is { Supply: Bottle { Discarded: true }, Step: not SupplyUndone } ? WasteWords.OfWhatIsLeft : null;

    private static IEnumerable<(string, string?)> Label(WrittenSupplyLabel? label) => label is null
        ? []
        :
        [
            ("label", label.File),
            ("on", $"{label.Event.Sheet}, place {label.Event.Position}; print at actual size"),
            ("meets", label.Rules is not { Satisfies.Count: > 0 } met ? null : string.Join("; ", met.Satisfies)),
            .. ListedRows.Of("not met", label.Rules?.Lacks ?? []),
        ];

    private static Screen Next(bool rehearsed, Screen screen, Supply supply) => rehearsed ? screen.InEarnest()
        : supply is Bag { OnHand: true, Unfit: true } ? screen.Next("bag discard", ("bag", $"{supply.Number.Value}"), ("why", "a pinch swelled to a gel"))
        : supply.OnHand ? Draw(screen, supply) : screen.Next($"{supply.Kind.Word()} list");

    /// <summary>A batch from it, no larger than it gives; where that is too little to measure, all there is.</summary>
    private static Screen Draw(Screen screen, Supply supply)
    {
        var most = supply is Bag bag ? UsualCut.PourFor(bag.Left) : ((Bottle)supply).Left;
        if (most < LeastPour)
        {
            return screen.Next($"{supply.Kind.Word()} list");
        }

        var pour = string.Create(CultureInfo.InvariantCulture, $"{Math.Min(UsualPour, Math.Floor(most.Milliliters / 10) * 10):0} mL");
        return supply is Bag
            ? screen.Next("mix", ("bag", $"{supply.Number.Value}"), ("cut", "1.5"), ("pour", pour), ("solvent", "ethanol-95"))
            : screen.Next("mix", ("grade", "garnet"), ("bottle", $"{supply.Number.Value}"), ("cut", "1.5"), ("pour", pour));
    }

    private static readonly PoundCut UsualCut = PoundCut.FromPoundsPerUsGallon(1.5);
    private static readonly Volume LeastPour = Volume.FromMilliliters(50);
    private const double UsualPour = 350;
}

/// <summary>The last thing that was said of a bag or bottle, in words: what can be taken back, or was.</summary>
internal static class SupplyLastWords
{
    internal static string Of(SupplyEvent last) => last is ITaking taking ? $"what jar {taking.Jar} took" : Of(last.Name);

    internal static string Of(string name) => name switch
    {
        nameof(BagAdded) or nameof(BottleAdded) => "that it came",
        nameof(FlakesLeft) or nameof(SolventLeft) => "what was measured",
        nameof(FlakesTested) => "the pinch",
        nameof(BottleMoved) => "the move",
        _ => "the discarding",
    };
}

/// <summary>What the commands about one bag say to a program.</summary>
internal sealed record BagAnswerJson(BagJson Bag, SupplyLabelJson? Label, IReadOnlyList<Problem> Warnings)
{
    internal static BagAnswerJson Of(SupplyOutcome outcome, Tell tell) => new(BagJson.Of((Bag)outcome.Supply), SupplyLabelJson.Of(outcome.Label), tell(outcome.Cautions));
}

/// <summary>What <c>bag list</c> says to a program.</summary>
internal sealed record BagsAnswerJson(IReadOnlyList<BagJson> Bags);

/// <summary>What the commands about one bottle say to a program.</summary>
internal sealed record BottleAnswerJson(BottleJson Bottle, HazardsJson Hazards, SupplyLabelJson? Label, IReadOnlyList<Problem> Warnings)
{
    /// <summary>Where what is left goes when it is thrown away; else left out.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Waste { get; init; }

    internal static BottleAnswerJson Of(Workbench bench, SupplyOutcome outcome, Tell tell) =>
        new(BottleJson.Of((Bottle)outcome.Supply), HazardsJson.Of(outcome.Hazards!, bench.Settings.PoisonCenter), SupplyLabelJson.Of(outcome.Label), tell(outcome.Cautions)) { Waste = SupplyAnswer.Waste(outcome) };
}

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
