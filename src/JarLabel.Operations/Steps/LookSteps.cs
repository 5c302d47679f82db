namespace JarLabel.Operations.Steps;

/// <summary>Looks at what is on record: one jar, the shelves, how long each kind keeps.</summary>
internal static class LookSteps
{
    private const int MostShown = 1000;

    internal static Step Jar => field ??= Step.OfJar("jar", "Look", "One jar: recipe, state, history.", [], ShowJar) with { Looks = true };

    private static Input<string?> Shelf => field ??= Input.Word("shelf", "Only this shelf", "main").Help("name", "Only this shelf.").Alone()
        .Choices(Choose.Shelves("all shelves"));

    private static Input<bool> Due => field ??= Input.Flag("due", "Only jars to test or past their use-by").Help("Only jars to test or past their use-by.");

    private static Input<int> First => field ??= Input.Or("first", "So many at most", "1000", ValueReader.WholeNumber(1, MostShown).Invoke, MostShown).Help("count", "So many at most, soonest first; else 1000.").More();

    private static Input<string?> Drawing => field ??= Shared.Out("Also draw them along time to pin up, one line a jar: a .pdf, .svg or .png file.");

    private static Input<Paper> OnPaper => field ??= Shared.DrawingPaper;

    internal static Step Shelves => field ??= Step.OfShop("shelf", "Shelves", "The jars, soonest use-by first.", [Shelf, Due, First, Shared.Calendar, Drawing, OnPaper, Shared.Force], ShowShelves) with { Looks = true };

    private static Input<Grade?> Grade => field ??= Input.Optional<Grade>("grade", "Only these flakes", "garnet", Choose.Grade)
        .Help("id", "Only these flakes; with --solvent also where none were tested.")
        .Choices(Choose.Grades("all"));

    private static Input<Solvent?> Solvent => field ??= Input.Optional<Solvent>("solvent", "Only this alcohol", "ethanol-95", Choose.Solvent)
        .Help("id", "Only this solvent.")
        .Choices(Choose.Solvents("all"));

    private static Input<string?> LivesDrawing => field ??= Shared.Out("Also draw it: the share that still dries hard by age, its band, the use-by age and the tests; a .pdf (a page a kind), .svg or .png file.");

    internal static Step Keeping => field ??= Step.OfShop("keeping", "How long jars keep", "How long each kind keeps at 20 °C, as learned from the shop's drying tests.", [Grade, Solvent, LivesDrawing, Shared.Force], ShowKeeping) with { Looks = true };

    private static Result<Outcome> ShowJar(Values given)
    {
        var bench = given.Bench;
        if (!LedgerAccess.Jar(bench, Step.Jar(given)).TryGet(out var history, out var faults))
        {
            return faults;
        }

        var hazards = JarWords.Hazards(bench, history.Jar);
        return new Outcome(JarAnswer.Shown(bench, new JarOutcome(history, hazards, null, JarSeen.Cautions(bench, history, hazards))));
    }

    private static Result<Outcome> ShowShelves(Values given)
    {
        var bench = given.Bench;
        if (!ShelvesSeen.Of(bench, given.Get(Shelf), given.Get(Due), given.Get(First)).TryGet(out var seen, out var faults))
        {
            return faults;
        }

        if (given.Get(Shared.Calendar) is { } calendar)
        {
            if (!ShelfCalendar.Write(bench, seen.List, calendar).TryGet(out var file, out faults))
            {
                return faults;
            }

            seen = seen with { Calendar = file };
        }

        if (given.Get(Drawing) is { } drawing)
        {
            if (!DrawShelf.Do(bench, seen.List, given.Get(Shelf), seen.Standing, given.Get(Due), drawing, given.Get(OnPaper)).TryGet(out var file, out faults))
            {
                return faults;
            }

            seen = seen with { Drawing = file };
        }

        return new Outcome(ShelfAnswer.Of(bench, seen));
    }

    private static Result<Outcome> ShowKeeping(Values given)
    {
        var bench = given.Bench;
        if (!LedgerAccess.Read(bench, view => ShopLives.Tested(bench, view)).TryGet(out var tested, out var faults))
        {
            return faults;
        }

        var lives = ShopLives.From(bench, tested);
        LifeClass[] kinds = [.. Wanted(lives, given.Get(Grade)?.Keeping, given.Get(Solvent)?.Id)];
        var drawing = given.Get(LivesDrawing);
        if (drawing is not null && !DrawLives.Do(bench, kinds, lives, tested, drawing).TryGet(out _, out faults))
        {
            return faults;
        }

        return new Outcome(KeepingAnswer.Of(bench, lives, kinds, tested.Alone, drawing));
    }

    private static IEnumerable<LifeClass> Wanted(LearnedLives lives, string? keeping, string? solvent) => keeping is not null && solvent is not null
        ? [new LifeClass(keeping, solvent)]
        : lives.Tested.Where(kind => (keeping is null || kind.Keeping == keeping) && (solvent is null || kind.Solvent == solvent));
}
