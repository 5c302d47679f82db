namespace JarLabel.Core.Hazards;

/// <summary>What a jar may be made of, by weight of the whole: each solvent as poured, and the dissolved shellac.</summary>
public static class JarComposition
{
    /// <summary>Every composition the jar may have: one, unless a solvent's own is unknown or stated in ranges.</summary>
    /// <param name="solvents">What was poured, by weight.</param>
    /// <param name="flakes">What was dissolved in it.</param>
    /// <param name="catalog">Where the resin is.</param>
    public static IReadOnlyList<Composition> Possible(
        IEnumerable<(Solvent Solvent, Mass Weight)> solvents, Mass flakes, ShopCatalog catalog)
    {
        var known = true;
        IEnumerable<(Substance, decimal)>[] poured = [[(catalog.Substances.Require(Substance.ResinId), (decimal)flakes.Grams)]];
        foreach (var (solvent, weight) in solvents)
        {
            known &= solvent.CompositionKnown;
            poured = [.. poured.SelectMany(_ => solvent.Compositions, (before, made) => before.Concat(Weights(made, weight)))];
        }

        var ranged = known && poured.Length > 1;
        return [.. poured.Select(Composition.FromWeights).Select(c => ranged ? c.InRanges() : c)];
    }

    private static IEnumerable<(Substance, decimal)> Weights(Composition composition, Mass weight) =>
        composition.Ingredients.Select(i => (i.Substance, i.Percent * (decimal)weight.Grams / 100));
}
