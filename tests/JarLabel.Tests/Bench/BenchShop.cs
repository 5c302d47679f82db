using JarLabel.Bench;
using JarLabel.Bench.Mixing;
using JarLabel.Bench.Recording;
using JarLabel.Core.Jars;
using JarLabel.Core.Mixing;
using JarLabel.Core.Quantities;
using UnitsNet;

namespace JarLabel.Tests.Bench;

/// <summary>A shop in a folder of its own, with one jar of 1 1/2 lb cut.</summary>
internal sealed class BenchShop : IDisposable
{
    private readonly ScratchFolder folder = new();

    internal BenchShop()
    {
        var bench = Open();
        MixJar.Do(bench, new MixRequest(
            bench.Catalog.Grades.Named("garnet").Require(),
            bench.Catalog.Solvents.Named("ethanol-95").Require(),
            new Order(CutText.Read("1.5", "").Require(), VolumeText.Read("350 mL", "").Require()),
            new Container(ContainerMaterial.Glass, Volume.FromMilliliters(1000)))).Require();
    }

    internal DateTime Now { get; } = new(2026, 3, 9, 10, 0, 0);

    internal Workbench Open() => Workbench.Open(new BenchRequest(folder["shop"], Now), _ => null).Require();

    internal int Steps => LedgerDesk.Jar(Open(), JarNumber.From(1)).Require().Events.Count;

    public void Dispose() => folder.Dispose();
}
