namespace JarLabel.Operations.Mixing;

/// <summary>Mixes a batch into a jar: solves it, dates it, records it and writes its label, all or nothing.</summary>
public static class MixJar
{
    /// <summary>The new jar, or every reason why not; then nothing was recorded and nothing written.</summary>
    public static Result<JarOutcome> Do(Workbench bench, MixRequest request)
    {
        var found = FromSupplies.Of(bench, request.Bag, request.Bottle).Then(stock => stock.Demand(bench.Catalog, request.Grade.Id, request.Solvent.Id)).Then(stock => stock.Dated(request.FlakeDate));
        if (!found.TryGet(out var supplies, out var faults))
        {
            return faults;
        }

        var wanted = request with { FlakeDate = request.FlakeDate ?? supplies.Bag?.Made };
        if (!Begin(bench, wanted, supplies).TryGet(out var begun, out faults) || !StepCompletion.Open(bench).TryGet(out var completion, out faults))
        {
            return faults;
        }

        return LedgerAccess.Record(bench, step => Record(bench, step, wanted, begun, completion));
    }

    private static Result<JarOutcome> Record(Workbench bench, LedgerStep step, MixRequest request, Mixed begun, StepCompletion completion)
    {
        if (!ShopLives.Of(bench, step).TryGet(out var lives, out var faults))
        {
            return faults;
        }

        var mixed = Dated(bench, step, begun, lives);
        return completion.Record(Recorder.ForNewJar(step), mixed, request.Label);
    }

    /// <summary>The batch alone, worked out and held against its container; nothing is recorded.</summary>
    public static Result<Recipe> Calculate(MixRequest request)
    {
        return RecipeSolver.Solve(request.Batch, request.Solvent.DensityAt(request.Bench ?? Warmth.Reference)).Then(recipe => Fits(recipe, request.Container));
    }

    /// <summary>The batch as the event that begins its jar; nothing is recorded.</summary>
    internal static Result<Mixed> Begin(Workbench bench, MixRequest request, FromSupplies supplies)
    {
        var solved = Calculate(request).Then(recipe => SupplyFit.Check(recipe, supplies.Bag, supplies.Bottle));
        if (!solved.TryGet(out var recipe, out var faults) || !bench.Settings.Shelf(request.Shelf).TryGet(out var shelf, out faults))
        {
            return faults;
        }

        var temperature = request.Bench ?? Warmth.Reference;
        var flakes = new Flakes(request.FlakeDate, supplies.Bag?.Cloudy == true);
        return new Mixed(
            bench.Now,
            Contents.Of(recipe, request.Grade.Id, request.Solvent.Id, flakes.Date, flakes.Cloudy),
            request.Container,
            Dates(bench, request, recipe.Cut, flakes, temperature, shelf.Name),
            shelf.Name,
            temperature,
            request.By,
            request.Job,
            request.Note)
        {
            Bag = request.Bag,
            Bottle = request.Bottle,
        };
    }

    /// <summary>With the dates that the shop's own tests say, of these flakes on that shelf, which may have become warmer or cooler since.</summary>
    internal static Mixed Dated(Workbench bench, LedgerView view, Mixed begun, LearnedLives lives) =>
        new JarDating(bench, view, lives).OfFresh(begun.Contents.Resins[0], begun.Contents.Solvents[0].Solvent, begun.Shelf) is { } dates ? begun with { Dates = dates with { Ready = begun.Dates.Ready } } : begun;

    private static Result<Recipe> Fits(Recipe recipe, Container container) =>
        container.Holds is { } holds ? ContainerFit.Check(recipe, holds) : recipe;

    private static KeepingDates Dates(Workbench bench, MixRequest request, PoundCut cut, Flakes flakes, Temperature temperature, string shelf) => KeepingEstimate.Of(
        bench.Now,
        KindOf(bench, request.Grade),
        (request.Form ?? bench.Catalog.Forms.Find(request.Grade.Form)!).In(cut),
        temperature,
        ShelfMoves.WarmthOf(bench, shelf),
        flakes.Date,
        bench.Keeping,
        cloudy: flakes.Cloudy);

    private static KeepingClass KindOf(Workbench bench, Grade grade) => bench.Catalog.Keeping.Find(grade.Keeping)!;

    /// <summary>What shortens a batch's life beside time.</summary>
    /// <param name="Date">The flakes' own date, where known.</param>
    /// <param name="Cloudy">True when a pinch of them dissolved cloudy.</param>
    private readonly record struct Flakes(DateOnly? Date, bool Cloudy);
}
