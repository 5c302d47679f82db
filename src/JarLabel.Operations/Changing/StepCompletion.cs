namespace JarLabel.Operations.Changing;

/// <summary>The end of every step at the bench: the jar's hazards as it is then, its cautions, and its label where the old one is no longer
/// true.</summary>
internal sealed class StepCompletion(Workbench bench, LabelWriter labels)
{
    internal static Result<StepCompletion> Open(Workbench bench) => LabelWriter.Open(bench).Then<StepCompletion>(labels => new StepCompletion(bench, labels));

    /// <summary>Adds the event and ends the step for its jar.</summary>
    /// <param name="recorder">The jar.</param>
    /// <param name="happened">The event.</param>
    /// <param name="choice">The label wanted where one is due; null for none.</param>
    /// <param name="first">Cautions from before the event.</param>
    /// <param name="goesOn">True when more jars change in the same step, so that the shelf is looked at in its end.</param>
    internal Result<JarOutcome> Record(Recorder recorder, JarEvent happened, LabelChoice? choice, IReadOnlyList<Problem>? first = null, bool goesOn = false)
    {
        if (!StockWithdrawal.Take(recorder.Step, recorder.Jar, happened).TryGet(out var ofStock, out var faults) || !recorder.Append(happened).TryGet(out var history, out faults))
        {
            return faults;
        }

        if (happened is Undone && !recorder.DatedAgain(bench).TryGet(out history, out faults))
        {
            return faults;
        }

        // A jar that gets a label gets the sooner dates that the shop's tests say on it; a fresh batch has them already.
        var dated = choice is not null && happened.ChangesContents && happened is not Mixed ? recorder.Redate(bench, later: false) : recorder.Marked(bench);
        if (!dated.TryGet(out history, out faults))
        {
            return faults;
        }

        var hazards = JarWords.Hazards(bench, history.Jar);
        WrittenLabel? label = null;
        if (choice is not null && (happened.ChangesContents || recorder.Redated) && history.Jar.OnShelf && !labels.Write(recorder, history, hazards, choice).TryGet(out label, out faults))
        {
            return faults;
        }

        var outcome = new JarOutcome(history, hazards, label, []) { Step = happened };
        return outcome with { Cautions = [.. Cautions(recorder, outcome, [.. first ?? [], .. ofStock]).Concat(goesOn ? [] : OfShelf(recorder, outcome)).Concat(label is null ? [] : LabelCautions.Of(history)).Distinct()] };
    }

    /// <summary>The jar as it is, where there is nothing to record.</summary>
    internal Result<JarOutcome> Nothing(Recorder recorder, Problem why) =>
        recorder.Marked(bench).Then<JarOutcome>(history => new JarOutcome(history, JarWords.Hazards(bench, history.Jar), null, [why, .. history.Jar.Doubts.Cautions(history.Jar.Number)]));

    /// <summary>What to say of the shelves when several jars changed in one step.</summary>
    internal IReadOnlyList<Problem> OfShelves(LedgerStep step, IReadOnlyList<Jar> changed, IReadOnlyList<Jar> made) =>
        [.. made.Select(jar => jar.Shelf).Distinct().SelectMany(shelf => ShelfCautions.With(bench, step, shelf, [.. changed, .. made]))];

    private IEnumerable<Problem> Cautions(Recorder recorder, JarOutcome outcome, IReadOnlyList<Problem> first) =>
    [
        .. recorder.Step.Cautions,
        .. bench.ClockBehind is { } clock ? [clock] : Array.Empty<Problem>(),
        .. bench.Slips,
        .. outcome.History.Jar.OnShelf ? first : first.Where(caution => !caution.Text.Remedies.Any(step => step.Verb is "discard" or "test")),
        .. outcome.History.Jar.TakenBack is null ? JarCautions.Of(bench, outcome.History.Jar, outcome.Hazards) : [],
        .. LearnedDates.Cautions(outcome.History.Jar, outcome.History.IsLabelled),
        .. outcome.History.Jar.FailedOn is null && !IsToTest(outcome) ? outcome.History.Jar.Doubts.Cautions(outcome.History.Jar.Number) : BatchCautions.OfState(outcome.History.Jar, bench.Now),
        .. TestCautions.Of(outcome.History, outcome.Step!),
        .. TestCautions.OfLearning(bench, recorder.Step, outcome.History, outcome.Step!),
    ];

