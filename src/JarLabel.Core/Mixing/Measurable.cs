namespace JarLabel.Core.Mixing;

/// <summary>What a bench can weigh and pour. Less would be shown as 0: a step that says so is none, and it is not recorded.</summary>
public static class Measurable
{
    /// <summary>The batch, when its alcohol can be poured and its flakes weighed.</summary>
    public static Result<Recipe> Demand(Recipe recipe)
    {
        return BenchAmount.IsNothing(recipe.Pour) || BenchAmount.IsNothing(recipe.Flakes)
            ? MixingProblems.TooSmallABatch(recipe, UnitMath.Max(BenchAmount.LeastVolume, recipe.Cut.PourFor(BenchAmount.LeastMass)))
            : recipe;
    }

    /// <summary>The thinning, when what it adds can be poured.</summary>
    /// <param name="thinning">The thinning.</param>
    /// <param name="from">The cut of the liquid before.</param>
    public static Result<Thinning> Demand(Thinning thinning, PoundCut from)
    {
        return BenchAmount.IsNothing(thinning.Add)
            ? MixingProblems.TooSmallAThinning(thinning, from, from.PoundsPerUsGallon / (1 + (BenchAmount.LeastVolume / Shellac.PouredIn(thinning.Of, from))))
            : thinning;
    }

    /// <summary>The thickening, when what it adds can be weighed.</summary>
    /// <param name="thickening">The thickening.</param>
    /// <param name="from">The cut of the liquid before.</param>
    public static Result<Thickening> Demand(Thickening thickening, PoundCut from)
    {
        return BenchAmount.IsNothing(thickening.Add)
            ? MixingProblems.TooSmallAThickening(thickening, from, from.PoundsPerUsGallon + (BenchAmount.LeastMass.Pounds / Shellac.PouredIn(thickening.Of, from).UsGallons))
            : thickening;
    }

    /// <summary>What a job takes, when it can be poured and weighed.</summary>
    public static Result<Coverage> Demand(Coverage job) =>
        BenchAmount.IsNothing(job.Liquid) || BenchAmount.IsNothing(job.Flakes) ? MixingProblems.TooSmallAJob(job) : job;

    /// <summary>What goes into a jar of its own, when there is so much of it that its recipe can be shown.</summary>
    public static Result<Contents> Demand(Contents contents) =>
        BenchAmount.IsNothing(contents.Poured) || BenchAmount.IsNothing(contents.Flakes) ? MixingProblems.TooSmallAJar(contents) : contents;
}

/// <summary>How much liquid a job takes and how thick it dries: geometry, and the spread that somebody gives.</summary>
/// <param name="Liquid">Finished liquid for all coats.</param>
/// <param name="DryCoat">Thickness of one dried coat.</param>
/// <param name="Flakes">Flakes in the liquid.</param>
public sealed record Coverage(Volume Liquid, Length DryCoat, Mass Flakes)
{
    /// <summary>The liquid, the dry coat and the flakes of a job.</summary>
    /// <param name="cut">The cut that is spread.</param>
    /// <param name="area">What is covered.</param>
    /// <param name="coats">How many times.</param>
    /// <param name="wetCoat">Thickness of one wet coat, from the spread.</param>
    public static Coverage Of(PoundCut cut, Area area, int coats, Length wetCoat)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(coats);
        var liquid = area * wetCoat * coats;
        var flakes = cut.FlakesFor(Shellac.PouredIn(liquid, cut));
        return new Coverage(liquid, wetCoat * (Shellac.VolumeOf(flakes) / liquid), flakes);
    }
}

/// <summary>More flakes into a liquid that is too weak.</summary>
/// <param name="Add">Flakes to add.</param>
/// <param name="Of">The liquid they are added to.</param>
/// <param name="To">The cut it comes to.</param>
public sealed record Thickening(Mass Add, Volume Of, PoundCut To)
{
    /// <summary>The liquid there is afterwards.</summary>
    public Volume Makes => Of + Shellac.VolumeOf(Add);

    /// <summary>What to add to a liquid of one cut to come to a stronger one: (c2 - c1) / (1 + v c1) lb per gallon of liquid.</summary>
    public static Result<Thickening> Solve(PoundCut from, PoundCut to, Volume liquid)
    {
        if (to <= from)
        {
            return MixingProblems.NotThicker(from, to);
        }

        var poured = Shellac.PouredIn(liquid, from);
        return new Thickening(to.FlakesFor(poured) - from.FlakesFor(poured), liquid, to);
    }
}
