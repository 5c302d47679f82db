namespace JarLabel.Core.Mixing;

/// <summary>What goes through but should be known before the lid is on.</summary>
public static class BatchCautions
{
    /// <summary>Cautions about the liquid itself.</summary>
    public static IReadOnlyList<Problem> OfLiquid(Recipe recipe, Solvent solvent)
    {
        return
        [
            .. OfSolvent(solvent),
            .. If(Shellac.IsSyrup(recipe.Cut), MixingCautions.Syrup(recipe.Cut)),
        ];
    }

    /// <summary>Cautions about an alcohol, whatever is dissolved in it.</summary>
    public static IReadOnlyList<Problem> OfSolvent(Solvent solvent)
    {
        return
        [
            .. solvent.CompositionKnown ? Array.Empty<Problem>() : [MixingCautions.UnknownSolvent(solvent)],
            .. If(solvent.TooWet, MixingCautions.TooWet(solvent)),
        ];
    }

    /// <summary>Cautions about what closes it.</summary>
    public static IReadOnlyList<Problem> OfLid(HazardAssessment hazards) => ChildResistantLid.WantedOn(hazards) ? [MixingCautions.ChildResistant(hazards)] : [];

    /// <summary>Cautions about the jar it stands in and the flakes it is made of.</summary>
    public static IReadOnlyList<Problem> OfJar(Container container, Grade grade, KeepingClass kind, DateOnly? flakeDate, DateOnly mixed, bool cloudy = false)
    {
        return
        [
            .. If(container.Material == ContainerMaterial.Metal, MixingCautions.BareMetal()),
            .. OfFlakes(grade, kind, flakeDate, mixed, cloudy),
        ];
    }

    /// <summary>Cautions about the flakes themselves on a day.</summary>
    public static IReadOnlyList<Problem> OfFlakes(Grade grade, KeepingClass kind, DateOnly? flakeDate, DateOnly day, bool cloudy = false) =>
    [
        .. If(FlakeAge.PastDryLife(flakeDate, day, kind), MixingCautions.OldFlakes(grade)),
        .. If(cloudy, MixingCautions.CloudyFlakes(grade)),
    ];

    /// <summary>Cautions about working with a jar that stands as it does.</summary>
    public static IReadOnlyList<Problem> OfState(Jar jar, DateTime now) => (jar.StateAt(now), jar) switch
    {
        (_, { Test: { Passed: false } failed, OnShelf: true }) => [MixingCautions.Failed(jar.Number, failed)],
        (JarState.Past, _) => [MixingCautions.PastUse(jar.Test, now), .. jar.Doubts.Cautions(jar.Number)],
        (JarState.Dissolving, _) => [MixingCautions.StillDissolving(), .. jar.Doubts.Cautions(jar.Number)],
        (JarState.Test, { Doubts.Any: false, Test: { Passed: true } test }) when test.Day > jar.Careful.UseBy => [MixingCautions.TestedPastUse(jar.Number, test)],
        (JarState.Test, { Doubts.Any: false }) => [MixingCautions.NotTestedOfLate(jar.Number, jar.Test, now)],
        (JarState.Good, { Test.Slow: true }) => [MixingCautions.DriedSlowly(jar.Number)],
        _ => jar.Doubts.Cautions(jar.Number),
    };

    private static Problem[] If(bool so, Problem caution) => so ? [caution] : [];
}