    /// <summary>True for a jar that was just tested and is to be tested again before its next use, and for one past its use-by that nothing was taken from.</summary>
    private bool IsToTest(JarOutcome outcome) => outcome.Step switch
    {
        Tested => outcome.History.Jar.StateAt(bench.Now) is JarState.Test or JarState.Past,
        Moved or Noted => outcome.History.Jar.StateAt(bench.Now) == JarState.Past,
        _ => false,
    };

    private IEnumerable<Problem> OfShelf(Recorder recorder, JarOutcome outcome) =>
        outcome.Step is IBeginning or Thinned or Moved ? ShelfCautions.With(bench, recorder.Step, outcome) : [];
}

/// <summary>What goes through but should be known of a jar as it is now: its liquid, its glass, its flakes, where it may stand.</summary>
internal static class JarCautions
{
    internal static Problem[] Of(Workbench bench, Jar jar, HazardAssessment hazards) =>
    [
        .. OfLiquid(bench, jar).Concat(OfFlakes(bench, jar)).Concat(BatchCautions.OfLid(hazards)).Concat(StorageCautions.Of(jar, hazards, bench.Catalog)).Distinct(),
    ];

    private static IEnumerable<Problem> OfLiquid(Workbench bench, Jar jar) => jar.Contents.Recipe is { } recipe
        ? jar.Contents.Solvents.SelectMany(s => BatchCautions.OfLiquid(recipe, bench.Catalog.SolventOf(s.Solvent)))
        : [];

    private static IEnumerable<Problem> OfFlakes(Workbench bench, Jar jar) => jar.Contents.Resins.SelectMany(r =>
    {
        var grade = bench.Catalog.GradeOf(r.Grade);
        return BatchCautions.OfJar(jar.Container, grade, bench.Catalog.Keeping.Find(grade.Keeping)!, r.FlakeDate, DateOnly.FromDateTime(jar.MixedAt), r.Cloudy);
    });
}

/// <summary>The storage rules that a container passes, as cautions: they hold in workplaces, and the local fire code comes first.</summary>
internal static class StorageCautions
{
    /// <summary>Those that a jar on a shelf passes.</summary>
    internal static IEnumerable<Problem> Of(Jar jar, HazardAssessment hazards, ShopCatalog catalog) =>
        jar.OnShelf ? PassedBy(jar.Container, jar.Contents.Liquid, hazards, catalog).Select(OperationProblems.StoragePassed) : [];

    /// <summary>Those that a bottle passes whose material is known.</summary>
    internal static IEnumerable<Problem> Of(Bottle bottle, HazardAssessment hazards, ShopCatalog catalog) => PassedBy(bottle, hazards, catalog).Select(OperationProblems.StoragePassed);

    /// <summary>Those that any of some jars and bottles pass, each once with what passes it.</summary>
    internal static IEnumerable<Problem> OfAll(Workbench bench, IEnumerable<Jar> jars, IEnumerable<Bottle> bottles) =>
        jars.SelectMany(jar => PassedBy(jar.Container, jar.Contents.Liquid, JarWords.Hazards(bench, jar), bench.Catalog).Select(limit => (Limit: limit, Of: $"jar {jar.Number}")))
            .Concat(bottles.SelectMany(bottle => PassedBy(bottle, SupplyWords.Hazards(bench, bottle), bench.Catalog).Select(limit => (Limit: limit, Of: $"bottle {bottle.Number}"))))
            .GroupBy(passed => passed.Limit, passed => passed.Of)
            .Select(passed => OperationProblems.StoragePassedBy(passed.Key, [.. passed]));

    private static IEnumerable<StorageLimit> PassedBy(Bottle bottle, HazardAssessment hazards, ShopCatalog catalog) =>
        bottle.Material is { } material ? PassedBy(new Container(material, bottle.Bought), bottle.Left, hazards, catalog) : [];

    /// <param name="container">The container; where nobody said how much it can hold, it holds at least what is in it.</param>
    /// <param name="liquid">What is in it.</param>
    /// <param name="hazards">How dangerous that is.</param>
    /// <param name="catalog">Where the limits are.</param>
    private static IReadOnlyList<StorageLimit> PassedBy(Container container, Volume liquid, HazardAssessment hazards, ShopCatalog catalog) =>
        StorageAdvice.PassedBy(container.Holds is { } holds && holds > liquid ? holds : liquid, container.Material.Word(), hazards.FlammableCategory, hazards.Rules, catalog);
}
