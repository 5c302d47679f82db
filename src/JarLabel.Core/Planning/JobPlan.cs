namespace JarLabel.Core.Planning;

/// <summary>What a job takes, where it comes from, and what has to be mixed and bought.</summary>
/// <param name="Lines">The job.</param>
/// <param name="Serves">What jars give, line by line, in the order in which they are used.</param>
/// <param name="Batches">What is mixed beside.</param>
/// <param name="FlakesAtHand">Flakes of that grade in the shop's bags.</param>
/// <param name="AlcoholAtHand">That alcohol in the shop's bottles.</param>
public sealed record JobPlan(
    IReadOnlyList<JobLine> Lines, IReadOnlyList<JarServes> Serves, IReadOnlyList<Batch> Batches, Mass FlakesAtHand, Volume AlcoholAtHand)
{
    /// <summary>Flakes for the batches.</summary>
    public Mass Flakes => Mass.FromGrams(Batches.Sum(b => b.Recipe.Flakes.Grams));

    /// <summary>Alcohol for the batches and for thinning.</summary>
    public Volume Alcohol => Volume.FromMilliliters(Batches.Sum(b => b.Recipe.Pour.Milliliters) + Serves.Sum(s => s.Add.Milliliters));

    /// <summary>The strongest cut that is mixed; null where none is.</summary>
    public PoundCut? Strongest => Batches.Count == 0 ? null : Batches.MaxBy(b => b.Recipe.Cut.PoundsPerUsGallon)!.Recipe.Cut;

    /// <summary>Flakes to buy; nothing when the bags hold enough.</summary>
    public Mass FlakesMissing => Mass.FromGrams(Math.Max(0, (Flakes - FlakesAtHand).Grams));

    /// <summary>Alcohol to buy; nothing when the bottles hold enough.</summary>
    public Volume AlcoholMissing => Volume.FromMilliliters(Math.Max(0, (Alcohol - AlcoholAtHand).Milliliters));

    /// <summary>The most alcohol that one coat lets into the air.</summary>
    public Volume WorstCoat => Volume.FromMilliliters(Lines.Max(l => l.EvaporatedPerCoat.Milliliters));

    /// <summary>All the alcohol that the job lets into the air.</summary>
    public Volume Evaporated => Volume.FromMilliliters(Lines.Sum(l => l.EvaporatedPerCoat.Milliliters * l.Coats));
}
