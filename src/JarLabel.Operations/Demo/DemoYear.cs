namespace JarLabel.Operations.Demo;

/// <summary>An invented year in an invented shop that repairs furniture and now and then an instrument.</summary>
internal static class DemoYear
{
    private const int Garnet = 1;
    private const int Blonde = 2;
    private const int Ethanol = 1;

    /// <summary>The day on which the year is looked back upon.</summary>
    internal const string Last = "2025-12-15";

    /// <summary>What happened, in order.</summary>
    internal static IReadOnlyList<(string Day, Func<Workbench, Result<object>> Step)> Steps { get; } =
    [
        ("2025-01-13", Bag("garnet", 1000, "2024-11-20")),
        ("2025-01-13", Bag("blonde", 500, "2024-03-01")),
        ("2025-01-13", Bottle("ethanol-95", 5, "bench")),
        ("2025-01-14", Mix("garnet", 1.5, 350, 500, "bench", "walnut writing desk", Garnet, Ethanol)),
        ("2025-01-20", Mix("blonde", 2, 700, 946, "cellar", "sealer for light woods", Blonde, Ethanol)),
        ("2025-01-22", Use(1, 120, "walnut writing desk, top")),
        ("2025-02-10", Thin(1, 1)),
        ("2025-02-24", Mix("orange", 3, 600, 946, "cellar", "stock to thin from")),
        ("2025-03-03", Use(1, 90, "walnut writing desk, last coats")),
        ("2025-03-17", Decant(3, 250)),
        ("2025-03-17", Thin(4, 1.5)),
        ("2025-04-07", Use(4, 150, "row of six kitchen chairs")),
        ("2025-05-12", Test(1, true, 9)),
        ("2025-05-19", Mix("buttonlac", 2, 300, 500, "bench", "harp pillar")),
        ("2025-06-16", Blend(3, 4)),
        ("2025-07-07", Test(2, true, 12)),
        ("2025-07-21", Mix("seedlac", 3, 400, 946, "cellar", "brown stock, to be strained")),
        ("2025-08-25", Mix("garnet", 2, 250, 500, "bench", "mantel clock case", Garnet, Ethanol)),
        ("2025-09-08", Test(2, false, 40)),
        ("2025-09-08", Note(2, "stays tacky on glass after two days")),
        ("2025-09-15", Discard(2, "no longer dries")),
        ("2025-09-22", Mix("bleached", 1, 300, 500, "bench", "maple picture rail")),
        ("2025-10-13", Bottle("denatured-unknown", 1, "bench")),
        ("2025-10-20", Mix("ruby", 1.5, 200, 250, "bench", "red cello scroll")),
        ("2025-11-03", Mix("lemon", 2, 350, 500, "cellar", "satinwood box")),
        ("2025-11-10", Move(7, "bench")),
        ("2025-11-24", Mix("blonde", 1.5, 250, 500, "bench", "birch music stand", Blonde, Ethanol)),
        ("2025-12-01", Use(11, 60, "satinwood box, first coats")),
        ("2025-12-08", Use(11, 60, "satinwood box, first coats")),
        ("2025-12-08", Undo(11)),
        ("2025-12-15", Mix("garnet-dewaxed", 1, 300, 500, "bench", "oak hall stand")),
    ];

    private static Func<Workbench, Result<object>> Bag(string grade, double grams, string made) => bench => Any(SupplyOperations.Add(
        bench, SupplyRequest.Bag(bench.Catalog.Grades.Find(grade)!, Mass.FromGrams(grams), Day(made), null, new LabelChoice())));

    private static Func<Workbench, Result<object>> Bottle(string solvent, double liters, string shelf) => bench => Any(SupplyOperations.Add(
        bench, SupplyRequest.Bottle(bench.Catalog.Solvents.Find(solvent)!, Volume.FromLiters(liters), DateOnly.FromDateTime(bench.Now), shelf, ContainerMaterial.Metal, null, new LabelChoice())));

    private static Func<Workbench, Result<object>> Mix(
        string grade, double cut, double pour, double holds, string shelf, string job, int? bag = null, int? bottle = null) => bench => Any(MixJar.Do(bench, new MixRequest(
        bench.Catalog.Grades.Find(grade)!,
        bench.Catalog.Solvents.Find("ethanol-95")!,
        new BatchRequest(Cut(cut), Pour: Volume.FromMilliliters(pour)),
        new Container(ContainerMaterial.Glass, Volume.FromMilliliters(holds)),
        Shelf: shelf,
        By: "Wren",
        Job: job,
        Label: new LabelChoice())
        {
            Bag = bag is { } flakes ? SupplyNumber.From(flakes) : null,
            Bottle = bottle is { } alcohol ? SupplyNumber.From(alcohol) : null,
        }));

    private static Func<Workbench, Result<object>> Thin(int jar, double to) =>
        bench => Any(ThinJar.Do(bench, new ThinRequest(JarNumber.From(jar), Cut(to), Label: new LabelChoice())));

    private static Func<Workbench, Result<object>> Use(int jar, double milliliters, string job) =>
        bench => Any(UseJar.Do(bench, JarNumber.From(jar), Volume.FromMilliliters(milliliters), job));

    private static Func<Workbench, Result<object>> Decant(int jar, double milliliters) =>
        bench => Any(DecantJar.Do(bench, JarNumber.From(jar), [Volume.FromMilliliters(milliliters)], Another()));

    private static Func<Workbench, Result<object>> Blend(int one, int other) =>
        bench => Any(BlendJars.Do(bench, [(JarNumber.From(one), Volume.FromMilliliters(200)), (JarNumber.From(other), default)], Another()));

    private static Func<Workbench, Result<object>> Test(int jar, bool passed, int minutes) => bench => Any(TestJar.Do(bench, JarNumber.From(jar), passed, minutes));

    private static Func<Workbench, Result<object>> Note(int jar, string text) => bench => Any(NoteJar.Do(bench, JarNumber.From(jar), text));

    private static Func<Workbench, Result<object>> Discard(int jar, string why) => bench => Any(DiscardJar.Do(bench, JarNumber.From(jar), why));

    private static Func<Workbench, Result<object>> Move(int jar, string shelf) => bench => Any(MoveJar.Do(bench, JarNumber.From(jar), shelf, new LabelChoice()));

    private static Func<Workbench, Result<object>> Undo(int jar) => bench => Any(UndoLast.Do(bench, JarNumber.From(jar), new LabelChoice()));

    private static NewJar Another() => new(new Container(ContainerMaterial.Glass, Volume.FromMilliliters(946)), Label: new LabelChoice());

    private static PoundCut Cut(double pounds) => PoundCut.FromPoundsPerUsGallon(pounds);

    private static DateOnly Day(string day) => DateOnly.ParseExact(day, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static Result<object> Any<T>(Result<T> result)
        where T : notnull => result.Then<object>(value => Result<object>.Of(value));
}
