namespace JarLabel.Core.Mixing;

/// <summary>Solves a batch from a cut and one amount, or from two amounts.</summary>
public static class RecipeSolver
{
    /// <summary>The part of a container that liquid may fill; the rest is head space, because alcohol grows by 2 % from a cool to a
    /// hot shelf and the jar is swirled.</summary>
    public const double FullestFraction = 0.95;

    /// <summary>The recipe, or what is missing from or too much in the order, or too little to be measured.</summary>
    public static Result<Recipe> Solve(BatchRequest order, Density solventDensity) =>
        Amounts(order).Then(a => Measurable.Demand(new Recipe(a.Cut, a.Flakes, a.Pour, solventDensity)));

    /// <summary>What is not said of a batch or said too often, whatever its alcohol; null when it can be solved.</summary>
    public static Problem? Unsaid(BatchRequest order) => Amounts(order).Problems is [var first, ..] ? first : null;

    /// <summary>The most liquid that a container may hold.</summary>
    public static Volume MostIn(Volume container) => container * FullestFraction;

    private static Result<(PoundCut Cut, Mass Flakes, Volume Pour)> Amounts(BatchRequest order) => order switch
    {
        { Cut: { } cut, Pour: { } pour, Flakes: null, Makes: null, Fill: null } => FromPour(cut, pour),
        { Cut: { } cut, Pour: null, Flakes: { } flakes, Makes: null, Fill: null } => (cut, flakes, cut.PourFor(flakes)),
        { Cut: { } cut, Pour: null, Flakes: null, Makes: { } makes, Fill: null } => FromPour(cut, Shellac.PouredIn(makes, cut)),
        { Cut: { } cut, Pour: null, Flakes: null, Makes: null, Fill: { } jar } => FromPour(cut, Shellac.PouredIn(MostIn(jar), cut)),
        { Cut: null, Pour: { } pour, Flakes: { } flakes, Makes: null, Fill: null } => FromBoth(flakes, pour),
        { Cut: { }, Pour: { }, Flakes: { } } => MixingProblems.CutAndBothAmounts(),
        { Cut: null } => MixingProblems.CutMissing(),
        { Pour: null, Flakes: null, Makes: null, Fill: null } => MixingProblems.AmountMissing(),
        _ => MixingProblems.TooManyAmounts(),
    };

    private static (PoundCut Cut, Mass Flakes, Volume Pour) FromPour(PoundCut cut, Volume pour) => (cut, cut.FlakesFor(pour), pour);

    private static Result<(PoundCut Cut, Mass Flakes, Volume Pour)> FromBoth(Mass flakes, Volume pour) =>
        PoundCut.Of(flakes, pour) is { } cut ? (cut, flakes, pour) : MixingProblems.NoUsableCut(flakes, pour);
}

/// <summary>What somebody asks for: a cut and one amount, or two amounts from which the cut follows.</summary>
/// <param name="Cut">The strength wanted.</param>
/// <param name="Pour">Solvent to pour.</param>
/// <param name="Flakes">Flakes to use up.</param>
/// <param name="Makes">Finished liquid wanted.</param>
/// <param name="Fill">A container to fill, leaving its head space.</param>
public sealed record BatchRequest(PoundCut? Cut = null, Volume? Pour = null, Mass? Flakes = null, Volume? Makes = null, Volume? Fill = null);
