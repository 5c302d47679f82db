using JarLabel.Core.Reminders;

namespace JarLabel.Operations.Planning;

/// <summary>Plans what to mix for a job. It changes no jar; only a calendar is written where one is wanted.</summary>
public static class PlanJob
{
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

    private static Result<PlannedJob> Plan(Workbench bench, LedgerView view, PlanRequest request)
    {
        if (!Bags(view, request).TryGet(out var bags, out var faults) || !Bottles(view, request).TryGet(out var bottles, out faults) || !ShopLives.Of(bench, view).TryGet(out var lives, out faults))
        {
            return faults;
        }

        JarEntry[] standing = [.. view.Standing().Where(e => e.Flakes == request.Grade.Id && e.Alcohol == request.Solvent.Id && e.Cut is not null)];
        if (!ShelfKnowledge.Of(new JarDating(bench, view, lives), view, standing).TryGet(out var known, out faults))
        {
            return faults;
        }

        var solved = JobPlanner.Solve(
            request.Lines,
            Jars(bench, standing, known),
            Mass.FromGrams(bags.Sum(b => b.Left.Grams)),
            Volume.FromMilliliters(bottles.Sum(b => b.Left.Milliliters)),
            request.Solvent.DensityAt(request.Bench ?? Warmth.Reference));
        if (!solved.TryGet(out var plan, out faults) || !Air(bench, request, plan).TryGet(out var air, out faults))
        {
            return faults;
        }

        Bag?[] from = [.. BatchDraw.Of(plan, bags, bottles).Select(draw => draw.Bag).Distinct()];
        var fresh = (from.Length == 0 ? [null] : from).Select(bag => Fresh(bench, lives, request, plan, bag)).Aggregate((one, other) => one.Shortest(other));
        var steps = PlanSteps.Of(plan, request.Grade.Id, request.Solvent.Id, bags, bottles, fresh.Ready, bench.Now, bench.Metric);
        var doubts = plan.Serves.Select(serves => (serves.Jar.Number, known.DoubtsOf(serves.Jar.Number.Value))).DistinctBy(doubt => doubt.Number);
        return new PlannedJob(request, plan, fresh, air, steps, [.. AirCautions.Of(air), .. JarDoubts.Cautions(doubts), .. Slow(view, plan), .. from.OfType<Bag>().SelectMany(bag => OfFlakes(bench, request, bag)).DistinctBy(caution => caution.Code)]);
    }

    private static IReadOnlyList<Problem> OfFlakes(Workbench bench, PlanRequest request, Bag bag) =>
        BatchCautions.OfFlakes(request.Grade, bench.Catalog.Keeping.Find(request.Grade.Keeping)!, bag.Made, DateOnly.FromDateTime(bench.Now), bag.Cloudy);

    /// <summary>That a jar which dried slowly when it was last tested is none for a top coat.</summary>
    private static IEnumerable<Problem> Slow(LedgerView view, JobPlan plan) => plan.Serves.Select(serves => serves.Jar.Number).Distinct()
        .Where(jar => JarHistory.Of(jar, view.EventsOf(Subject.Jar(jar.Value))).TryGet(out var history, out _) && history.Jar.Test is { Slow: true })
        .Select(MixingCautions.DriedSlowly);

    private static Result<IReadOnlyList<Bag>> Bags(LedgerView view, PlanRequest request) =>
        SupplyBook.Bags(view).Then(bags => Result<IReadOnlyList<Bag>>.Of([.. bags.Where(b => b.OnHand && !b.Unfit && b.Grade == request.Grade.Id)]));

    private static Result<IReadOnlyList<Bottle>> Bottles(LedgerView view, PlanRequest request) =>
        SupplyBook.Bottles(view).Then(bottles => Result<IReadOnlyList<Bottle>>.Of([.. bottles.Where(b => b.OnHand && b.Solvent == request.Solvent.Id)]));

    private static Result<AirAssessment> Air(Workbench bench, PlanRequest request, JobPlan plan) =>
        AirQuestion.Of(plan.WorstCoat, request.Room, request.Over, mixingFactor: AirQuestion.UsualMixingFactor)
            .Then(question => RoomAirAssessor.Assess(request.Solvent, question, bench.Rules));

    private static KeepingDates Fresh(Workbench bench, LearnedLives lives, PlanRequest request, JobPlan plan, Bag? bag)
    {
        var form = bench.Catalog.Forms.Find(request.Grade.Form)!;
        return LearnedDates.Fresh(
            lives,
            bench.Catalog.Keeping.Find(request.Grade.Keeping)!,
            request.Solvent.Id,
            bench.Settings.Shelves[0].Temperature,
            months => KeepingEstimate.Of(
                bench.Now,
                bench.Catalog.Keeping.Find(request.Grade.Keeping)!,
                plan.Strongest is { } cut ? form.In(cut) : form,
                request.Bench ?? Warmth.Reference,
                bench.Settings.Shelves[0].Temperature,
                bag?.Made,
                bench.Keeping,
                months,
                bag?.Cloudy == true));
    }

    /// <summary>The jars that may still be used, by the more careful of the dates on record and those of the shop's tests.</summary>
    private static IEnumerable<ShelfJar> Jars(Workbench bench, IEnumerable<JarEntry> standing, ShelfKnowledge known)
    {
        foreach (var jar in standing)
        {
            if (known.StateOf(jar, bench.Now) is var state and (JarState.Good or JarState.Test or JarState.Dissolving))
            {
                yield return new ShelfJar(JarNumber.From(jar.Number), jar.Cut!.Value, jar.Liquid, known.UseBy(jar), state == JarState.Test || known.DoubtsOf(jar.Number).Any || jar.Test is { Slow: true }, jar.Ready) { Slow = jar.Test is { Slow: true } };
            }
        }
    }

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
