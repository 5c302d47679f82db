using JarLabel.Core.Supplies;
using JarLabel.Operations.Recording;

namespace JarLabel.Tests.Operations;

/// <summary>A shop in a folder of its own, with two jars of 1 1/2 lb cut, a bag and a bottle.</summary>
internal sealed class BenchShop : IDisposable
{
    private readonly ScratchFolder folder = new();

    internal BenchShop()
    {
        var bench = Open();
        var (garnet, alcohol) = (bench.Catalog.Grades.Named("garnet").Require(), bench.Catalog.Solvents.Named("ethanol-95").Require());
        for (var jar = 1; jar <= 2; jar++)
        {
            MixJar.Do(bench, new MixRequest(
                garnet,
                alcohol,
                new BatchRequest(CutText.Read("1.5", "").Require(), VolumeText.Read("350 mL", "").Require()),
                new Container(ContainerMaterial.Glass, Volume.FromMilliliters(1000)))).Require();
        }

        SupplyOperations.Add(bench, SupplyRequest.Bag(garnet, Mass.FromGrams(500), new DateOnly(2026, 1, 5))).Require();
        SupplyOperations.Add(bench, SupplyRequest.Bottle(alcohol, Volume.FromLiters(1), new DateOnly(2026, 1, 5))).Require();
    }

    internal DateTime Now { get; } = new(2026, 3, 9, 10, 0, 0);

    internal Workbench Open() => Workbench.Open(new WorkbenchOptions(folder["shop"], Now), _ => null).Require();

    /// <summary>Prints the label of the first jar.</summary>
    internal void Label() => LabelJar.Do(Open(), JarNumber.From(1), new LabelChoice(), null).Require();

    /// <summary>Puts the first jar on another shelf than the usual one.</summary>
    internal void PutAside()
    {
        ShopSettingsFile.Change(Open().Folder, settings => settings with { Shelves = [.. settings.Shelves, new Shelf("cellar", Temperature.FromDegreesCelsius(14))] }).Require();
        MoveJar.Do(Open(), JarNumber.From(1), "cellar", null).Require();
        SupplyOperations.Move(Open(), SupplyNumber.From(1), "cellar").Require();
    }

    /// <summary>All that is on record, in the ledger and in the shop's own files beside it.</summary>
    internal (long Events, string Files) Recorded => (
        LedgerAccess.Read<long>(Open(), view => view.EventCount).Require(),
        string.Join('\n', Directory.EnumerateFiles(folder["shop"], "*.json", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(File.ReadAllText)));

    public void Dispose() => folder.Dispose();
}
