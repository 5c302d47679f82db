namespace JarLabel.Operations.Changing;

/// <summary>Thins a jar: works out what to add to what is in it now, records it and writes the new label.</summary>
public static class ThinJar
{
    /// <summary>The thinned jar, or every reason why not; then nothing was recorded and nothing written.</summary>
    public static Result<JarOutcome> Do(Workbench bench, ThinRequest request)
    {
        return FromSupplies.Of(bench, bag: null, request.Bottle).Then(supplies =>
            JarChange.Do(bench, request.Jar, request.Label, jar => Calculate(bench, request, jar, supplies.Bottle).Then<JarEvent>(thinned => thinned)));
    }

    /// <summary>What is to be added, worked out and held against the container and the bottle; nothing is recorded.</summary>
    public static Result<Thinned> Calculate(Workbench bench, ThinRequest request, Jar jar, Bottle? bottle = null)
    {
        var solvent = request.Solvent ?? bench.Catalog.SolventOf(bottle?.Solvent ?? jar.Contents.Solvents[0].Solvent);
        var from = jar.Contents.Cut!.Value;
        var solved = Thinning.Solve(from, request.To, jar.Contents.Liquid)
            .Then(thinning => Measurable.Demand(thinning, from))
            .Then(thinning => Fits(jar.Number, thinning, request.Container ?? jar.Container));
        if (!solved.TryGet(out var thinning, out var faults))
        {
            return faults;
        }

        if (bottle is not null && !SupplyFit.Demand(bottle, solvent.Id, bench.Catalog).Then(holding => SupplyFit.Check(thinning, jar.Contents, holding)).TryGet(out _, out faults))
        {
            return faults;
        }

        return new Thinned(bench.Now, Added(thinning, solvent, request), request.Container) { Bottle = request.Bottle };
    }

    private static Result<Thinning> Fits(JarNumber jar, Thinning thinning, Container container) =>
        container.Holds is { } holds ? ContainerFit.Check(jar, thinning, holds) : thinning;

    private static SolventPart Added(Thinning thinning, Solvent solvent, ThinRequest request) =>
        new(solvent.Id, thinning.Add, thinning.Add * solvent.DensityAt(request.Bench ?? Warmth.Reference));
}

/// <summary>A jar that somebody wants weaker.</summary>
/// <param name="Jar">The jar.</param>
/// <param name="To">The cut wanted.</param>
/// <param name="Solvent">What to add; null for what most of it is.</param>
/// <param name="Bench">Temperature at the bench; null for 20 °C.</param>
/// <param name="Container">The larger jar it all goes into; null when it stays in its own.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record ThinRequest(
    JarNumber Jar, PoundCut To, Solvent? Solvent = null, Temperature? Bench = null, Container? Container = null, LabelChoice? Label = null)
{
    /// <summary>The bottle that the alcohol comes from; null when nobody said.</summary>
    public SupplyNumber? Bottle { get; init; }
}
