namespace JarLabel.Operations.Answers;

/// <summary>What the commands about one jar say.</summary>
internal static class JarAnswer
{
    /// <summary>After mixing: what the hands do now, when, and where the label is.</summary>
    internal static Answer Mixed(Workbench bench, JarOutcome outcome)
    {
        var jar = outcome.History.Jar;
        var screen = MovedRow(Begin(bench, jar).Rows([.. Recipe(bench, jar), .. Keeping(jar), ("dissolving", DissolveWords.Safely), .. Label(outcome.Label)]), outcome)
            .Gap().Rows(HazardRows(bench, outcome.Hazards));
        return With(bench, outcome, Ahead(bench, screen, jar), history: false);
    }

    /// <summary>After a change: what to add, what is in it then, and where the new label is.</summary>
    internal static Answer Changed(Workbench bench, JarOutcome outcome)
    {
        var jar = outcome.History.Jar;
        var screen = MovedRow(
            Begin(bench, jar).Rows([.. Done(bench, outcome.Step), (outcome.Step is Discarded ? "held" : "holds", Holds(bench, jar)), ("state", State(bench, jar)), ("waste", outcome.Step is Discarded ? WasteWords.OfWhatIsLeft : null), .. AlsoRows.Of(bench, outcome), .. jar.OnShelf ? Dates(jar) : [], .. Label(outcome.Label)]),
            outcome);
        screen = IsMade(outcome) ? screen.Gap().Rows(HazardRows(bench, outcome.Hazards)) : screen;
        return With(bench, outcome, Ahead(bench, screen, jar), history: false);
    }

    /// <summary>True where a liquid came of it that was not there before, or another that can poison.</summary>
    internal static bool IsMade(JarOutcome outcome) => outcome.History.Jar.OnShelf && (outcome.Step is IBeginning || (outcome.Step is Thinned or Thickened && outcome.Hazards.CanPoison));

    private static IEnumerable<(string Name, string? Value)> Done(Workbench bench, JarEvent? step) => step is null
        ? [(bench.DryRun ? "would be done" : "done", "nothing: it stands there already")]
        : StepRows.Of(step, bench.Catalog, bench.Metric).Select(row => bench.DryRun && row.Name == "done" ? ("would be done", row.Value) : row);

    /// <summary>After decanting: what went where.</summary>
    internal static Answer Decanted(Workbench bench, JarOutcome outcome)
    {
        var jar = outcome.History.Jar;
        var screen = Begin(bench, jar).Rows([
            .. outcome.Made.SelectMany(m => (IEnumerable<(string, string?)>)[($"jar {m.History.Jar.Number}", Holds(bench, m.History.Jar)), ("label", m.Label?.File), ("on", m.Label is { } label ? Place(label) : null), .. m.Label is { } rules ? RuleRows(rules) : [], ("on the card", m.Label is { Rules.MovedToCard.Count: > 0 and var moved } ? $"{moved} that had no room here" : null)]),
            ("left", Holds(bench, jar)),
        ]);
        screen = outcome.Hazards.CanPoison ? screen.Gap().Rows(HazardRows(bench, outcome.Hazards)) : screen;
        return With(bench, outcome, Ahead(bench, screen, jar), history: false);
    }

    /// <summary>A jar behind a code.</summary>
    internal static Answer Scanned(Workbench bench, Scanned scanned)
    {
        var shown = Shown(bench, scanned.Jar);
        return Answer.Of(shown.Screen, tell => Json(bench, scanned, tell), c => c.JarAnswerJson, shown.Warnings);
    }

    /// <summary>The same for a program.</summary>
    internal static JarAnswerJson Json(Workbench bench, Scanned scanned, Tell tell) => Json(bench, scanned.Jar, history: true, tell) with { Scanned = ScannedJson.Of(scanned) };

    /// <summary>After a reprint.</summary>
    internal static Answer Labelled(Workbench bench, JarOutcome outcome) =>
        With(bench, outcome, MovedRow(Begin(bench, outcome.History.Jar).Rows([.. Label(outcome.Label)]), outcome).Next("jar", ("jar", $"{outcome.History.Jar.Number.Value}")), history: false);

