namespace JarLabel.Core.Planning;

/// <summary>Finds what serves a job: first the jars, soonest use-by first, thinned where they are stronger; then batches.</summary>
public static class JobPlanner
{
    /// <summary>Cuts this close are the same at a bench.</summary>
    private const double SameCut = 0.02;

    /// <summary>Less than this is not worth opening a jar or mixing a batch.</summary>
    private static readonly Volume Least = Volume.FromMilliliters(1);

    /// <summary>The plan.</summary>
    /// <param name="lines">The job, at least one line.</param>
    /// <param name="jars">Jars of the grade and alcohol wanted that can still be used.</param>
    /// <param name="flakesAtHand">In the bags.</param>
    /// <param name="alcoholAtHand">In the bottles.</param>
    /// <param name="alcohol">The alcohol's density at the bench.</param>
    public static Result<JobPlan> Solve(
        IReadOnlyList<JobLine> lines, IEnumerable<ShelfJar> jars, Mass flakesAtHand, Volume alcoholAtHand, Density alcohol)
    {
        var left = jars.OrderBy(j => j.UseBy).ThenBy(j => j.Number.Value).Select(j => (Jar: j, Liquid: j.Liquid)).ToArray();
        var serves = lines.SelectMany((line, place) => Serve(line, place, left)).ToArray();
        var missing = lines.Select((line, place) => (line.Cut, Place: place, Liquid: line.Needed - Given(serves, place))).Where(m => m.Liquid >= Least);
        var batches = new List<Batch>();
        foreach (var cut in missing.GroupBy(m => m.Cut))
        {
            var makes = Volume.FromMilliliters(cut.Sum(m => m.Liquid.Milliliters));
            if (!RecipeSolver.Solve(new BatchRequest(cut.Key, Makes: makes), alcohol).TryGet(out var recipe, out var problems))
            {
                return Result<JobPlan>.Failed(problems);
            }

            batches.Add(new Batch([.. cut.Select(m => m.Place)], recipe!));
        }

        return new JobPlan(lines, serves, batches, flakesAtHand, alcoholAtHand);
    }

    private static Volume Given(IEnumerable<JarServes> serves, int line) =>
        Volume.FromMilliliters(serves.Where(s => s.Line == line).Sum(s => s.Gives.Milliliters));

    private static List<JarServes> Serve(JobLine line, int place, (ShelfJar Jar, Volume Liquid)[] left)
    {
        var (found, wanted) = (new List<JarServes>(), line.Needed);
        for (var i = 0; i < left.Length && wanted >= Least; i++)
        {
            var (jar, liquid) = left[i];
            if (liquid >= Least && PartsAdded(jar.Cut, line.Cut) is { } parts)
            {
                var take = UnitMath.Min(liquid, wanted / (1 + parts));
                found.Add(new JarServes(place, jar, take, parts > 0 ? line.Cut : jar.Cut, take * parts));
                left[i] = (jar, liquid - take);
                wanted -= found[^1].Gives;
            }
        }

        return found;
    }

    /// <summary>Alcohol to one part of liquid; null where the jar is too weak.</summary>
    private static double? PartsAdded(PoundCut jar, PoundCut wanted) => (jar.PoundsPerUsGallon / wanted.PoundsPerUsGallon) switch
    {
        < 1 - SameCut => null,
        <= 1 + SameCut => 0,
        _ => Thinning.Solve(jar, wanted, Volume.FromMilliliters(1)).Require().PartsPerPart,
    };
}

/// <summary>What a jar gives to one line of a job.</summary>
/// <param name="Line">Which line, from 0.</param>
/// <param name="Jar">The jar.</param>
/// <param name="Take">Liquid taken from it.</param>
/// <param name="To">The cut it is thinned to; the jar's own where it is used as it is.</param>
/// <param name="Add">Alcohol added to what was taken.</param>
public sealed record JarServes(int Line, ShelfJar Jar, Volume Take, PoundCut To, Volume Add)
{
    /// <summary>Liquid for the line.</summary>
    public Volume Gives => Take + Add;
}

/// <summary>A jar that might serve a job.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Cut">Its cut.</param>
/// <param name="Liquid">What is in it.</param>
/// <param name="UseBy">Its estimated use-by.</param>
/// <param name="TestFirst">True when a few drops on glass come first.</param>
/// <param name="Ready">From when its flakes are dissolved.</param>
public sealed record ShelfJar(JarNumber Number, PoundCut Cut, Volume Liquid, DateOnly UseBy, bool TestFirst, DateTime Ready)
{
    /// <summary>True when its drops dried hard but slowly when it was last tested.</summary>
    public bool Slow { get; init; }
}
