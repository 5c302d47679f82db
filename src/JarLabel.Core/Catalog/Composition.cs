namespace JarLabel.Core.Catalog;

/// <summary>What a liquid is made of, in exact percent by weight that add up to 100. Each substance stands once; the order in which
/// they were named is forgotten.</summary>
public sealed class Composition
{
    private Composition(IReadOnlyList<Ingredient> ingredients) => Ingredients = ingredients;

    /// <summary>Substances and shares, by id.</summary>
    public IReadOnlyList<Ingredient> Ingredients { get; }

    /// <summary>True where it is one of those that a data sheet's ranges allow, and not one of several that nobody has told apart.</summary>
    public bool FromRanges { get; private init; }

    /// <summary>The share of one substance, percent by weight; 0 when there is none.</summary>
    public decimal PercentOf(string substanceId) => Ingredients.FirstOrDefault(i => i.Substance.Id == substanceId)?.Percent ?? 0;

    /// <summary>The same, as one of those that ranges allow.</summary>
    internal Composition InRanges() => new(Ingredients) { FromRanges = true };

    /// <summary>The same, as one of several that nobody has told apart.</summary>
    internal Composition InDoubt() => new(Ingredients);

    /// <summary>Takes weights in any one unit and turns them into shares of their sum.</summary>
    public static Composition FromWeights(IEnumerable<(Substance Substance, decimal Weight)> weights)
    {
        var merged = weights
            .GroupBy(w => w.Substance.Id, StringComparer.Ordinal)
            .Select(g => (g.First().Substance, Weight: g.Sum(w => w.Weight)))
            .Where(w => w.Weight != 0)
            .OrderBy(w => w.Substance.Id, StringComparer.Ordinal)
            .ToArray();
        ArgumentOutOfRangeException.ThrowIfNegative(merged.Select(w => w.Weight).DefaultIfEmpty(-1).Min(), nameof(weights));
        var whole = merged.Sum(w => w.Weight);
        return new Composition([.. merged.Select(w => new Ingredient(w.Substance, 100 * w.Weight / whole))]);
    }

    /// <summary>Takes percentages as they were stated, also where rounding made them miss a hundred by a little.</summary>
    public static Composition FromPercentages(IEnumerable<Ingredient> stated) =>
        new([.. stated.Where(i => i.Percent != 0).OrderBy(i => i.Substance.Id, StringComparer.Ordinal)]);

    /// <summary>This liquid with something dissolved in it or poured to it.</summary>
    /// <param name="added">What is added.</param>
    /// <param name="fractionOfWhole">Its share of the finished weight, 0 to less than 1.</param>
    public Composition With(Substance added, decimal fractionOfWhole)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fractionOfWhole);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(fractionOfWhole, 1);
        return FromWeights([.. Ingredients.Select(i => (i.Substance, i.Percent * (1 - fractionOfWhole))), (added, 100 * fractionOfWhole)]);
    }
}