    /// <summary>A jar looked up.</summary>
    internal static Answer Shown(Workbench bench, JarOutcome outcome)
    {
        var jar = outcome.History.Jar;
        var screen = Begin(bench, jar)
            .Rows([("state", State(bench, jar)), ("shelf", jar.Shelf), .. Recipe(bench, jar), .. jar.OnShelf ? Keeping(jar) : [], ("job", jar.Job), ("by", jar.By), ("note", jar.Note)])
            .Gap().Rows(HazardRows(bench, outcome.Hazards));
        if (jar.OnShelf && JarTables.Thinning(jar) is { Count: > 1 } thinning)
        {
            screen.Gap().Table([thinning[0][0], .. thinning[0].Skip(1).Select(name => " " + name)], [.. thinning.Skip(1)]);
        }

        screen.Gap().Rows(HistoryWords.All([.. outcome.History.Events.Select(e => e.Event)]).Select(row => (row.Day, (string?)row.What)));
        return With(bench, outcome, jar.OnShelf ? screen.Next("label", ("jar", $"{jar.Number.Value}")) : screen.Next("shelf"), history: true);
    }

    private static Screen Begin(Workbench bench, Jar jar) =>
        new Screen().Title($"Jar {jar.Number} · {JarTitle.Of(jar, bench.Catalog)}").Gap();

    private static IEnumerable<(string, string?)> Recipe(Workbench bench, Jar jar) =>
        RecipeRows.Of(jar.Contents, bench.Catalog, bench.Metric);

    private static Screen Ahead(Workbench bench, Screen screen, Jar jar) =>
        bench.DryRun ? screen.InEarnest() : screen.Next("jar", ("jar", $"{jar.Number.Value}"));

    private static string State(Workbench bench, Jar jar) => jar.OnShelf ? StateWords.Of(jar.StateAt(bench.Now)) : jar.Gone;

    /// <summary>What is in a jar, as it is said of it.</summary>
    internal static string Holds(Workbench bench, Jar jar) => jar.Contents.Cut is { } cut
        ? $"{BenchAmount.Both(jar.Contents.Liquid, bench.Metric)} of {CutWords.Of(cut)}"
        : "nothing more";

    private static IEnumerable<(string, string?)> Keeping(Jar jar) =>
        [("ready", $"≈ {DateWords.Of(jar.Dates.Ready)}; swirl it every hour or two until then"), .. Dates(jar)];

    private static IEnumerable<(string, string?)> Dates(Jar jar) =>
    [
        .. FailureWords.Rows(jar),
        ("stands on", jar.Dates.Basis is null || jar.FailedOn is not null ? null : KeepingWords.Basis(jar.Dates)),
        (jar.Doubts.Shortened ? "by its flakes now" : "by tests now", jar.Learned is { } now ? $"{DateWords.Estimate(now.UseBy)}; a label printed before is out of date" : null),
    ];

    private static IEnumerable<(string, string?)> Label(WrittenLabel? label) => label is null
        ? []
        : [("label", $"{label.File}"), ("on", $"{Place(label)}; print at actual size"), .. RuleRows(label)];

    private static string Place(WrittenLabel label) => $"{label.Event.Sheet}, place {label.Event.Position}";

    private static IEnumerable<(string, string?)> RuleRows(WrittenLabel label) =>
    [
        ("meets", label.Rules.Satisfies.Count == 0 ? null : string.Join("; ", label.Rules.Satisfies)),
        .. ListedRows.Of("not met", label.Rules.Lacks),
    ];

    // A card sends nobody to the card.
    private static Screen MovedRow(Screen screen, JarOutcome outcome)
    {
        var jar = ("jar", $"{outcome.History.Jar.Number.Value}");
        return outcome.Label?.Rules.MovedToCard.Count switch
        {
            null or 0 => screen,
            var moved when outcome.Label.Event.Design == Cards.Design => screen.And(Cards.LeftOut, Message.Of($"{moved} that had no room; {Screen.Step("jar", jar)} tells the thinning, the whole history, job and note")),
            var moved => screen.And("on the card", Message.Of($"{moved} that had no room here; {Screen.Step("card", jar)} prints them")),
        };
    }

