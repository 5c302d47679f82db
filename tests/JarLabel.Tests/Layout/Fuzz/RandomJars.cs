namespace JarLabel.Tests.Layout.Fuzz;

/// <summary>Jars as nobody would think of them: every grade and solvent, names of any length and script, cuts from thin to paste.</summary>
internal sealed class RandomJars(Random random)
{
    private static readonly DateTime At = new(2026, 3, 9, 10, 0, 0);
    private static readonly ShopCatalog Catalog = ShopCatalog.Ours;
    private static readonly string[] Words = ["viola", "top", "Ærø", "Großvatersessel", "façade", "½", "№ 12", "0/O", "—", "Llanfairpwllgwyngyllgogerychwyrndrobwllllantysiliogogogoch", "日本", "🔥", "a", "Ωmega", "\"q\"", "<b>", "100%"];

    internal LabelText Next()
    {
        var (grade, solvent) = (Pick(Catalog.Grades.Rows), Pick(Catalog.Solvents.Rows));
        var order = new BatchRequest(PoundCut.FromPoundsPerUsGallon(Pick([0.25, 0.5, 1, 1.5, 2, 3, 4, 6, 1.37])), Pour: Volume.FromMilliliters(random.Next(20, 20_000)));
        var recipe = RecipeSolver.Solve(order, solvent.DensityAt(Warmth.Reference)).Require();
        var dates = new KeepingDates(At.AddDays(1), new DateOnly(2026, 9, 27), new DateOnly(2026, 12, 28));
        var container = new Container(ContainerMaterial.Glass, random.Next(3) == 0 ? null : recipe.Makes * 1.1);
        var mixed = new Mixed(At, Contents.Of(recipe, grade.Id, solvent.Id, null), container, dates, "main", Warmth.Reference, Maybe(Text), Maybe(Text), Maybe(Text));
        var number = JarNumber.From(random.Next(4) == 0 ? random.Next(1, 999_999_999) : random.Next(1, 2000));
        List<JarEvent> life = [mixed, .. Enumerable.Range(0, random.Next(6)).Select(i => (JarEvent)new Noted(At.AddDays(i + 1), Text()))];
        var possible = JarComposition.Possible([(solvent, recipe.PourWeight)], recipe.Flakes, Catalog);
        var rules = random.Next(2) == 0 ? RuleSet.Osha : RuleSet.Clp;
        return JarLabelText.For(new LabelFacts(
            Jar.Fold(number, life).Require(), life, MixtureClassifier.Classify(possible, rules, Catalog), Catalog, Maybe(Text), Maybe(Text), Pick<string?>([null, "http://192.168.1.20:5080", "https://a.example"])));
    }

    internal T Pick<T>(IReadOnlyList<T> from) => from[random.Next(from.Count)];

    private string Text() => string.Join(' ', Enumerable.Range(0, random.Next(1, 12)).Select(_ => Pick(random.Next(5) == 0 ? Words : Words[..3])));

    private string? Maybe(Func<string> text) => random.Next(2) == 0 ? null : text();
}
