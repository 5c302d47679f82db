namespace JarLabel.Core.Planning;

/// <summary>A batch, or a part of one, with the bag and the bottle that it is worked from. Flakes of two bags are two batches: each has its own age.</summary>
/// <param name="Recipe">What is mixed.</param>
/// <param name="Bag">The bag; null where none holds any.</param>
/// <param name="Bottle">The bottle that holds enough alone; null where none does.</param>
/// <param name="Poured">What is poured from each bottle where none holds enough alone, and what is left in it then.</param>
public sealed record BatchDraw(Recipe Recipe, Bag? Bag, Bottle? Bottle, IReadOnlyList<(Bottle Bottle, Volume Taken, Volume Left)> Poured)
{
    /// <summary>The batches of a plan: each from the bag and the bottle that came first and still hold enough after those before it, else from several.</summary>
    public static IReadOnlyList<BatchDraw> Of(JobPlan plan, IReadOnlyList<Bag> bags, IReadOnlyList<Bottle> bottles)
    {
        var (flakes, alcohol) = (bags.ToDictionary(bag => bag.Number, bag => bag.Left), bottles.ToDictionary(bottle => bottle.Number, bottle => bottle.Left));
        return [.. plan.Batches.SelectMany(batch => Parts(batch.Recipe, bags, flakes)).Select(part => Pour(part.Recipe, part.Bag, bottles, alcohol))];
    }

    private static List<(Recipe Recipe, Bag? Bag)> Parts(Recipe whole, IReadOnlyList<Bag> bags, Dictionary<SupplyNumber, Mass> left)
    {
        if (bags.FirstOrDefault(bag => left[bag.Number] >= whole.Flakes) is { } alone)
        {
            left[alone.Number] -= whole.Flakes;
            return [(whole, alone)];
        }

        var (parts, missing) = (new List<(Recipe, Bag?)>(), whole.Flakes);
        foreach (var bag in bags.Where(bag => left[bag.Number] >= LeastOfABag))
        {
            var taken = UnitMath.Min(left[bag.Number], missing);
            if (taken < LeastOfABag)
            {
                break;
            }

            (left[bag.Number], missing) = (left[bag.Number] - taken, missing - taken);
            parts.Add((Of(whole, taken), bag));
        }

        if (missing >= LeastOfABag || parts.Count == 0)
        {
            parts.Add((Of(whole, missing), null));
        }

        return parts;
    }

    /// <summary>Less is not worth a jar of its own.</summary>
    private static readonly Mass LeastOfABag = Mass.FromGrams(1);

    private static Recipe Of(Recipe whole, Mass flakes) => new(whole.Cut, flakes, whole.Cut.PourFor(flakes), whole.SolventDensity);

    private static BatchDraw Pour(Recipe recipe, Bag? bag, IReadOnlyList<Bottle> bottles, Dictionary<SupplyNumber, Volume> left)
    {
        if (bottles.FirstOrDefault(bottle => left[bottle.Number] >= recipe.Pour) is { } alone)
        {
            left[alone.Number] -= recipe.Pour;
            return new(recipe, bag, alone, []);
        }

        var (poured, missing) = (new List<(Bottle, Volume, Volume)>(), recipe.Pour);
        foreach (var bottle in bottles.Where(bottle => left[bottle.Number] > Volume.Zero))
        {
            var taken = UnitMath.Min(left[bottle.Number], missing);
            if (BenchAmount.IsNothing(taken))
            {
                break;
            }

            (left[bottle.Number], missing) = (left[bottle.Number] - taken, missing - taken);
            poured.Add((bottle, taken, left[bottle.Number]));
        }

        return new(recipe, bag, null, poured);
    }
}