    private static IEnumerable<(string, string?)> HazardRows(Workbench bench, HazardAssessment hazards) =>
        DangerRows.Of(bench, hazards);

    private static Answer With(Workbench bench, JarOutcome outcome, Screen screen, bool history) =>
        Answer.Of(screen, tell => Json(bench, outcome, history, tell), c => c.JarAnswerJson, outcome.Cautions);

    private static JarAnswerJson Json(Workbench bench, JarOutcome outcome, bool history, Tell tell)
    {
        var jar = outcome.History.Jar;
        var label = outcome.Label;
        return new JarAnswerJson(
            JarJson.Of(jar, bench.Now),
            RecipeJson.Of(jar.Contents, bench.Catalog),
            outcome.Step is { } step ? StepJson.Of(step) : null,
            HazardsJson.Of(outcome.Hazards, bench.Settings.PoisonCenter),
            label is null ? null : LabelJson.Of(label),
            history ? History(outcome.History) : null,
            tell(outcome.Cautions))
        {
            Waste = outcome.Step is Discarded ? WasteWords.OfWhatIsLeft : null,
            Also = outcome.Also.Count > 0 ? [.. outcome.Also.Select(one => JarJson.Of(one, bench.Now))] : null,
            Bags = outcome.PutBack.OfType<Bag>().ToArray() is { Length: > 0 } bags ? [.. bags.Select(BagJson.Of)] : null,
            Bottles = outcome.PutBack.OfType<Bottle>().ToArray() is { Length: > 0 } bottles ? [.. bottles.Select(BottleJson.Of)] : null,
            Made = outcome.Made.Count > 0 ? [.. outcome.Made.Select(m => Json(bench, m, history: false, tell))] : null,
        };
    }

    private static JsonNode[] History(JarHistory history)
    {
        var taken = JarLife.TakenBack([.. history.Events.Select(e => e.Event)]);
        return
        [
            .. history.Events.Select((e, place) =>
            {
                var item = JsonNode.Parse(JarEventJson.Write(e.Event))!.AsObject();
                item["revision"] = e.Revision;
                if (taken[place])
                {
                    item["takenBack"] = true;
                }

                return item;
            }),
        ];
    }
}

/// <summary>What every command about one jar says to a program.</summary>
internal sealed record JarAnswerJson(
    JarJson Jar,
    RecipeJson? Recipe,
    JsonNode? Step,
    HazardsJson Hazards,
    LabelJson? Label,
    IReadOnlyList<JsonNode>? History,
    IReadOnlyList<Problem> Warnings)
{
    /// <summary>Where it goes when it was thrown away; else left out.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Waste { get; init; }

    /// <summary>Other jars that changed with it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<JarJson>? Also { get; init; }

    /// <summary>Bags that flakes were put back into.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<BagJson>? Bags { get; init; }

    /// <summary>Bottles that alcohol was put back into.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<BottleJson>? Bottles { get; init; }

    /// <summary>New jars that came of it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<JarAnswerJson>? Made { get; init; }

    /// <summary>The label that was scanned.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ScannedJson? Scanned { get; init; }
}

/// <summary>A label that was written.</summary>
internal sealed record LabelJson(
    string File,
    string Design,
    string Sheet,
    int Position,
    string Payload,
    IReadOnlyList<string> Satisfies,
    IReadOnlyList<string> Lacks,
    IReadOnlyList<string> MovedToCard)
{
    internal static LabelJson Of(WrittenLabel label) => new(
        label.File, label.Event.Design, label.Event.Sheet, label.Event.Position, label.Event.Payload, label.Rules.Satisfies, label.Rules.Lacks, label.Rules.MovedToCard);
}

/// <summary>A scanned label for a program; the revision is null when only a jar's number was typed.</summary>
internal sealed record ScannedJson(string Payload, int? Revision, bool OutOfDate)
{
    internal static ScannedJson Of(Scanned scanned) => new(scanned.Payload, scanned.Revision, scanned.OutOfDate);
}
