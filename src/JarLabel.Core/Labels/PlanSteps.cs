namespace JarLabel.Core.Labels;

/// <summary>A plan as things to do in order, with the commands that record them and print their labels.</summary>
public static class PlanSteps
{
    /// <summary>The steps: try what is in doubt first, because all amounts hang on it; mix next, because flakes take time; then fetch and thin; then work.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="grade">The grade's id.</param>
    /// <param name="solvent">The alcohol's id.</param>
    /// <param name="bags">The bags of that grade on record.</param>
    /// <param name="bottles">The bottles of that alcohol on record.</param>
    /// <param name="ready">When a batch mixed now should be dissolved.</param>
    /// <param name="now">The moment.</param>
    /// <param name="metric">True for metric amounts first.</param>
    public static IReadOnlyList<PlanStep> Of(
        JobPlan plan, string grade, string solvent, IReadOnlyList<Bag> bags, IReadOnlyList<Bottle> bottles, DateTime ready, DateTime now, bool metric)
    {
        return
        [
            .. plan.Serves.Where(s => s.Jar.TestFirst).DistinctBy(s => s.Jar.Number).SelectMany(s => Try(s.Jar, now)),
            .. plan.FlakesMissing > Mass.Zero ? [new PlanStep($"buy {BenchAmount.Both(plan.FlakesMissing, metric)} of {grade} flakes: the bags on record do not hold enough")] : Array.Empty<PlanStep>(),
            .. plan.AlcoholMissing > Volume.Zero ? [new PlanStep($"buy {BenchAmount.Both(plan.AlcoholMissing, metric)} of {solvent}: the bottles on record do not hold enough")] : Array.Empty<PlanStep>(),
            .. Mixes(plan, grade, solvent, bags, bottles, ready, metric),
            .. plan.Serves.Select(s => Fetch(s, now, metric)),
            .. Measured(plan, bottles, metric),
            .. plan.Lines.Select((l, i) => Coat(l, i, metric)),
        ];
    }

    /// <summary>Drops on glass first, and how to say either way how they dried.</summary>
    private static IEnumerable<PlanStep> Try(ShelfJar jar, DateTime now)
    {
        var slow = jar.Slow ? "; it dried slowly last time: keep it for small or inner work, and mix anew for a top coat" : "";
        var dissolved = jar.Ready > now ? $" once it is dissolved, ≈ {DateWords.Of(jar.Ready)}," : "";
        yield return new($"try a few drops of jar {jar.Number} on glass{dissolved} before you use it{slow}. If they dry hard, record it; if hard but slowly, write slow instead of pass", new Remedy("test", Jar(jar), new InputName("verdict", "pass")));
        yield return new($"if the drops of jar {jar.Number} stay soft or tacky, record that instead, do not use the jar, and plan again", new Remedy("test", Jar(jar), new InputName("verdict", "fail")));
    }

    /// <summary>What was poured on top of liquid out of a jar leaves no bottle on record: measure it afterwards.</summary>
    private static IEnumerable<PlanStep> Measured(JobPlan plan, IReadOnlyList<Bottle> bottles, bool metric)
    {
        var poured = Volume.FromMilliliters(plan.Serves.Sum(s => s.Add.Milliliters));
        var inBatches = Volume.FromMilliliters(plan.Batches.Sum(b => b.Recipe.Pour.Milliliters));
        if (poured <= Volume.Zero || bottles.Count == 0)
        {
            yield break;
        }

        var words = $"measure what is left in the bottle that the {BenchAmount.Both(poured, metric)} of alcohol came from: no line above counts it";
        yield return bottles is [var bottle] && bottle.Left - poured - inBatches is var left && left >= BenchAmount.LeastVolume
            ? new($"{words}. Write what you measured", new Remedy("bottle left", new InputName("bottle", Say($"{bottle.Number.Value}")), new InputName("volume", BenchAmount.Metric(left))))
            : new(words);
    }

