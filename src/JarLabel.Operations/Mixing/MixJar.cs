namespace JarLabel.Operations.Mixing;

/// <summary>Mixes a batch into a jar: solves it, dates it, records it and writes its label, all or nothing.</summary>
public static class MixJar
{
    /// <summary>The new jar, or every reason why not; then nothing was recorded and nothing written.</summary>
    public static Result<JarOutcome> Do(Workbench bench, MixRequest request)
    {
        return FromSupplies.Of(bench, request.Bag, request.Bottle)
            .Then(supplies => supplies.Demand(request.Grade.Id, request.Solvent.Id))
            .Then(supplies => Do(bench, request with { FlakeDate = request.FlakeDate ?? supplies.Bag?.Made }, supplies));
    }

    private static Result<JarOutcome> Do(Workbench bench, MixRequest request, FromSupplies supplies) => Begin(bench, request, supplies).Then(begun => StepCompletion.Open(bench).Then(finish =>
        LedgerAccess.Record(bench, step => ShopLives.Of(bench, step).Then(lives => finish.Record(Recorder.ForNewJar(step), Dated(bench, step, begun, lives), request.Label)))));

    /// <summary>The batch alone, worked out and held against its container; nothing is recorded.</summary>
    public static Result<Recipe> Calculate(MixRequest request)
    {
        return RecipeSolver.Solve(request.Batch, request.Solvent.DensityAt(request.Bench ?? Warmth.Reference)).Then(recipe => Fits(recipe, request.Container));
    }

    /// <summary>The batch as the event that begins its jar; nothing is recorded.</summary>
    internal static Result<Mixed> Begin(Workbench bench, MixRequest request, FromSupplies supplies)
    {
        var temperature = request.Bench ?? Warmth.Reference;
        return Calculate(request)
            .Then(recipe => SupplyFit.Check(recipe, supplies.Bag, supplies.Bottle))
            .Then(recipe => bench.Settings.Shelf(request.Shelf).Then<Mixed>(shelf => new Mixed(
                bench.Now,
                Contents.Of(recipe, request.Grade.Id, request.Solvent.Id, request.FlakeDate, supplies.Bag?.Cloudy == true),
                request.Container,
                Dates(bench, request, new(request.FlakeDate, supplies.Bag?.Cloudy == true), temperature, shelf.Name),
                shelf.Name,
                temperature,
                request.By,
                request.Job,
                request.Note)
            {
                Bag = request.Bag,
                Bottle = request.Bottle,
            }));
    }

    /// <summary>With the dates that the shop's own tests say, of these flakes on that shelf, which may have become warmer or cooler since.</summary>
    internal static Mixed Dated(Workbench bench, LedgerView view, Mixed begun, LearnedLives lives) =>
        new JarDating(bench, view, lives).OfFresh(begun.Contents.Resins[0], begun.Contents.Solvents[0].Solvent, begun.Shelf) is { } dates ? begun with { Dates = dates with { Ready = begun.Dates.Ready } } : begun;

    private static Result<Recipe> Fits(Recipe recipe, Container container) =>
        container.Holds is { } holds ? ContainerFit.Check(recipe, holds) : recipe;

    private static KeepingDates Dates(Workbench bench, MixRequest request, Flakes flakes, Temperature temperature, string shelf, double? months = null) => KeepingEstimate.Of(
        bench.Now,
        KindOf(bench, request.Grade),
        request.Form ?? bench.Catalog.Forms.Find(request.Grade.Form)!,
        temperature,
        ShelfMoves.WarmthOf(bench, shelf),
        flakes.Date,
        bench.Keeping,
        months,
        flakes.Cloudy);

    private static KeepingClass KindOf(Workbench bench, Grade grade) => bench.Catalog.Keeping.Find(grade.Keeping)!;

    /// <summary>What shortens a batch's life beside time.</summary>
    /// <param name="Date">The flakes' own date, where known.</param>
    /// <param name="Cloudy">True when a pinch of them dissolved cloudy.</param>
    private readonly record struct Flakes(DateOnly? Date, bool Cloudy);
}
