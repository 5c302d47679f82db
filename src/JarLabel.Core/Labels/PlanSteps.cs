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
            .. plan.Serves.Where(s => s.Jar.TestFirst).DistinctBy(s => s.Jar.Number).SelectMany(s => Try(s.Jar)),
            .. plan.FlakesMissing > Mass.Zero ? [new PlanStep($"buy {BenchAmount.Both(plan.FlakesMissing, metric)} of {grade} flakes: the bags on record do not hold enough")] : Array.Empty<PlanStep>(),
            .. plan.AlcoholMissing > Volume.Zero ? [new PlanStep($"buy {BenchAmount.Both(plan.AlcoholMissing, metric)} of {solvent}: the bottles on record do not hold enough")] : Array.Empty<PlanStep>(),
            .. Mixes(plan, grade, solvent, bags, bottles, ready, metric),
            .. plan.Serves.Select(s => Fetch(s, now, metric)),
            .. Measured(plan, bottles, metric),
            .. plan.Lines.Select((l, i) => Coat(l, i, metric)),
        ];
    }

    /// <summary>Drops on glass first, and how to say either way how they dried.</summary>
    private static IEnumerable<PlanStep> Try(ShelfJar jar)
    {
        var slow = jar.Slow ? "; it dried slowly last time: keep it for small or inner work, and mix anew for a top coat" : "";
        yield return new($"try a few drops of jar {jar.Number} on glass before you use it{slow}. If they dry hard, record it; if hard but slowly, write slow instead of pass", new Remedy("test", Jar(jar), new InputName("verdict", "pass")));
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

    /// <summary>Each batch with what it is worked from: the bag and the bottle that came first and still hold enough after the batches before it. Where none does alone,
    /// those that came first are emptied, and what is left in them is recorded after it.</summary>
    private static IEnumerable<PlanStep> Mixes(JobPlan plan, string grade, string solvent, IReadOnlyList<Bag> bags, IReadOnlyList<Bottle> bottles, DateTime ready, bool metric)
    {
        var (flakes, alcohol) = (new Drawn<Bag>(bags, "weight", metric), new Drawn<Bottle>(bottles, "volume", metric));
        foreach (var batch in plan.Batches)
        {
            var (bag, restOfBags) = flakes.Take(batch.Recipe.Flakes.Grams);
            var (bottle, restOfBottles) = alcohol.Take(batch.Recipe.Pour.Milliliters);
            yield return Mix(batch, [new("grade", grade), .. Named("bag", bag?.Number)], [new("solvent", solvent), .. Named("bottle", bottle?.Number)], ready, metric);
            foreach (var rest in (PlanStep[])[.. restOfBags, .. restOfBottles])
            {
                yield return rest;
            }
        }
    }

    /// <summary>What bags, or bottles, still hold while batches draw from them.</summary>
    private sealed class Drawn<T>(IReadOnlyList<T> supplies, string amount, bool metric)
        where T : Supply
    {
        private readonly Dictionary<SupplyNumber, double> left = supplies.ToDictionary(supply => supply.Number, supply => supply.Rest);

        /// <summary>The one that holds enough alone; else how it is taken from several, and recorded.</summary>
        internal (T? Alone, IReadOnlyList<PlanStep> Steps) Take(double needed)
        {
            if (supplies.FirstOrDefault(supply => left[supply.Number] >= needed) is { } alone)
            {
                left[alone.Number] -= needed;
                return (alone, []);
            }

            var steps = new List<PlanStep>();
            foreach (var supply in supplies.Where(supply => left[supply.Number] > 0))
            {
                var taken = Math.Min(needed, left[supply.Number]);
                if (taken <= 0)
                {
                    break;
                }

                (needed, left[supply.Number]) = (needed - taken, left[supply.Number] - taken);
                steps.Add(Record(supply, taken, left[supply.Number]));
            }

            return (null, steps);
        }

        private PlanStep Record(T supply, double taken, double rest)
        {
            var (word, number) = (supply.Kind.Word(), Say($"{supply.Number.Value}"));
            var says = rest <= 0 ? "empty" : supply.Kind == SupplyKind.Bag ? BenchAmount.Metric(Mass.FromGrams(rest)) : BenchAmount.Metric(Volume.FromMilliliters(rest));
            return new(
                $"no {word} alone holds enough: take {supply.Shown(taken, metric)} of it from {word} {supply.Number}, and record what is left there, because the line above does not count it",
                new Remedy($"{word} left", new InputName(word, number), new InputName(amount, says)));
        }
    }

    private static InputName[] Named(string input, SupplyNumber? number) => number is { } named ? [new(input, Say($"{named.Value}"))] : [];

    private static InputName Jar(ShelfJar jar) => new("jar", Say($"{jar.Number.Value}"));

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static PlanStep Mix(Batch batch, InputName[] flakes, InputName[] alcohol, DateTime ready, bool metric) => new(
        $"mix {CutWords.Of(batch.Recipe.Cut)}: pour {BenchAmount.Both(batch.Recipe.Pour, metric)}, add {BenchAmount.Both(batch.Recipe.Flakes, metric)} of flakes, makes {BenchAmount.Both(batch.Recipe.Makes, metric)}; ready ≈ {DateWords.Of(ready)}, swirled every hour or two; never warmed over a flame",
        new Remedy("mix", [.. flakes, new("cut", Say($"{batch.Recipe.Cut.PoundsPerUsGallon:0.##}")), new("pour", Say($"{batch.Recipe.Pour.Milliliters:0.#} mL")), .. alcohol]));

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