    /// <summary>Each batch with what it is worked from; what is left in bottles that are emptied together is recorded after it.</summary>
    private static IEnumerable<PlanStep> Mixes(JobPlan plan, string grade, string solvent, IReadOnlyList<Bag> bags, IReadOnlyList<Bottle> bottles, DateTime ready, bool metric)
    {
        foreach (var draw in BatchDraw.Of(plan, bags, bottles))
        {
            yield return Mix(draw.Recipe, [new("grade", grade), .. Named("bag", draw.Bag?.Number)], [new("solvent", solvent), .. Named("bottle", draw.Bottle?.Number)], ready, metric);
            foreach (var (bottle, taken, rest) in draw.Poured)
            {
                yield return new(
                    $"no bottle alone holds enough: take {BenchAmount.Both(taken, metric)} of it from bottle {bottle.Number}, and record what is left there, because the line above does not count it",
                    new Remedy("bottle left", new InputName("bottle", Say($"{bottle.Number.Value}")), new InputName("volume", BenchAmount.IsNothing(rest) ? "empty" : BenchAmount.Metric(rest))));
            }
        }
    }

    private static InputName[] Named(string input, SupplyNumber? number) => number is { } named ? [new(input, Say($"{named.Value}"))] : [];

    private static InputName Jar(ShelfJar jar) => new("jar", Say($"{jar.Number.Value}"));

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static PlanStep Mix(Recipe recipe, InputName[] flakes, InputName[] alcohol, DateTime ready, bool metric) => new(
        $"mix {CutWords.Of(recipe.Cut)}: pour {BenchAmount.Both(recipe.Pour, metric)}, add {BenchAmount.Both(recipe.Flakes, metric)} of flakes, makes {BenchAmount.Both(recipe.Makes, metric)}; ready ≈ {DateWords.Of(ready)}, swirled every hour or two; never warmed over a flame",
        new Remedy("mix", [.. flakes, new("cut", Say($"{recipe.Cut.PoundsPerUsGallon:0.##}")), new("pour", Say($"{Down(recipe.Pour.Milliliters):0.#} mL")), .. alcohol]));

    /// <summary>To a tenth, never more than there is: what is typed as it stands fits what it is taken from.</summary>
    private static double Down(double milliliters) => Math.Floor((milliliters * 10) + 1e-6) / 10;

    private static PlanStep Fetch(JarServes serves, DateTime now, bool metric)
    {
        var amount = BenchAmount.Both(serves.Take, metric);
        var step = new Remedy("use", Jar(serves.Jar), new InputName("volume", BenchAmount.Metric(serves.Take)));
        var when = serves.Jar.Ready > now ? $"; it should be dissolved ≈ {DateWords.Of(serves.Jar.Ready)}" : "";
        return serves.Add > Volume.Zero
            ? new($"take {amount} from jar {serves.Jar.Number} ({CutWords.Of(serves.Jar.Cut)}) into {VesselWords.For(serves.Gives, metric)}, add {BenchAmount.Both(serves.Add, metric)} of alcohol: {BenchAmount.Both(serves.Gives, metric)} of {CutWords.Of(serves.To)}; {VesselWords.Care}{when}", step)
            : new($"take {amount} from jar {serves.Jar.Number} as it is, {CutWords.Of(serves.Jar.Cut)}, into {VesselWords.For(serves.Take, metric)}; {VesselWords.Care}{when}", step);
    }

    private static PlanStep Coat(JobLine line, int place, bool metric) => new(string.Create(
        CultureInfo.InvariantCulture,
        $"{line.Kind.Word} {line.Coats} coat{(line.Coats == 1 ? "" : "s")} of {CutWords.Of(line.Cut)}, line {place + 1}: {BenchAmount.Both(line.Coverage.Liquid / line.Coats, metric)} a coat, dry film {line.Coverage.DryCoat.Micrometers:0.#} µm a coat"));
}
