using JarLabel.Bench;
using JarLabel.Bench.Mixing;
using JarLabel.Bench.Supplies;
using JarLabel.Bench.Typing;
using JarLabel.Core;
using JarLabel.Core.Catalog;
using JarLabel.Core.Jars;
using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;
using JarLabel.Core.Supplies;

namespace JarLabel.Web.Forms;

/// <summary><c>mix</c>: a new jar.</summary>
internal static class MixForm
{
    internal static BenchForm Form { get; } = new("mix", "Mix a jar", "Record the jar and its label", Fields, Do)
    {
        Says = "Fill in the cut and one amount. With alcohol and flakes the cut follows.",
        WorksOut = true,
    };

    private static IReadOnlyList<Field> Fields(Workbench bench, Jar? jar) =>
    [
        SharedFields.Grade(bench, null),
        SharedFields.Solvent(bench, null),
        .. SharedFields.Bag(bench).Concat(SharedFields.Bottle(bench)).Select(field => field with { Seldom = false }),
        new("--cut", "Cut", "pounds per US gallon poured: 1.5, 2 lb, 240 g/L"),
        new("--pour", "Alcohol to pour", "350 mL, 1 1/2 pt"),
        new("--flakes", "Flakes to use", "4 oz, 113 g"),
        new("--makes", "Finished liquid", "1 pt, 0.5 L"),
        new("--fill", "A jar to fill", "with head space: 500 mL"),
        .. SharedFields.Container(null),
        new("--job", "What it is for") { Seldom = true },
        new("--by", "Who mixes") { Seldom = true },
        new("--note", "Note") { Seldom = true },
        new("--shelf", "Shelf") { Choices = [.. bench.Settings.Shelves.Select(shelf => (shelf.Name, shelf.Name))], Seldom = true },
        SharedFields.FlakeDate,
        SharedFields.Form(bench),
        SharedFields.Temperature,
        .. SharedFields.Label(bench),
    ];

    private static Result<BenchOutcome> Do(Workbench bench, JarNumber none, Entry entry)
    {
        var order = new Order(
            entry.Value("--cut", CutText.Read),
            entry.Value("--pour", VolumeText.Read),
            entry.Value("--flakes", MassText.Read),
            entry.Value("--makes", VolumeText.Read),
            entry.Value("--fill", VolumeText.Read));
        var (bag, bottle) = (entry.Value("--bag", SupplyNumber.ReadBag), entry.Value("--bottle", SupplyNumber.ReadBottle));
        var request = new MixRequest(
            Grade(bench, entry, bag),
            Solvent(bench, entry, bottle),
            order,
            SharedFields.ContainerOf(entry, order.Fill),
            SharedFields.FormOf(entry, bench),
            SharedFields.FlakeDay(entry, bench),
            entry.Value("--temp", TemperatureText.Read),
            entry.Text("--shelf"),
            entry.Fact("--by", Words.PrintedUpTo(60)),
            entry.Fact("--job", Words.PrintedUpTo(120)),
            entry.Fact("--note", Words.PrintedUpTo(500)),
            SharedFields.LabelOf(entry))
        {
            Bag = bag,
            Bottle = bottle,
        };
        return entry.Then(() => MixJar.Do(bench, request));
    }

    /// <summary>The grade that was chosen; else the one in the bag.</summary>
    private static Grade Grade(Workbench bench, Entry entry, SupplyNumber? bag) => bag is { } known && entry.Text("--grade") is null
        ? entry.Taken(SupplyBook.GradeIn(bench, known))
        : entry.Needed("--grade", "garnet", bench.Catalog.Grades.Named);

    /// <summary>The alcohol that was chosen; else the one in the bottle.</summary>
    private static Solvent Solvent(Workbench bench, Entry entry, SupplyNumber? bottle) => bottle is { } known && entry.Text("--solvent") is null
        ? entry.Taken(SupplyBook.SolventIn(bench, known))
        : entry.Needed("--solvent", "ethanol-95", bench.Catalog.Solvents.Named);
}
