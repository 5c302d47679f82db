namespace JarLabel.Operations.Changing;

/// <summary>Thickens a jar: works out the flakes to add to what is in it now, waits for them to dissolve, records it and writes the new
/// label.</summary>
public static class ThickenJar
{
    /// <summary>The thickened jar, or every reason why not; then nothing was recorded and nothing written.</summary>
    public static Result<JarOutcome> Do(Workbench bench, ThickenRequest request)
    {
        return FromSupplies.Of(bench, request.Bag, bottle: null).Then(stock => stock.Dated(request.FlakeDate)).Then(supplies => JarChange.Do(bench, request.Jar, request.Label, (history, step) =>
            Thicken(bench, request with { FlakeDate = request.FlakeDate ?? supplies.Bag?.Made }, history.Jar, supplies.Bag).Then(thickened => Dated(bench, step, history, thickened))));
    }

    private static Result<Thickened> Thicken(Workbench bench, ThickenRequest request, Jar jar, Bag? bag)
    {
        var grade = request.Grade ?? bench.Catalog.GradeOf(bag?.Grade ?? jar.Contents.Resins[0].Grade);
        return Thickening.Solve(jar.Contents.Cut!.Value, request.To, jar.Contents.Liquid)
            .Then(thickening => Measurable.Demand(thickening, jar.Contents.Cut!.Value))
            .Then(thickening => Fits(thickening, request.Container ?? jar.Container))
            .Then(thickening => bag is null ? thickening : SupplyFit.Demand(bag, grade.Id, bench.Catalog).Then(b => SupplyFit.Check(thickening, jar.Contents, b)))
            .Then<Thickened>(thickening => new Thickened(
                bench.Now,
                new ResinPart(grade.Id, thickening.Add, request.FlakeDate) { Cloudy = bag?.Cloudy == true },
                jar.Dates.Shortest(Fresh(bench, request, grade, jar, bag?.Cloudy == true)),
                request.Container)
            {
                Bag = request.Bag,
            });
    }

    /// <summary>With the dates of the whole: what was in it goes on ageing, and the new flakes begin. They are never later than before.</summary>
    private static Result<JarEvent> Dated(Workbench bench, LedgerView view, JarHistory history, Thickened thickened) => ShopLives.Of(bench, view, history.Jar.Number).Then(lives =>
        history.With(thickened).Then<JarEvent>(after => new JarDating(bench, view, lives).Of(after.Life) is { } dates ? thickened with { Dates = thickened.Dates.Shortest(dates) } : thickened));

    private static Result<Thickening> Fits(Thickening thickening, Container container) =>
        container.Holds is { } holds ? ContainerFit.Check(thickening.Makes, holds).Then<Thickening>(_ => thickening) : thickening;

    /// <summary>The dates that the new flakes would have alone.</summary>
    private static KeepingDates Fresh(Workbench bench, ThickenRequest request, Grade grade, Jar jar, bool cloudy) => KeepingEstimate.Of(
        bench.Now,
        bench.Catalog.Keeping.Find(grade.Keeping)!,
        (request.Form ?? bench.Catalog.Forms.Find(grade.Form)!).In(request.To),
        request.Bench ?? Warmth.Reference,
        ShelfMoves.WarmthOf(bench, jar.Shelf),
        request.FlakeDate,
        bench.Keeping,
        cloudy: cloudy);
}

/// <summary>A jar that somebody wants stronger.</summary>
/// <param name="Jar">The jar.</param>
/// <param name="To">The cut wanted.</param>
/// <param name="Grade">What to add; null for what most of it is.</param>
/// <param name="Form">The form of the flakes; null for the grade's usual one.</param>
/// <param name="FlakeDate">The new flakes' own date, where known.</param>
/// <param name="Bench">Temperature at the bench; null for 20 °C.</param>
/// <param name="Container">The larger jar it all goes into; null when it stays in its own.</param>
/// <param name="Label">The label wanted; null for none.</param>
public sealed record ThickenRequest(
    JarNumber Jar,
    PoundCut To,
    Grade? Grade = null,
    LacForm? Form = null,
    DateOnly? FlakeDate = null,
    Temperature? Bench = null,
    Container? Container = null,
    LabelChoice? Label = null)
{
    /// <summary>The bag that the flakes come from; null when nobody said.</summary>
    public SupplyNumber? Bag { get; init; }
}
