using JarLabel.Bench.Supplies;
using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Jars;
using JarLabel.Core.Keeping;
using JarLabel.Core.Mixing;
using JarLabel.Core.Supplies;

namespace JarLabel.Bench.Changing;

/// <summary>Thickens a jar: works out the flakes to add to what is in it now, waits for them to dissolve, records it and writes the new
/// label.</summary>
public static class ThickenJar
{
    /// <summary>The thickened jar, or every reason why not; then nothing was recorded and nothing written.</summary>
    public static Result<BenchOutcome> Do(Workbench bench, ThickenRequest request)
    {
        ArgumentNullException.ThrowIfNull(bench);
        ArgumentNullException.ThrowIfNull(request);
        return FromSupplies.Of(bench, request.Bag, bottle: null).Then(supplies => JarChange.Do(bench, request.Jar, request.Label, jar =>
            Thicken(bench, request with { FlakeDate = request.FlakeDate ?? supplies.Bag?.Made }, jar, supplies.Bag)));
    }

    private static Result<JarEvent> Thicken(Workbench bench, ThickenRequest request, Jar jar, Bag? bag)
    {
        var grade = request.Grade ?? bench.Catalog.GradeOf(bag?.Grade ?? jar.Contents.Resins[0].Grade);
        return Thickening.Solve(jar.Contents.Cut!.Value, request.To, jar.Contents.Liquid)
            .Then(thickening => Measurable.Demand(thickening, jar.Contents.Cut!.Value))
            .Then(thickening => Fits(thickening, request.Container ?? jar.Container))
            .Then(thickening => bag is null ? thickening : SupplyFit.Demand(bag, grade.Id).Then(b => SupplyFit.Check(thickening, jar.Contents, b)))
            .Then<JarEvent>(thickening => new Thickened(
                bench.Now,
                new ResinPart(grade.Id, thickening.Add, request.FlakeDate) { Cloudy = bag?.Cloudy == true },
                jar.Dates.Shortest(Fresh(bench, request, grade, jar, bag?.Cloudy == true)),
                request.Container)
            {
                Bag = request.Bag,
            });
    }

    private static Result<Thickening> Fits(Thickening thickening, Container container) =>
        container.Holds is { } holds ? ContainerFit.Check(thickening.Makes, holds).Then<Thickening>(_ => thickening) : thickening;

    /// <summary>The dates that the new flakes would have alone.</summary>
    private static KeepingDates Fresh(Workbench bench, ThickenRequest request, Grade grade, Jar jar, bool cloudy) => KeepingEstimate.Of(
        bench.Now,
        bench.Catalog.Keeping.Find(grade.Keeping)!,
        request.Form ?? bench.Catalog.Forms.Find(grade.Form)!,
        request.Bench ?? Warmth.Reference,
        ShelfMoves.WarmthOf(bench, jar.Shelf),
        request.FlakeDate,
        bench.Keeping,
        cloudy: cloudy);
}
