namespace JarLabel.Operations.Samples;

/// <summary>What an invented jar, bag, bottle and shelf say, made by the same code as the real ones, to show designs with.</summary>
internal sealed class SampleTexts(Workbench bench, Jar jar, LabelText ofJar)
{
    private const string Grade = "garnet";
    // The smallest designs have room for an address only, not for a code that needs no network.
    private const string AtAnAddress = "HTTP://192.168.1.20:5080/J/142-5.1";

    private const string Solvent = "ethanol-95";
    private static readonly Volume Pour = Volume.FromMilliliters(350);

    internal static Result<SampleTexts> Of(Workbench bench) => Mixed(bench).Then(mixed => Jar.Fold(JarNumber.From(142), [mixed]).Then<SampleTexts>(jar =>
        new SampleTexts(bench, jar, JarWords.Of(bench, new JarHistory(jar, [(mixed, 1)]), JarWords.Hazards(bench, jar)))));

    /// <summary>The words that the design is for.</summary>
    internal LabelText For(string design) => design switch
    {
        "bag" => SupplyLabelText.For(Bag.Fold(SupplyNumber.From(3), [new BagAdded(bench.Now, Grade, Mass.FromKilograms(1), Today)]).Require(), bench.Catalog, SupplyWords.Owner(bench)),
        "bottle" => OfBottle(),
        "notice" => ShelfNotice.For(new NoticeFacts(jar.Shelf, Today, ShelfContents.Stock(bench, [jar], []), null, bench.Rules, bench.Catalog, bench.Metric, bench.Settings.Name, bench.Settings.Contact) { PoisonCenter = bench.Settings.PoisonCenter }),
        "tag" or "slip" or "lid" when bench.Settings.BaseUrl is null => ofJar with { Code = AtAnAddress },
        _ => ofJar,
    };

    private DateOnly Today => DateOnly.FromDateTime(bench.Now);

    private static Result<Mixed> Mixed(Workbench bench) => bench.Catalog.Grades.Named(Grade).Then(grade => bench.Catalog.Solvents.Named(Solvent).Then(solvent => MixJar.Begin(
        bench,
        new MixRequest(grade, solvent, new BatchRequest(PoundCut.FromPoundsPerUsGallon(1.5), Pour: Pour), new Container(ContainerMaterial.Glass, Volume.FromMilliliters(500)), Job: "viola top"),
        new FromSupplies(null, null))));

    private LabelText OfBottle()
    {
        var bottle = Bottle.Fold(SupplyNumber.From(2), [new BottleAdded(bench.Now, Solvent, Volume.FromLiters(1), Today, jar.Shelf, ContainerMaterial.Glass)]).Require();
        return SupplyLabelText.For(bottle, SupplyWords.Hazards(bench, bottle), bench.Catalog, SupplyWords.Owner(bench), bench.Settings.PoisonCenter);
    }
}
