using JarLabel.Core.Reminders;

namespace JarLabel.Operations.Planning;

/// <summary>Plans what to mix for a job. It changes no jar; only a calendar is written where one is wanted.</summary>
public static class PlanJob
{
    /// <summary>How badly air mixes in a shop, as the wall notice has it.</summary>
    private const double MixingFactor = 3;

    /// <summary>The plan, or every reason why not.</summary>
    public static Result<PlannedJob> Do(Workbench bench, PlanRequest request)
    {
        return request.Calendar is null
            ? LedgerAccess.Read(bench, view => Plan(bench, view, request))
            : LedgerAccess.Record(bench, step => Plan(bench, step, request).Then<PlannedJob>(planned =>
            {
                step.Write(bench, request.Calendar, CalendarFile.Write(Reminders(bench, step, planned), bench.OnClock));
                return planned;
            }));
    }

    private static Result<PlannedJob> Plan(Workbench bench, LedgerView view, PlanRequest request) =>
        Bags(view, request).Then(bags => Bottles(view, request).Then(bottles => ShopLives.Of(bench, view).Then(lives => JobPlanner.Solve(
            request.Lines,
            Jars(bench, view, lives, request),
            Mass.FromGrams(bags.Sum(b => b.Left.Grams)),
            Volume.FromMilliliters(bottles.Sum(b => b.Left.Milliliters)),
            request.Solvent.DensityAt(request.Bench ?? Warmth.Reference)).Then(plan => Air(bench, request, plan).Then<PlannedJob>(air =>
            {
                var fresh = Fresh(bench, lives, request);
                return new PlannedJob(request, plan, fresh, air, PlanSteps.Of(plan, request.Grade.Id, request.Solvent.Id, bags, bottles, fresh.Ready, bench.Now, bench.Metric), [.. AirCautions.Of(air), .. Doubts(bench, view, plan)]);
            })))));

    private static Result<IReadOnlyList<Bag>> Bags(LedgerView view, PlanRequest request) =>
        SupplyBook.Bags(view).Then(bags => Result<IReadOnlyList<Bag>>.Of([.. bags.Where(b => b.OnHand && !b.Unfit && b.Grade == request.Grade.Id)]));

    private static Result<IReadOnlyList<Bottle>> Bottles(LedgerView view, PlanRequest request) =>
        SupplyBook.Bottles(view).Then(bottles => Result<IReadOnlyList<Bottle>>.Of([.. bottles.Where(b => b.OnHand && b.Solvent == request.Solvent.Id)]));

    private static Result<AirAssessment> Air(Workbench bench, PlanRequest request, JobPlan plan) =>
        AirQuestion.Of(plan.WorstCoat, request.Room, request.Over, mixingFactor: MixingFactor)
            .Then(question => RoomAirAssessor.Assess(request.Solvent, question, bench.Rules));

    private static KeepingDates Fresh(Workbench bench, LearnedLives lives, PlanRequest request) => LearnedDates.Fresh(
        lives,
        bench.Catalog.Keeping.Find(request.Grade.Keeping)!,
        request.Solvent.Id,
        bench.Settings.Shelves[0].Temperature,
        months => KeepingEstimate.Of(
            bench.Now,
            bench.Catalog.Keeping.Find(request.Grade.Keeping)!,
            bench.Catalog.Forms.Find(request.Grade.Form)!,
            request.Bench ?? Warmth.Reference,
            bench.Settings.Shelves[0].Temperature,
            null,
            bench.Keeping,
            months));

    /// <summary>The jars of that grade and alcohol that may still be used, by the more careful of the dates on record and those of the shop's
    /// tests. Only those are read; the rest is passed over in the list.</summary>
    private static IEnumerable<ShelfJar> Jars(Workbench bench, LedgerView view, LearnedLives lives, PlanRequest request)
    {
        var doubted = FlakesInDoubt.Among(bench, view).Select(doubt => doubt.Jar.Value).ToHashSet();
        var dating = new JarDating(bench, view, lives);
        foreach (var entry in view.Standing().Where(e => e.Grade == request.Grade.Id && e.Solvent == request.Solvent.Id && e.Cut is not null))
        {
            var learned = lives.SaysMore && JarHistory.Of(JarNumber.From(entry.Number), view.EventsOf(Subject.Jar(entry.Number))).TryGet(out var history, out _)
                ? LearnedDates.Mark(dating, history).Learned
                : null;
            if (ShelfList.StateOf(entry, learned, bench.Now) is var state and (JarState.Good or JarState.Test or JarState.Dissolving))
            {
                var useBy = learned is { } now && now.UseBy < entry.UseBy ? now.UseBy : entry.UseBy;
                yield return new ShelfJar(JarNumber.From(entry.Number), entry.Cut!.Value, entry.Liquid, useBy, state == JarState.Test || doubted.Contains(entry.Number), entry.Ready);
            }
        }
    }

    private static IReadOnlyList<Problem> Doubts(Workbench bench, LedgerView view, JobPlan plan) =>
        FlakesInDoubt.Of(bench, view, [.. plan.Serves.Select(serves => view.Jar(serves.Jar.Number.Value)).OfType<JarEntry>()]);

    private static IEnumerable<Reminder> Reminders(Workbench bench, LedgerView view, PlannedJob planned) => planned.Plan.Batches.SelectMany(b =>
        JarReminders.Of(view.LedgerId, null, 1, $"{CutWords.Of(b.Recipe.Cut)} of {planned.Request.Grade.Id}", planned.Fresh, bench.Now));
}

/// <summary>A job, planned. Nothing is recorded by it.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Plan">What it takes and where that comes from.</param>
/// <param name="Fresh">The dates of a batch mixed now.</param>
/// <param name="Air">What the thirstiest coat does to the room's air.</param>
/// <param name="Steps">What to do, in order.</param>
/// <param name="Cautions">What should be known.</param>
public sealed record PlannedJob(
    PlanRequest Request, JobPlan Plan, KeepingDates Fresh, AirAssessment Air, IReadOnlyList<PlanStep> Steps, IReadOnlyList<Problem> Cautions);
