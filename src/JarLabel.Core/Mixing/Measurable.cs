using JarLabel.Core.Jars;
using JarLabel.Core.Labels;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Core.Mixing;

/// <summary>What a bench can weigh and pour. Less would be shown as 0: a step that says so is none, and it is not recorded.</summary>
public static class Measurable
{
    /// <summary>The batch, when its alcohol can be poured and its flakes weighed.</summary>
    public static Result<Recipe> Demand(Recipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        return BenchAmount.IsNothing(recipe.Pour) || BenchAmount.IsNothing(recipe.Flakes)
            ? MixingProblems.TooSmallABatch(recipe, UnitMath.Max(BenchAmount.LeastVolume, recipe.Cut.PourFor(BenchAmount.LeastMass)))
            : recipe;
    }

    /// <summary>The thinning, when what it adds can be poured.</summary>
    /// <param name="thinning">The thinning.</param>
    /// <param name="from">The cut of the liquid before.</param>
    public static Result<Thinning> Demand(Thinning thinning, PoundCut from)
    {
        ArgumentNullException.ThrowIfNull(thinning);
        return BenchAmount.IsNothing(thinning.Add)
            ? MixingProblems.TooSmallAThinning(thinning, from, from.PoundsPerUsGallon / (1 + (BenchAmount.LeastVolume / Shellac.PouredIn(thinning.Of, from))))
            : thinning;
    }

    /// <summary>The thickening, when what it adds can be weighed.</summary>
    /// <param name="thickening">The thickening.</param>
    /// <param name="from">The cut of the liquid before.</param>
    public static Result<Thickening> Demand(Thickening thickening, PoundCut from)
    {
        ArgumentNullException.ThrowIfNull(thickening);
        return BenchAmount.IsNothing(thickening.Add)
            ? MixingProblems.TooSmallAThickening(thickening, from, from.PoundsPerUsGallon + (BenchAmount.LeastMass.Pounds / Shellac.PouredIn(thickening.Of, from).UsGallons))
            : thickening;
    }

    /// <summary>What a job takes, when it can be poured and weighed.</summary>
    public static Result<Coverage> Demand(Coverage job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return BenchAmount.IsNothing(job.Liquid) || BenchAmount.IsNothing(job.Flakes) ? MixingProblems.TooSmallAJob(job) : job;
    }

    /// <summary>What goes into a jar of its own, when there is so much of it that its recipe can be shown.</summary>
    public static Result<Contents> Demand(Contents contents)
    {
        ArgumentNullException.ThrowIfNull(contents);
        return BenchAmount.IsNothing(contents.Poured) || BenchAmount.IsNothing(contents.Flakes) ? MixingProblems.TooSmallAJar(contents) : contents;
    }
}
