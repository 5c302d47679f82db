namespace JarLabel.Core.Mixing;

/// <summary>From a cut to the solids of the liquid, and back.</summary>
public static class Solids
{
    /// <summary>The recipe of one US gallon of solvent: every fraction and weight of the liquid can be read from it.</summary>
    public static Recipe OfCut(PoundCut cut, Density solventDensity) =>
        new(cut, cut.FlakesFor(Volume.FromUsGallons(1)), Volume.FromUsGallons(1), solventDensity);

    /// <summary>The solids by weight of a cut: w = c / (c + r), r the weight of the solvent.</summary>
    public static double ByWeight(double poundsPerUsGallon, Density solventDensity) =>
        poundsPerUsGallon / (poundsPerUsGallon + solventDensity.PoundsPerUSGallon);

    /// <summary>The cut of a liquid with so much nonvolatile by weight: c = r w / (1 - w), r the weight of the solvent.</summary>
    public static Result<PoundCut> CutOf(double fractionByWeight, Density solventDensity)
    {
        var flakes = fractionByWeight / (1 - fractionByWeight) * (solventDensity * Volume.FromUsGallons(1));
        return PoundCut.Of(flakes, Volume.FromUsGallons(1)) is { } cut ? cut : MixingProblems.NoUsableCut(flakes, Volume.FromUsGallons(1));
    }
}
