using JarLabel.Bench.Supplies;
using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Jars;
using JarLabel.Core.Keeping;
using JarLabel.Core.Mixing;
using JarLabel.Core.Supplies;

namespace JarLabel.Bench.Changing;

/// <summary>Thins a jar: works out what to add to what is in it now, records it and writes the new label.</summary>
public static class ThinJar
{
    /// <summary>The thinned jar, or every reason why not; then nothing was recorded and nothing written.</summary>
    public static Result<BenchOutcome> Do(Workbench bench, ThinRequest request)
    {
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(request);
        return FromSupplies.Of(bench, bag: null, request.Bottle).Then(supplies =>
            JarChange.Do(bench, request.Jar, request.Label, jar => Reckon(bench, request, jar, supplies.Bottle).Then<JarEvent>(thinned => thinned)));
    }

    /// <summary>What is to be added, worked out and held against the container and the bottle; nothing is recorded.</summary>
    public static Result<Thinned> Reckon(Workbench bench, ThinRequest request, Jar jar, Bottle? bottle = null)
    {
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(jar);
        var solvent = request.Solvent ?? bench.Catalog.SolventOf(bottle?.Solvent ?? jar.Contents.Solvents[0].Solvent);
        return Thinning.Solve(jar.Contents.Cut!.Value, request.To, jar.Contents.Liquid)
            .Then(thinning => Measurable.Demand(thinning, jar.Contents.Cut!.Value))
            .Then(thinning => Fits(thinning, request.Container ?? jar.Container))
            .Then(thinning => bottle is null ? thinning : SupplyFit.Demand(bottle, solvent.Id).Then(b => SupplyFit.Check(thinning, jar.Contents, b)))
            .Then<Thinned>(thinning => new Thinned(bench.Now, Added(thinning, solvent, request), request.Container) { Bottle = request.Bottle });
    }

    private static Result<Thinning> Fits(Thinning thinning, Container container) =>
        container.Holds is { } holds ? ContainerFit.Check(thinning, holds) : thinning;

    private static SolventPart Added(Thinning thinning, Solvent solvent, ThinRequest request) =>
        new(solvent.Id, thinning.Add, thinning.Add * solvent.DensityAt(request.Bench ?? Warmth.Reference));
}
