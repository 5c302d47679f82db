using JarLabel.Bench;
using JarLabel.Bench.Changing;
using JarLabel.Core;
using JarLabel.Core.Jars;
using JarLabel.Core.Quantities;
using JarLabel.Core.Supplies;

namespace JarLabel.Web.Forms;

/// <summary><c>thin</c>: alcohol for a weaker cut.</summary>
internal static class ThinForm
{
    internal static BenchForm Form { get; } = new("thin", "Thin", "Record it and its label", Fields, Do) { WorksOut = true };

    private static IReadOnlyList<Field> Fields(Workbench bench, Jar? jar) =>
    [
        new("--to", "Thin to the cut", "pounds per US gallon poured: 1, 1.5 lb, 120 g/L"),
        SharedFields.Solvent(bench, jar),
        .. SharedFields.Bottle(bench),
        .. SharedFields.Container(jar),
        SharedFields.Temperature,
        .. SharedFields.Label(bench),
    ];

    private static Result<BenchOutcome> Do(Workbench bench, JarNumber jar, Entry entry)
    {
        var request = new ThinRequest(
            jar,
            entry.Needed("--to", "1", CutText.Read),
            entry.Fact("--solvent", bench.Catalog.Solvents.Named),
            entry.Value("--temp", TemperatureText.Read),
            SharedFields.OtherContainer(entry),
            SharedFields.LabelOf(entry))
        {
            Bottle = entry.Value("--bottle", SupplyNumber.ReadBottle),
        };
        return entry.Then(() => ThinJar.Do(bench, request));
    }
}
