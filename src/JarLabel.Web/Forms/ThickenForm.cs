using JarLabel.Bench;
using JarLabel.Bench.Changing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;
using JarLabel.Core.Supplies;

namespace JarLabel.Web.Forms;

/// <summary><c>thicken</c>: flakes for a stronger cut.</summary>
internal static class ThickenForm
{
    internal static BenchForm Form { get; } = new("thicken", "Thicken", "Record it and its label", Fields, Do) { WorksOut = true };

    private static IReadOnlyList<Field> Fields(Workbench bench, Jar? jar) =>
    [
        new("--to", "Thicken to the cut", "pounds per US gallon poured: 2, 2.5 lb, 240 g/L"),
        SharedFields.Grade(bench, jar),
        SharedFields.FlakeDate,
        SharedFields.Form(bench),
        .. SharedFields.Bag(bench),
        .. SharedFields.Container(jar),
        SharedFields.Temperature,
        .. SharedFields.Label(bench),
    ];

    private static Result<BenchOutcome> Do(Workbench bench, JarNumber jar, Entry entry)
    {
        var request = new ThickenRequest(
            jar,
            entry.Needed("--to", "2", CutText.Read),
            entry.Fact("--grade", bench.Catalog.Grades.Named),
            SharedFields.FormOf(entry, bench),
            SharedFields.FlakeDay(entry, bench),
            entry.Value("--temp", TemperatureText.Read),
            SharedFields.OtherContainer(entry),
            SharedFields.LabelOf(entry))
        {
            Bag = entry.Value("--bag", SupplyNumber.ReadBag),
        };
        return entry.Then(() => ThickenJar.Do(bench, request));
    }
}
